// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/run_out.h"

#include <optional>
#include <vector>

namespace rw::desk {

/// What the ledger's days say will become of one string. Jobs are whole jobs of what is free: what is promised is gone.
struct StringAhead {
    CivilDate today{};         ///< in the shop; what is told counts from it
    bool runningShort = false; ///< so few are left that it is time to order
    /// Nobody has ever wanted it, or it earns less in a year than a reel of it costs to keep: nobody is told to order
    /// it.
    bool onRequest = false;
    double jobsPerDay = 0;   ///< 0: nobody has wanted any string before today, so nothing can be told
    int jobsLeft = 0;        ///< free; 0 when more is promised than is there
    int s = 0;               ///< stock::jobsUntilDelivery: it runs short with so many, or fewer, left
    double service = 0.98;   ///< the chance of having enough that `s` gives
    double chanceOfNone = 0; ///< that an order sent now comes after a job that finds none
    stock::RunOut runOut = {};
    std::optional<stock::Demand> demand = {};
    /// From `jobsLeft` down to the run-out; none while nothing is known. Reckoned anew at each call.
    [[nodiscard]] std::vector<stock::StockStep> course() const {
        return demand ? stock::stockCourse(*demand, jobsLeft) : std::vector<stock::StockStep>();
    }
    [[nodiscard]] bool isKnown() const { return jobsPerDay > 0; }
};

} // namespace rw::desk
