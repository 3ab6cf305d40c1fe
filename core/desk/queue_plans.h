// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/stock/queue_reasons.h"

#include <chrono>
#include <vector>

namespace rw::desk {

/// How the jobs that wait for one string are planned, and what there is to say about it.
struct QueuePlanOfString {
    struct Overfull {
        std::string tag;
        Length by;
    };
    StringArticle article;
    std::vector<WaitingCut> cuts;            ///< by promise; a reason's piece is its place here
    std::vector<Lot> lots;                   ///< a reason's lot is its place here
    std::vector<stock::QueueReason> reasons; ///< of what is planned, packets left out
    std::vector<Overfull> overfull;          ///< lots on which more was pinned than they hold
    bool proven = true;                      ///< no plan is better by what is worth moving a job for
};
/// Every string that a job waits for, by code. Looks `limit` a string for something better, and changes nothing.
[[nodiscard]] Result<std::vector<QueuePlanOfString>> queuePlans(Transaction& ledger, Instant now,
                                                                std::chrono::milliseconds limit);

} // namespace rw::desk
