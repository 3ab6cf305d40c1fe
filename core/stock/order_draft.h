// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/money/money.h"

#include <optional>
#include <span>
#include <vector>

namespace rw::stock {

/// Where a string that a supplier sells stands.
struct StringPosition {
    StringArticleId article;
    double positionJobs; ///< usable and on order, less promised
    int s;               ///< jobsUntilDelivery
    double jobsPerDay;
    double jobsPerReel; ///< positive
    int reelsPerOrder;  ///< at least 1
    Money reelPrice;    ///< positive
};

/// What the supplier asks for sending.
struct SupplierTerms {
    Money shipping;
    std::optional<Money> freeFrom; ///< goods of this sum on are sent for nothing
    double holdingRate = 0.20;     ///< what keeping a reel for a year costs, of its price
};

struct DraftLine {
    enum class Because {
        RunningShort,     ///< its position is at or below s
        DueSoon,          ///< it would be within 14 days, and something is sent anyway
        FillsFreeShipping ///< comes early, for less than the shipping that it saves
    };
    StringArticleId article;
    int reels;
    Because because;
    double daysEarly = 0; ///< before it would have run short, for FillsFreeShipping
};

/// One order for all strings of a supplier: nothing while none runs short; else those that do, those that will within
/// 14 days, and, where goods for free shipping are missing, the reels that are due soonest, when keeping all of them so
/// much longer costs less than the shipping. In the order of their reasons, then as they were given. A draft: nothing
/// is ordered by itself.
[[nodiscard]] std::vector<DraftLine> draftOrder(std::span<const StringPosition> strings, const SupplierTerms& terms);

} // namespace rw::stock
