// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/bench/simulated_world.h"

namespace rw::bench {

/// What the shop notes of a finished job.
enum class Noting {
    EveryTail,
    HalfTheTails, ///< of the other jobs only that it was enough
    InWords       ///< a hand, two hands, a head length, more
};

struct Scenario {
    Truth truth;
    Method method;
    Noting noting;
    bool costed; ///< the least-cost cut; else a flat ceiling of one job in a hundred
};

struct Outcome {
    int jobs = 0;
    int shortJobs = 0;
    int lateJobs = 0; ///< jobs on a frame that has had ten
    int shortLateJobs = 0;
    double overCutLateM = 0;  ///< mean of what those cut beyond their need, m
    double overCutFirstM = 0; ///< the same of first jobs on a frame

    [[nodiscard]] double shortShare() const { return static_cast<double>(shortJobs) / jobs; }
};

/// Two thousand jobs, one after the other: cut by the model with everything that was noted before, the shop's bias
/// learned from the other frames, in steps of 5 cm; strung as the world has it; noted.
[[nodiscard]] Outcome runShop(const Scenario& scenario, unsigned seed);

} // namespace rw::bench
