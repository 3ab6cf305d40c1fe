// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/weigh_in.h"

#include <string>
#include <vector>

// The shelf weighed through: what was weighed, what was found, what is still to be weighed.
namespace rw::desk {

struct StockTakeSheet {
    std::optional<StockTake> take; ///< nothing: nobody has begun one
    std::string startedBy{};
    std::string endedBy{};        ///< "" while it goes on
    std::vector<WeighIn> lines{}; ///< the last weighing of each lot, in the order in which they were weighed
    std::vector<Lot> toWeigh{};   ///< open reels and ends that were not weighed yet, by tag
    int packets = 0;              ///< full ones, which are counted and not weighed
    [[nodiscard]] int findings() const;
};

/// The stock-take that goes on; with none, what one would begin with.
[[nodiscard]] Result<StockTakeSheet> stockTakeSheet(Transaction& ledger);

/// The one that goes on, or a new one: begun with the first lot that is weighed, so that who only looks makes none.
[[nodiscard]] StockTakeId goOnWithStockTake(Transaction& ledger, const By& by);

/// Ends it, whatever was not weighed or booked. Ended already it stays so. NotFound.
[[nodiscard]] Result<StockTakeSheet> endStockTake(Transaction& ledger, StockTakeId stockTake, const By& by);

} // namespace rw::desk
