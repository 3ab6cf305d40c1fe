// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/order_point.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace rw::stock {

namespace {
constexpr double kReviewDays = 1;
} // namespace

LeadTimes::LeadTimes(std::span<const double> seen, std::span<const double> prior) {
    std::map<double, int> orders;
    for (const std::span<const double> each : {seen, prior}) {
        for (const double days : each) {
            assert(days >= 0);
            ++orders[days];
        }
    }
    assert(!orders.empty());
    for (const auto& [days, count] : orders) {
        m_mix.push_back({days, count / static_cast<double>(seen.size() + prior.size())});
    }
}

double chanceUntilDelivery(int jobs, const Demand& demand, const LeadTimes& leadTimes, double dailyRatio) {
    double chance = 0;
    for (const auto& [days, likely] : leadTimes.mix()) {
        chance += likely * chanceOfAtMost(jobs, demand, days + kReviewDays, dailyRatio);
    }
    return chance;
}

int jobsUntilDelivery(const Demand& demand, const LeadTimes& leadTimes, const Service& service) {
    assert(service.chance >= 0.5 && service.chance <= 0.9999);
    const auto isEnough = [&](int jobs) {
        return chanceUntilDelivery(jobs, demand, leadTimes, service.dailyRatio) >= service.chance;
    };
    int tooFew = -1;
    int enough = 0;
    while (!isEnough(enough)) {
        tooFew = enough;
        enough = 2 * enough + 1;
    }
    while (enough - tooFew > 1) {
        const int middle = tooFew + (enough - tooFew) / 2;
        (isEnough(middle) ? enough : tooFew) = middle;
    }
    return enough;
}

double orderPoint(int s) { return std::max(1.0, s + 0.5); }

bool isOnRequest(double jobsPerYear, double holdingRate, double reelPrice, double marginPerJob) {
    assert(marginPerJob > 0);
    return jobsPerYear <= 0 || jobsPerYear < holdingRate * reelPrice / marginPerJob;
}

} // namespace rw::stock
