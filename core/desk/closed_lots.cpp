// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/stockroom.h"

namespace rw::desk {

Result<std::vector<ClosedLot>> closedLots(Transaction& ledger, StringArticleId article) {
    if (const auto string = articleOf(ledger, article); !string) {
        return tl::unexpected(string.error());
    }
    std::vector<ClosedLot> closed;
    for (Lot& lot : ledger.lots().closed(article)) {
        const auto movements = ledger.lots().movements(*lot.id);
        const auto owner = lot.owner ? ledger.customers().get(*lot.owner) : std::nullopt;
        const MovementReason how = movements.empty() ? MovementReason::Measured : movements.back().reason;
        closed.push_back({std::move(lot), how, owner ? owner->name : std::string()});
    }
    return closed;
}

} // namespace rw::desk
