// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/opening_hours.h"

#include <chrono>
#include <vector>

namespace rw {

/// What the promise is made from.
struct Workshop {
    OpeningHours hours;
    int pairs = 1;                          ///< people and machines that can work at once, the fewer of the two; >= 1
    int marginPercent = 15;                 ///< added to the time the work takes
    std::chrono::minutes step{15};          ///< promises are rounded up to it
};

/// The earliest honest time for one more job of `minutes`, behind `ahead` (the minutes of each job before it, in
/// order of promise): a list schedule, each job to the pair that is free first, no job split, none outside hours.
/// Rounded up to the step; when less than a step is left in the day, the next opening plus the work.
[[nodiscard]] Instant earliestPromise(const Workshop& workshop, Instant now,
                                      const std::vector<std::chrono::minutes>& ahead, std::chrono::minutes minutes);

} // namespace rw
