// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/need.h"

#include "core/length/standard_normal.h"

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rw::length {

Need::Need(double predictedMm, std::vector<ThetaPoint> points, double jobSd)
    : m_predicted(predictedMm)
    , m_points(std::move(points))
    , m_jobSd(jobSd) {
    double squares = 0;
    for (const ThetaPoint& point : m_points) {
        m_meanLog += point.weight * point.theta;
    }
    for (const ThetaPoint& point : m_points) {
        squares += point.weight * (point.theta - m_meanLog) * (point.theta - m_meanLog);
    }
    m_sdLog = std::hypot(m_jobSd, std::sqrt(squares));
    m_median = atSd(0);
}

Need Need::predicted(double predictedMm, const Belief& before) {
    return {predictedMm, {{before.mean, 1}}, std::hypot(before.sd, kJobSpread)};
}

Need Need::learned(double predictedMm, const Belief& before, std::span<const Observation> seen) {
    return seen.empty() ? predicted(predictedMm, before) : Need(predictedMm, thetaAfter(before, seen), kJobSpread);
}

Need Need::withSpread(double medianMm, double sdLog) { return {medianMm, {{0, 1}}, sdLog}; }

Need Need::over(double predictedMm) const {
    Need other = *this;
    other.m_predicted = predictedMm;
    other.m_median = m_median / m_predicted * predictedMm;
    return other;
}

Need Need::blurred(double share) const { return {m_predicted, m_points, std::hypot(m_jobSd, share)}; }

double Need::sdMm() const {
    const double scatter = m_jobSd * m_jobSd;
    double mean = 0;
    double squares = 0;
    for (const ThetaPoint& point : m_points) {
        mean += point.weight * std::exp(point.theta + scatter / 2);
        squares += point.weight * std::exp(2 * point.theta + 2 * scatter);
    }
    return m_predicted * std::sqrt(squares - mean * mean);
}

double Need::chanceAbove(double lengthMm) const {
    if (lengthMm <= 0) {
        return 1;
    }
    const double ratio = std::log(lengthMm / m_predicted);
    double chance = 0;
    for (const ThetaPoint& point : m_points) {
        chance += point.weight * normalAbove((ratio - point.theta) / m_jobSd);
    }
    return chance;
}

double Need::exceededWith(double chance) const {
    assert(0 < chance && chance < 1);
    return atSd(normalExceededWith(chance));
}

double Need::atSd(double z) const { return m_predicted * std::exp(ratioAtSd(z)); }

double Need::ratioAtSd(double z) const {
    if (m_points.size() == 1) {
        return m_points.front().theta + z * m_jobSd;
    }
    // Far out only one job's scatter is left.
    constexpr double kFarOut = 8;
    if (std::abs(z) > kFarOut) {
        const double far = std::copysign(kFarOut, z);
        return ratioAtSd(far) + (z - far) * m_jobSd;
    }
    // A mixture's quantile lies between those of its outermost parts. The smaller tail is looked at, from which a
    // small chance can be told exactly.
    const double wanted = normalAbove(std::abs(z));
    const double side = z < 0 ? -1 : 1;
    const auto excess = [&](double ratio) {
        double tail = 0;
        double density = 0;
        for (const ThetaPoint& point : m_points) {
            const double at = side * (ratio - point.theta) / m_jobSd;
            tail += point.weight * normalAbove(at);
            density += point.weight * normalDensity(at);
        }
        return std::pair{std::log(tail / wanted), -side * density / (m_jobSd * tail)};
    };
    const double low = m_points.front().theta + z * m_jobSd;
    const double high = m_points.back().theta + z * m_jobSd;
    const double guess = std::clamp(m_meanLog + z * m_sdLog, low, high);
    constexpr int kBits = 36; // of the ratio: far below a thousandth of a millimetre
    std::uintmax_t steps = 60;
    return boost::math::tools::newton_raphson_iterate(excess, guess, low, high, kBits, steps);
}

} // namespace rw::length
