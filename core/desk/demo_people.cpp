// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_data.h"

#include <array>

// Who comes to the shop and with what. All names are invented; the numbers are from the ranges that Ofcom keeps for
// drama, the addresses from the domain that RFC 2606 keeps for examples.
namespace rw::desk::demo {

namespace {
constexpr std::array<PersonRow, 18> kPeople{{
    {"Petra Lindobi", "07700 900417", ""},
    {"Tomas Ferreday", "07700 900862", "tomas@ferreday.example"},
    {"Dario Penhallow", "01632 960225", ""},
    {"Jun Hallerby", "07700 900093", ""},
    {"Hedda Brockwell", "020 7946 0318", ""},
    {"Ivo Castelmere", "07700 900551", "ivo@castelmere.example"},
    {"Nadia Pruettley", "01632 960774", ""},
    {"Osric Fenwright", "020 7946 0652", ""},
    {"Tamsin Quarrell", "07700 900236", ""},
    {"Bram Hollickstone", "07700 900689", ""},
    {"Leocadia Stroude", "", "leocadia@stroude.example"},
    {"Wen Ashgrave", "07700 900148", ""},
    {"Piers Dunmallet", "01632 960503", ""},
    {"Sunniva Karrow", "07700 900971", ""},
    {"Ruben Oakhanger", "07700 900344", "ruben@oakhanger.example"},
    {"Yusra Tallentyre", "020 7946 0927", ""},
    {"Marisol Vennick", "07700 900705", ""},
    {"Cosmo Arberley", "01632 960139", ""},
}};

constexpr std::array<RacketRow, 24> kRackets{{
    {"petra a", "Petra Lindobi", "Aldermoor 98", "A"},         {"petra b", "Petra Lindobi", "Aldermoor 98", "B"},
    {"tomas", "Tomas Ferreday", "Aldermoor 98", ""},           {"dario a", "Dario Penhallow", "Corran Drop 500", "A"},
    {"dario b", "Dario Penhallow", "Corran Drop 500", "B"},    {"jun", "Jun Hallerby", "Pellow Feather", ""},
    {"hedda tarn", "Hedda Brockwell", "Tarn Ridge 100", ""},   {"hedda", "Hedda Brockwell", "Aldermoor 98", ""},
    {"ivo a", "Ivo Castelmere", "Aldermoor 98", "A"},          {"ivo b", "Ivo Castelmere", "Aldermoor 98", "B"},
    {"nadia", "Nadia Pruettley", "Aldermoor 110", ""},         {"osric", "Osric Fenwright", "Aldermoor 110", ""},
    {"tamsin", "Tamsin Quarrell", "Aldermoor 98", "red grip"}, {"bram", "Bram Hollickstone", "Corran Drop 500", ""},
    {"leocadia", "Leocadia Stroude", "Aldermoor 110", ""},     {"wen a", "Wen Ashgrave", "Pellow Feather", "A"},
    {"wen b", "Wen Ashgrave", "Pellow Feather", "B"},          {"piers", "Piers Dunmallet", "Corran Drop 500", ""},
    {"sunniva", "Sunniva Karrow", "Aldermoor 98", ""},         {"ruben a", "Ruben Oakhanger", "Aldermoor 98", "A"},
    {"ruben b", "Ruben Oakhanger", "Aldermoor 98", "B"},       {"yusra", "Yusra Tallentyre", "Corran Drop 500", ""},
    {"marisol", "Marisol Vennick", "Pellow Feather", ""},      {"cosmo", "Cosmo Arberley", "Aldermoor 98", ""},
}};
} // namespace

std::span<const PersonRow> people() { return kPeople; }
std::span<const RacketRow> rackets() { return kRackets; }

} // namespace rw::desk::demo
