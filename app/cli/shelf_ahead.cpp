// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/shelf_ahead.h"

#include "app/cli/now.h"

namespace rw::cli {

Result<std::vector<desk::ShelfString>> shelfAheadOf(ShopLedger& shop, const Given& given) {
    return shop.read([&](desk::Transaction& ledger) -> Result<std::vector<desk::ShelfString>> {
        const auto now = nowIn(ledger, given.maybe("--now"));
        return now ? desk::shelfAhead(ledger, *now) : tl::unexpected(now.error());
    });
}

} // namespace rw::cli
