// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/dice.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rw::world {

double Dice::uniform() {
    constexpr int kBitsOfADouble = 53;
    return std::ldexp(static_cast<double>(m_bits() >> (64 - kBitsOfADouble)), -kBitsOfADouble);
}

double Dice::normal(double mean, double sd) {
    const double radius = std::sqrt(-2 * std::log(1 - uniform()));
    return mean + sd * radius * std::cos(2 * std::numbers::pi * uniform());
}

double Dice::normalWithin(double mean, double sd, double low, double high) {
    return std::clamp(normal(mean, sd), low, high);
}

int Dice::wholeWithin(int low, int high) { return low + static_cast<int>(std::floor(uniform() * (high - low + 1))); }

int Dice::poisson(double mean) {
    int count = 0;
    for (double left = uniform(); left >= std::exp(-mean); left *= uniform()) {
        ++count;
    }
    return count;
}

} // namespace rw::world
