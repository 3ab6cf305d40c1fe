// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_data.h"

#include <array>

// What the shop has: machines, strings, frames, reels. All of it is invented.
namespace rw::desk::demo {

namespace {
using enum Sport;
using enum Material;
using enum PieceRole;

constexpr std::array<std::string_view, 4> kStaff{kCounterStaff, "Bastian Quill", "Ines Varholt", kOwner};

constexpr std::array<MachineRow, 2> kMachines{{
    {"Bench A", TensionUnit::Pound, 50},
    {"Bench B", TensionUnit::Kilogram, 50},
}};

constexpr std::array<StringRow, 4> kStrings{{
    {"K", "Kestrelline 125", "black", Tennis, Polyester, 1250, "17", 1700, 1300, 650},
    {"L", "Larkspun 130", "natural", Tennis, Multifilament, 1300, "16", 1500, 1600, 800},
    {"T", "Tarnweave 120", "red", Squash, Multifilament, 1200, "17", 1250, 1200, 0},
    {"W", "Swiftlet 68", "white", Badminton, Multifilament, 680, "22", 400, 1000, 0},
}};

constexpr std::array<FrameRow, 5> kFrames{{
    {"Aldermoor 98", Tennis, 329, 245, 632.3, false, 16, 19, 181, 240, HoopEnd::Head, "50 lb", "60 lb", ""},
    {"Aldermoor 110", Tennis, 0, 0, 709.7, false, 16, 19, 0, 0, HoopEnd::Throat, "48 lb", "58 lb", ""},
    {"Corran Drop 500", Squash, 360, 190, 0, true, 14, 18, 0, 0, HoopEnd::Throat, "20 lb", "28 lb", ""},
    {"Pellow Feather", Badminton, 245, 190, 0, false, 22, 21, 0, 0, HoopEnd::Head, "", "26 lb", ""},
    {"Tarn Ridge 100", Tennis, 0, 0, 645.2, false, 18, 20, 0, 0, HoopEnd::Throat, "50 lb", "60 lb",
     "groove in the strip"},
}};

constexpr std::array<UsualRow, 11> kUsualCuts{{
    {"Aldermoor 98", Whole, "K", "plain-1", 11'200, 3'000},
    {"Aldermoor 98", Whole, "L", "plain-1", 10'800, 3'000},
    {"Aldermoor 98", Mains, "", "", 6'200, 0},
    {"Aldermoor 98", Crosses, "", "", 5'600, 0},
    {"Aldermoor 110", Whole, "L", "wrap-first-2", 11'400, 0},
    {"Aldermoor 110", Mains, "", "", 6'600, 0},
    {"Aldermoor 110", Crosses, "", "", 5'900, 0},
    {"Corran Drop 500", Whole, "T", "plain-2", 9'300, 2'900},
    {"Pellow Feather", Mains, "W", "", 5'500, 0},
    {"Pellow Feather", Crosses, "W", "", 4'400, 0},
    {"Tarn Ridge 100", Whole, "K", "plain-2", 11'700, 0},
}};

// L-2, K-2, K-7 and W-1 were on the shelf when the ledger began, with what was left on them then; L-2 is used up since.
constexpr std::array<LotRow, 7> kLots{{
    {"L-2", "L", 38'800, 26'20, 0, 0, "0417"},
    {"K-2", "K", 54'300, 29'90, 0, 0, "A22"},
    {"K-7", "K", 138'400, 76'10, 0, 0, "A31"},
    {"W-1", "W", 200'000, 84'00, 3'00, 0, "S9"},
    {"T-1", "T", 100'000, 58'00, 4'50, 30, "2204", "Fennimore"},
    {"L-3", "L", 200'000, 135'00, 4'50, 28, "0533", "Northgate String Company"},
    {"K-4", "K", 200'000, 110'00, 4'50, 12, "A40", "Northgate String Company"},
}};
} // namespace

std::span<const std::string_view> staff() { return kStaff; }
std::span<const MachineRow> machines() { return kMachines; }
std::span<const StringRow> strings() { return kStrings; }
std::span<const FrameRow> frames() { return kFrames; }
std::span<const UsualRow> usualCuts() { return kUsualCuts; }
std::span<const LotRow> lots() { return kLots; }

} // namespace rw::desk::demo
