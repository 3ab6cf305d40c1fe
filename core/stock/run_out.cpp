// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/run_out.h"

#include <cassert>
#include <cmath>

namespace rw::stock {

namespace {
constexpr double kEarly = 0.1;
constexpr double kLikely = 0.5;
constexpr double kLate = 0.9;

std::optional<CivilDate> dateAfter(CivilDate today, double days) {
    using namespace std::chrono_literals;
    using std::chrono::sys_days;
    const sys_days last = 9999y / 12 / 31;
    if (days > static_cast<double>((last - sys_days(today)).count())) {
        return std::nullopt;
    }
    return CivilDate(sys_days(today) + std::chrono::days(static_cast<int>(std::floor(days))));
}
} // namespace

RunOut runOutDates(const Demand& demand, int jobsLeft, CivilDate today) {
    const auto date = [&](double p) { return dateAfter(today, runOutDay(demand, jobsLeft, p)); };
    return {.p10 = date(kEarly), .p50 = date(kLikely), .p90 = date(kLate)};
}

std::vector<StockStep> stockCourse(const Demand& demand, int jobsLeft) {
    assert(jobsLeft >= 0);
    std::vector<StockStep> steps;
    for (int before = 0; before <= jobsLeft; ++before) {
        steps.push_back({.left = jobsLeft - before - 1,
                         .early = runOutDay(demand, before, kEarly),
                         .likely = runOutDay(demand, before, kLikely),
                         .late = runOutDay(demand, before, kLate)});
    }
    return steps;
}

} // namespace rw::stock
