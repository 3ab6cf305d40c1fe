// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/evidence.h"

#include "core/length/standard_normal.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rw::length {

namespace {
double square(double value) { return value * value; }

/// Equal observations are counted, not repeated: a shop that cuts in tape steps has many.
struct Counted {
    Observation seen;
    double times;
};

std::vector<Counted> countCensored(std::span<const Observation> seen) {
    std::vector<Observation> sorted;
    std::ranges::copy_if(seen, std::back_inserter(sorted), [](const Observation& one) { return !one.isExact(); });
    std::ranges::sort(sorted);
    std::vector<Counted> counted;
    for (const Observation& one : sorted) {
        if (!counted.empty() && counted.back().seen == one) {
            ++counted.back().times;
        } else {
            counted.push_back({one, 1});
        }
    }
    return counted;
}

/// ln P(low <= r <= high) when r is normal around theta.
double logChance(const Observation& seen, double theta) {
    double below = (seen.high - theta) / seen.sd;
    double above = (theta - seen.low) / seen.sd;
    if (std::isinf(above)) {
        return logNormalBelow(below);
    }
    if (std::isinf(below)) {
        return logNormalBelow(above);
    }
    // P(a < Z < b) on the side of the nearer tail, where the difference of two small numbers is still exact.
    if (above < below) {
        std::swap(above, below);
    }
    const double larger = logNormalBelow(below);
    const double smaller = logNormalBelow(-above);
    return larger + std::log1p(-std::exp(smaller - larger));
}

/// From where to where theta may lie: seven deviations of the normal part, and as far as any interval pulls it.
std::pair<double, double> reachOf(const Belief& normal, const std::vector<Counted>& censored) {
    constexpr double kDeviations = 7.5;
    double low = normal.mean - kDeviations * normal.sd;
    double high = normal.mean + kDeviations * normal.sd;
    for (const Counted& one : censored) {
        low = std::isinf(one.seen.high) ? low : std::min(low, one.seen.high - kDeviations * one.seen.sd);
        high = std::isinf(one.seen.low) ? high : std::max(high, one.seen.low + kDeviations * one.seen.sd);
    }
    return {low, high};
}

/// The trapezoid rule on a bell of this deviation is exact to 1e-8 with steps of one deviation. No observation says
/// more than an exact one would; one more stands for the job that is to be predicted.
double stepFor(const Belief& normal, const std::vector<Counted>& censored) {
    double information = 1 / square(normal.sd) + 1 / square(kJobSpread);
    for (const Counted& one : censored) {
        information += one.times / square(one.seen.sd);
    }
    return 1 / std::sqrt(information);
}

void normalize(std::vector<ThetaPoint>& points) {
    constexpr double kNegligible = 1e-14;
    const double most = std::ranges::max(points, {}, &ThetaPoint::weight).weight;
    double sum = 0;
    for (ThetaPoint& point : points) {
        point.weight = std::exp(point.weight - most);
        sum += point.weight;
    }
    std::erase_if(points, [&](const ThetaPoint& point) { return point.weight < kNegligible * sum; });
    for (ThetaPoint& point : points) {
        point.weight /= sum;
    }
}
} // namespace

Belief groupBelief(const Belief& shopBias, double materialSpread) {
    return {shopBias.mean, std::hypot(shopBias.sd, kFrameSpread, materialSpread)};
}

Belief afterExact(const Belief& before, std::span<const Observation> seen) {
    double information = 1 / square(before.sd);
    double pull = before.mean * information;
    for (const Observation& one : seen) {
        if (one.isExact()) {
            information += 1 / square(one.sd);
            pull += one.low / square(one.sd);
        }
    }
    return {pull / information, 1 / std::sqrt(information)};
}

Belief shopBias(std::span<const std::span<const Observation>> groups) {
    double information = 1 / square(kShopSpread);
    double pull = 0;
    for (const auto& group : groups) {
        // What the group's exact observations say alone: their mean, as if nothing had been believed before.
        double own = 0;
        double sum = 0;
        for (const Observation& one : group) {
            if (one.isExact()) {
                own += 1 / square(one.sd);
                sum += one.low / square(one.sd);
            }
        }
        if (own > 0) {
            const double said = 1 / (square(kFrameSpread) + 1 / own);
            information += said;
            pull += said * sum / own;
        }
    }
    return {pull / information, 1 / std::sqrt(information)};
}

std::vector<ThetaPoint> thetaAfter(const Belief& before, std::span<const Observation> seen) {
    assert(before.sd > 0);
    const Belief normal = afterExact(before, seen);
    const std::vector<Counted> censored = countCensored(seen);
    const auto [low, high] = reachOf(normal, censored);
    const double step = stepFor(normal, censored);
    const auto steps = static_cast<std::size_t>(std::ceil((high - low) / step));
    std::vector<ThetaPoint> points;
    points.reserve(steps + 1);
    for (std::size_t i = 0; i <= steps; ++i) {
        const double theta = low + static_cast<double>(i) * step;
        double logWeight = -square((theta - normal.mean) / normal.sd) / 2;
        for (const Counted& one : censored) {
            logWeight += one.times * logChance(one.seen, theta);
        }
        points.push_back({theta, logWeight});
    }
    normalize(points);
    return points;
}

} // namespace rw::length
