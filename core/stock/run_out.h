// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/stock/demand.h"

#include <optional>
#include <vector>

// When a string runs out, as dates, and how its stock goes down until then.
namespace rw::stock {

/// When a string has run out, with a chance of 10, 50 and 90 %; no date beyond the year 9999.
struct RunOut {
    std::optional<CivilDate> p10;
    std::optional<CivilDate> p50;
    std::optional<CivilDate> p90;
    bool operator==(const RunOut&) const = default;
};
/// See runOutDay(). `jobsLeft` is not negative.
[[nodiscard]] RunOut runOutDates(const Demand& demand, int jobsLeft, CivilDate today);

/// After so many days from today only `left` whole jobs are left: with a chance of 10 % after `early`, of 50 % after
/// `likely`, of 90 % after `late`.
struct StockStep {
    int left; ///< -1: a job finds none, which is to have run out
    double early;
    double likely;
    double late;
};
/// The stock from `jobsLeft` (not negative) down to the job that finds none, the highest first: runOutDay() of each job
/// that is still to be asked for. The last step is the run-out itself.
[[nodiscard]] std::vector<StockStep> stockCourse(const Demand& demand, int jobsLeft);

} // namespace rw::stock
