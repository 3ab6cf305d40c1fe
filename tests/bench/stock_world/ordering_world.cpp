// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/ordering_world.h"

#include <cmath>
#include <numbers>
#include <numeric>

namespace rw::world {

namespace {
constexpr double kDaysOfAYear = 365;
constexpr int kDaysOfAQuarter = 91;
constexpr double kDrift = 0.25;
constexpr double kSeason = 0.40;
constexpr double kTeams = 0.07;
constexpr double kHalves = 0.20;
constexpr double kRacketsPerArrival = 1 - kTeams + kTeams * 3;
} // namespace

OrderingWorld::OrderingWorld(double jobsPerMonth, std::uint64_t seed)
    : m_dice(seed)
    , m_arrivalsPerDay(jobsPerMonth * 12 / kDaysOfAYear / kRacketsPerArrival) {
    for (std::size_t rank = 0; rank < kStrings; ++rank) {
        m_popularity[rank] = 1 / static_cast<double>(rank + 1);
    }
}

std::size_t OrderingWorld::popularString() {
    double left = m_dice.uniform() * std::accumulate(m_popularity.begin(), m_popularity.end(), 0.0);
    std::size_t string = 0;
    while (string + 1 < kStrings && left >= m_popularity[string]) {
        left -= m_popularity[string++];
    }
    return string;
}

std::vector<Arrival> OrderingWorld::nextDay() {
    if (m_day > 0 && m_day % kDaysOfAQuarter == 0) {
        for (double& popularity : m_popularity) {
            popularity *= std::exp(m_dice.normal(0, kDrift));
        }
    }
    const double season = 1 + kSeason * std::sin(2 * std::numbers::pi * m_day / kDaysOfAYear);
    ++m_day;
    std::vector<Arrival> arrivals(static_cast<std::size_t>(m_dice.poisson(m_arrivalsPerDay * season)));
    for (Arrival& arrival : arrivals) {
        arrival.string = popularString();
        const int rackets = m_dice.chance(kTeams) ? m_dice.wholeWithin(2, 4) : 1;
        for (int i = 0; i < rackets; ++i) {
            arrival.jobs.push_back(m_dice.chance(kHalves) ? 0.5 : 1);
        }
    }
    return arrivals;
}

} // namespace rw::world
