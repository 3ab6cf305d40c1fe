// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/demand_days.h"

#include <numeric>

namespace rw::stock {

namespace {
constexpr std::ptrdiff_t kFourWeeks = 28;
} // namespace

std::optional<PooledDemand> pooled(std::span<const DailyJobs> strings) {
    double jobs = 0;
    std::size_t days = 0;
    std::vector<std::vector<double>> weeks;
    for (const DailyJobs& string : strings) {
        jobs += std::accumulate(string.begin(), string.end(), 0.0);
        days += string.size();
        for (auto day = string.begin(); string.end() - day >= kFourWeeks; day += kFourWeeks) {
            weeks.emplace_back(day, day + kFourWeeks);
        }
    }
    if (jobs <= 0) {
        return std::nullopt;
    }
    return PooledDemand{.jobsPerDay = jobs / static_cast<double>(days), .dailyRatio = dailyRatio(weeks)};
}

Demand demandAfter(const DailyJobs& days, const PooledDemand& others) {
    Demand demand = Demand::likeOthers(others.jobsPerDay);
    for (const double jobs : days) {
        demand.addDay(jobs);
    }
    return demand;
}

} // namespace rw::stock
