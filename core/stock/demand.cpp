// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/demand.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/negative_binomial.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace rw::stock {

namespace {
constexpr double kHalfLifeDays = 90;
const double kFading = std::exp2(-1 / kHalfLifeDays);
} // namespace

Demand Demand::likeOthers(double jobsPerDay) {
    assert(jobsPerDay > 0);
    return Demand(kPriorShape / jobsPerDay);
}

void Demand::addDay(double jobs) {
    assert(jobs >= 0);
    m_jobs = kFading * m_jobs + jobs;
    m_days = kFading * m_days + 1;
}

double dailyRatio(std::span<const std::vector<double>> rows) {
    double variance = 0;
    double mean = 0;
    for (const std::vector<double>& days : rows) {
        if (days.size() < 2) {
            continue;
        }
        const auto count = static_cast<double>(days.size());
        const double own = std::accumulate(days.begin(), days.end(), 0.0) / count;
        const double squares = std::accumulate(days.begin(), days.end(), 0.0, [own](double sum, double jobs) {
            return sum + (jobs - own) * (jobs - own);
        });
        variance += squares;
        mean += own * (count - 1);
    }
    return mean > 0 ? std::max(1.0, variance / mean) : 1;
}

double chanceOfAtMost(double jobs, const Demand& demand, double days, double dailyRatio) {
    assert(jobs >= 0 && days > 0 && dailyRatio >= 1);
    // The variance is this much of the mean above it: R - 1 for the ratio R = dailyRatio + t/b.
    const double excess = dailyRatio - 1 + days / demand.days();
    const double mean = demand.jobsPerDay() * days;
    return boost::math::cdf(boost::math::negative_binomial(mean / excess, 1 / (1 + excess)), jobs);
}

double runOutDay(const Demand& demand, int jobsLeft, double p) {
    assert(jobsLeft >= 0 && p > 0 && p < 1);
    const boost::math::beta_distribution<> share(jobsLeft + 1.0, demand.shape());
    // From the upper tail, which stays exact where x comes close to 1.
    const double x = boost::math::quantile(share, p);
    const double rest = boost::math::quantile(boost::math::beta_distribution<>(demand.shape(), jobsLeft + 1.0), 1 - p);
    return demand.days() * x / rest;
}

} // namespace rw::stock
