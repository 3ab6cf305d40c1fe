// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/cut_queue.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace rw::stock {

/// Something to know about a plan. ui/text says it in words.
struct QueueReason {
    enum class Kind {
        FitsNowhere,  ///< {piece}
        OpensSealed,  ///< {lot}
        LeavesPlenty, ///< {lot, leaves}: above kFullEnough, where no cut loses anything
        LeavesUseful, ///< {lot, leaves, lostMm, later}
        LeavesBadEnd, ///< {lot, leaves, lostMm}: loses kWorthOpeningMm more than a full reel will
        LeavesScrap,  ///< {lot, leaves}: shorter than the shortest useful piece
        MeasureFirst, ///< {lot, leaves}: under twice the uncertainty of its book
        TimeWasUp,    ///< the plan is the best that was found, not proven to be the best
    };
    Kind kind;
    std::optional<std::size_t> piece = std::nullopt;
    std::optional<std::size_t> lot = std::nullopt;
    Length leaves = Length::fromMillimetres(0); ///< by the book, the gap among it
    double lostMm = 0;                          ///< of what it leaves
    std::int64_t later = 0;                     ///< how many more of what is usually wanted it should still give
    bool whole = false;                         ///< long enough for one of the usual length, not only for a shorter one
};

/// What a cut off a lot leaves there: one of the Leaves kinds, without a lot.
[[nodiscard]] QueueReason whatIsLeft(const CutSource& source, Length cut, const RemnantValue& value);

/// What there is to say about a plan: pieces without a lot first, then each lot that is cut, then the plan itself.
/// `uncertaintiesMm` has one standard deviation of each lot's book.
[[nodiscard]] std::vector<QueueReason> reasonsFor(const QueuePlan& plan, std::span<const QueueLot> lots,
                                                  std::span<const QueuePiece> pieces,
                                                  std::span<const double> uncertaintiesMm, const RemnantValue& value);

} // namespace rw::stock
