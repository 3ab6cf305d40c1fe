// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/cut_queue.h"

#include <vector>

namespace rw::stock::test {

/// How good a plan is, to be compared with what another found.
struct PlanWorth {
    int leftOut = 0; ///< pieces
    int opened = 0;  ///< sealed lots
    double lostMm = 0;
};
[[nodiscard]] PlanWorth worthOf(const QueuePlan& plan, const std::vector<QueueLot>& lots,
                                const std::vector<QueuePiece>& pieces, const RemnantValue& value);

/// The best plan there is when pieces of one job may come off several lots: GLPK chooses for each lot one of all the
/// sets of pieces that fit on it, so that no piece comes off two. An open lot above 60 m must be among the lots.
[[nodiscard]] PlanWorth bestByGlpk(const std::vector<QueueLot>& lots, const std::vector<QueuePiece>& pieces,
                                   const RemnantValue& value);

} // namespace rw::stock::test
