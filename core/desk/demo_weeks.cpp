// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_data.h"

#include <array>

// The jobs of the last weeks. What each reel holds at the end follows from these cuts: L-3 48.7 m of which the waiting
// jobs take 32.4, K-7 60.0 m of which they take 56.0, K-2 6.4 m by tape, T-1 27.6 m; K-4 is sealed.
namespace rw::desk::demo {

namespace {
constexpr Method kOne = Method::OnePiece;
constexpr Method kTwo = Method::TwoPiece;
constexpr std::string_view kA = "Bench A";
constexpr std::string_view kB = "Bench B";
constexpr std::string_view kBastian = "Bastian Quill";
constexpr std::string_view kInes = "Ines Varholt";

constexpr int at(int hour, int minute) { return hour * 60 + minute; }

constexpr std::array<JobRow, 41> kPast{{
    {kOnEarlierTwentieth, at(10, 20), "petra a", "L", "L", kOne, "54 lb", "52 lb", "L-2", "", kBastian, kA,
     "felt a touch stiff"},
    {30, at(10, 15), "petra b", "L", "L", kOne, "56 lb", "54 lb", "L-2", "", kInes, kA, ""},
    {30, at(16, 40), "nadia", "L", "L", kOne, "50 lb", "50 lb", "L-2", "", kBastian, kA, ""},
    {29, at(11, 5), "bram", "T", "T", kOne, "25 lb", "25 lb", "T-1", "", kInes, kB, ""},
    {29, at(14, 30), "ruben a", "K", "K", kOne, "52 lb", "50 lb", "K-7", "", kBastian, kA, ""},
    {28, at(10, 50), "cosmo", "K", "L", kTwo, "51 lb", "53 lb", "K-2", "L-2", kInes, kA, ""},
    {28, at(15, 10), "wen a", "W", "W", kTwo, "24 lb", "26 lb", "W-1", "", kBastian, kB, ""},
    {27, at(12, 0), "osric", "L", "L", kOne, "52 lb", "51 lb", "L-3", "", kBastian, kA, ""},
    {26, at(10, 10), "tamsin", "K", "K", kTwo, "50 lb", "48 lb", "K-2", "", kInes, kB, ""},
    {26, at(17, 15), "ivo a", "L", "L", kOne, "55 lb", "53 lb", "L-3", "", kBastian, kA, ""},
    {25,
     at(10, 35),
     "yusra",
     "T",
     "T",
     kOne,
     "26 lb",
     "26 lb",
     "T-1",
     "",
     kInes,
     kB,
     "",
     {PieceRole::Whole, 7'300, LostReason::CameShort}},
    {24, at(11, 45), "ruben b", "K", "K", kOne, "52 lb", "50 lb", "K-7", "", kBastian, kA,
     "grommet 7 at the head is worn"},
    {24, at(13, 20), "leocadia", "L", "L", kTwo, "50 lb", "48 lb", "L-3", "", kInes, kB, ""},
    {23, at(10, 0), "jun", "W", "W", kTwo, "24 lb", "26 lb", "W-1", "", kInes, kB, ""},
    {22, at(16, 5), "sunniva", "L", "L", kOne, "53 lb", "51 lb", "L-3", "", kBastian, kA, ""},
    {21, at(10, 25), "piers", "T", "T", kOne, "24.5 lb", "24.5 lb", "T-1", "", kInes, kB, ""},
    {20, at(12, 40), "hedda", "K", "K", kOne, "54 lb", "52 lb", "K-7", "", kBastian, kA, ""},
    {20, at(15, 55), "nadia", "L", "L", kOne, "50 lb", "50 lb", "L-3", "", kInes, kB, "old string broke at the throat"},
    {19,
     at(10, 30),
     "marisol",
     "W",
     "W",
     kTwo,
     "11 kg",
     "11.5 kg",
     "W-1",
     "",
     kInes,
     kB,
     "",
     {PieceRole::Crosses, 4'400, LostReason::Kinked}},
    {18, at(11, 0), "ivo b", "L", "L", kOne, "55 lb", "53 lb", "L-3", "", kBastian, kA, ""},
    {17, at(13, 35), "tamsin", "K", "K", kTwo, "50 lb", "48 lb", "K-2", "", kInes, kA, ""},
    {16, at(10, 45), "bram", "T", "T", kOne, "25 lb", "25 lb", "T-1", "", kBastian, kB, ""},
    {16, at(16, 20), "ruben a", "K", "K", kOne, "52 lb", "50 lb", "K-7", "", kBastian, kA, ""},
    {15, at(11, 25), "osric", "L", "L", kOne, "52 lb", "51 lb", "L-3", "", kInes, kA, ""},
    {14, at(10, 5), "wen b", "W", "W", kTwo, "24 lb", "26 lb", "W-1", "", kBastian, kB, ""},
    {13, at(14, 15), "cosmo", "K", "L", kTwo, "51 lb", "53 lb", "K-2", "L-3", kInes, kA, ""},
    {12, at(10, 55), "leocadia", "L", "L", kOne, "50 lb", "48 lb", "L-3", "", kBastian, kA, "one piece from now on"},
    {11, at(12, 10), "tamsin", "K", "K", kTwo, "51 lb", "49 lb", "K-2", "", kInes, kB, ""},
    {11, at(15, 30), "yusra", "T", "T", kOne, "26 lb", "26 lb", "T-1", "", kInes, kB, ""},
    {10, at(10, 40), "ruben b", "K", "K", kOne, "52 lb", "50 lb", "K-7", "", kBastian, kA, ""},
    {9, at(11, 15), "ivo a", "L", "L", kOne, "55 lb", "53 lb", "L-3", "", kInes, kA, ""},
    {8, at(13, 5), "hedda", "K", "K", kOne, "54 lb", "52 lb", "K-7", "", kBastian, kA, ""},
    {7, at(10, 20), "piers", "T", "T", kOne, "24.5 lb", "24.5 lb", "T-1", "", kInes, kB, ""},
    {7, at(16, 50), "sunniva", "L", "L", kOne, "53 lb", "51 lb", "L-3", "", kBastian, kA, ""},
    {6, at(11, 40), "wen a", "W", "W", kTwo, "24 lb", "26 lb", "W-1", "", kInes, kB, ""},
    {5, at(12, 25), "ivo b", "L", "L", kOne, "55 lb", "53 lb", "L-3", "", kBastian, kA, ""},
    {5, at(14, 45), "cosmo", "K", "K", kOne, "51 lb", "51 lb", "K-7", "", kInes, kA, ""},
    {4, at(10, 30), "marisol", "W", "W", kTwo, "11 kg", "11.5 kg", "W-1", "", kInes, kB, ""},
    {3, at(11, 20), "yusra", "T", "T", kOne, "26 lb", "26 lb", "T-1", "", kInes, kB, ""},
    {3, at(15, 0), "osric", "L", "L", kOne, "52 lb", "51 lb", "L-3", "", kBastian, kA, ""},
    {2, at(10, 15), "leocadia", "L", "L", kOne, "50 lb", "48 lb", "L-3", "", kInes, kA, ""},
}};

// Who wants K is given what is left of batch A31, so that it is used up before K-4 is opened.
constexpr std::array<JobRow, 9> kOpen{{
    {1, at(10, 10), "ruben a", "K", "K", kOne, "52 lb", "50 lb", "K-7", "", "", "", ""},
    {1, at(10, 12), "ruben b", "K", "K", kOne, "52 lb", "50 lb", "K-7", "", "", "", ""},
    {1, at(11, 30), "ivo a", "L", "L", kOne, "55 lb", "53 lb", "", "", kBastian, kA, ""},
    {1, at(11, 32), "ivo b", "L", "L", kOne, "55 lb", "53 lb", "", "", "", "", ""},
    {1, at(13, 15), "wen b", "W", "W", kTwo, "24 lb", "26 lb", "", "", "", "", "look at the outer grommets first"},
    {1, at(14, 5), "hedda", "K", "K", kOne, "54 lb", "52 lb", "K-7", "", "", "", ""},
    {1, at(15, 40), "sunniva", "L", "L", kOne, "53 lb", "51 lb", "", "", "", "", ""},
    {1, at(16, 25), "cosmo", "K", "K", kOne, "51 lb", "51 lb", "K-7", "", "", "", "a little softer if it can be"},
    {1, at(17, 10), "tamsin", "K", "K", kOne, "50 lb", "48 lb", "K-7", "", "", "", "one piece this time"},
}};
} // namespace

std::span<const JobRow> pastJobs() { return kPast; }
std::span<const JobRow> openJobs() { return kOpen; }

} // namespace rw::desk::demo
