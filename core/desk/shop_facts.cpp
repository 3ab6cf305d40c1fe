// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/shop_facts.h"

#include "core/desk/settings.h"

#include <algorithm>
#include <iterator>

namespace rw::desk {

Result<ShopFacts> shopFacts(Transaction& ledger, Instant now) {
    Shop& shop = ledger.shop();
    const OpeningHours hours = openingHours(shop);
    ShopFacts facts{.name = shop.setting(setting::kShopName).value_or(""),
                    .timeZone = hours.timeZone,
                    .currency = shop.currency(),
                    .staff = shop.staff(),
                    .machines = shop.machines(),
                    .strings = ledger.strings().all(),
                    .extras = {},
                    .hasPrices = false};
    if (const auto prices = ledger.priceLists().validOn(localDate(hours, now))) {
        facts.hasPrices = true;
        std::ranges::copy_if(prices->lines, std::back_inserter(facts.extras),
                             [](const PriceLine& line) { return line.kind == ChargeKind::Extra; });
    }
    return facts;
}

} // namespace rw::desk
