// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/large_shop/names.h"

#include "tests/bench/stock_world/dice.h"

#include <array>
#include <set>
#include <string_view>

namespace rw::large {

namespace {
constexpr std::array<std::string_view, 24> kBegin = {"b",  "d",  "f",  "g",  "h",  "k",  "l",   "m",
                                                     "n",  "p",  "r",  "s",  "t",  "v",  "w",   "br",
                                                     "dr", "gr", "kl", "pl", "st", "th", "sch", "j"};
constexpr std::array<std::string_view, 12> kMiddle = {"a", "e", "i", "o", "u", "a", "e", "i", "ei", "au", "ie", "oo"};
constexpr std::array<std::string_view, 14> kEnd = {"",  "",  "",   "n",  "r",  "l",  "s",
                                                   "m", "t", "nd", "rt", "ck", "ll", "n"};

template<std::size_t Count>
std::string_view oneOf(world::Dice& dice, const std::array<std::string_view, Count>& of) {
    return of.at(static_cast<std::size_t>(dice.wholeWithin(0, static_cast<int>(Count) - 1)));
}

std::string word(world::Dice& dice) {
    std::string name;
    const int syllables = dice.wholeWithin(2, 3);
    for (int i = 0; i < syllables; ++i) {
        name += oneOf(dice, kBegin);
        name += oneOf(dice, kMiddle);
        name += oneOf(dice, kEnd);
    }
    if (dice.chance(0.05)) {
        if (const auto at = name.find('e'); at != std::string::npos) {
            name.replace(at, 1, "é");
        }
    }
    name.front() = static_cast<char>(name.front() - 'a' + 'A');
    return name;
}
} // namespace

std::vector<std::string> inventedNames(std::size_t count, unsigned seed) {
    world::Dice dice(seed);
    std::set<std::string> known;
    std::vector<std::string> names;
    while (names.size() < count) {
        if (std::string name = word(dice); known.insert(name).second) {
            names.push_back(std::move(name));
        }
    }
    return names;
}

} // namespace rw::large
