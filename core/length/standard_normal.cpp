// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/standard_normal.h"

#include <boost/math/distributions/normal.hpp>

#include <cmath>
#include <numbers>

namespace rw::length {

namespace {
const double kRootTwoPi = std::sqrt(2 * std::numbers::pi);
}

double normalDensity(double z) { return std::exp(-z * z / 2) / kRootTwoPi; }

double normalAbove(double z) { return std::erfc(z / std::numbers::sqrt2) / 2; }

double logNormalBelow(double z) {
    constexpr double kCertain = 8.3;  // beyond, the logarithm is below what a double can tell from 0
    constexpr double kFarBelow = -30; // beyond, the probability itself nears the smallest double
    if (z >= kCertain) {
        return 0;
    }
    if (z > kFarBelow) {
        return std::log(normalAbove(-z));
    }
    // Mills' ratio to its second term: P(Z <= z) = density(z) / -z (1 - 1/z^2 + ...).
    return -z * z / 2 - std::log(-z * kRootTwoPi) + std::log1p(-1 / (z * z));
}

double normalExceededWith(double chance) {
    return boost::math::quantile(boost::math::complement(boost::math::normal(), chance));
}

} // namespace rw::length
