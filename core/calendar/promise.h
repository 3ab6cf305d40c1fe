// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/opening_hours.h"

#include <chrono>
#include <vector>

namespace rw {

/// What the promise is made from.
struct Workshop {
    OpeningHours hours;
    std::vector<Worker> people{Worker{}}; ///< who strings; nobody: nothing is ever done
    int machines = 1;                     ///< that can be worked at at once; >= 1
    int marginPercent = 15;               ///< added to the time the work takes
    std::chrono::minutes step{15};        ///< promises are rounded up to it
};

/// How far ahead a promise is looked for.
constexpr std::chrono::days kPromiseHorizon{366};

/// When each of `jobs` (their minutes, in order) is done by a list schedule: each to the person and the machine that
/// finish it first, no job split, nobody at work outside the shop's hours or their own. `now` + kPromiseHorizon for
/// what is not done by then.
[[nodiscard]] std::vector<Instant> workDone(const Workshop& workshop, Instant now,
                                            const std::vector<std::chrono::minutes>& jobs);

/// The earliest honest time for one more job of `minutes`, behind `ahead` (the minutes of each job before it, in
/// order of promise): when workDone has it done, and a margin.
/// The margin is a share of the open time from now to the end of that work, and is open time too. Then rounded up to
/// the step of the wall clock; a promise lies within opening hours, so where less than a step is left of the day it is
/// the next opening. A job longer than any opening is carried over into the next ones, since nothing else would do.
/// `now` + kPromiseHorizon when the shop does not open often enough before that, or never: nobody can promise less.
[[nodiscard]] Instant earliestPromise(const Workshop& workshop, Instant now,
                                      const std::vector<std::chrono::minutes>& ahead, std::chrono::minutes minutes);

} // namespace rw
