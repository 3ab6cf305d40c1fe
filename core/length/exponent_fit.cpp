// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/exponent_fit.h"

#include "core/length/hoop_curve.h"
#include "core/length/impossible.h"

#include <boost/math/tools/roots.hpp>

#include <cmath>

namespace rw::length {

namespace {
constexpr double kLowestMarked = 1.7;
constexpr double kHighestMarked = 2.4;
constexpr int kRootBits = 48; // far finer than any tape, and reached in about ten steps

/// The root of a growing function between two ends that bracket it.
template<class Function>
double rootBetween(double low, double high, Function function) {
    const double atLow = function(low);
    const double atHigh = function(high);
    if (atLow == 0 || atHigh == 0) {
        return atLow == 0 ? low : high;
    }
    std::uintmax_t steps = 100;
    const auto bracket = boost::math::tools::toms748_solve(function, low, high, atLow, atHigh,
                                                           boost::math::tools::eps_tolerance<double>(kRootBits), steps);
    return (bracket.first + bracket.second) / 2;
}
} // namespace

std::optional<double> exponentOfArea(double areaCm2, double lengthMm, double widthMm) {
    const double share = areaCm2 * 100 / (lengthMm * widthMm);
    const auto excess = [&](double n) { return HoopCurve::quarterShare(n) - share; };
    if (excess(kLowestMarked) > 0 || excess(kHighestMarked) < 0) {
        return std::nullopt;
    }
    return rootBetween(kLowestMarked, kHighestMarked, excess);
}

Result<double> exponentWhere(std::string_view key, double measuredMm, const std::function<double(double)>& measure) {
    const double shortest = measure(kLowestExponent);
    const double longest = measure(kHighestExponent);
    if (measuredMm < shortest || measuredMm > longest) {
        return impossible(key, measuredMm, between(shortest, longest) + " mm in a head of this length and width");
    }
    return rootBetween(kLowestExponent, kHighestExponent, [&](double n) { return measure(n) - measuredMm; });
}

} // namespace rw::length
