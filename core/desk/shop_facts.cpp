// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/shop_facts.h"

#include "core/desk/settings.h"

#include <algorithm>
#include <iterator>

namespace rw::desk {

namespace {
/// Takes the retired rows out and gives them back.
template<class Row>
std::vector<Row> takeRetired(std::vector<Row>& rows) {
    std::vector<Row> former;
    std::ranges::copy_if(rows, std::back_inserter(former), &Row::retired);
    std::erase_if(rows, [](const Row& row) { return row.retired; });
    return former;
}

CrossesRise badmintonCrosses(Shop& shop) {
    return CrossesRise::tryParse(shop.setting(setting::kBadmintonCrosses).value_or("")).value_or(CrossesRise::none());
}
} // namespace

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
                    .hasPrices = false,
                    .hours = hours,
                    .badmintonCrosses = badmintonCrosses(shop),
                    .aboveMarkedWords = shop.setting(setting::kAboveMarkedWords).value_or("")};
    facts.formerStaff = takeRetired(facts.staff);
    facts.formerMachines = takeRetired(facts.machines);
    facts.formerStrings = takeRetired(facts.strings);
    const auto prices = ledger.priceLists().validOn(localDate(hours, now));
    facts.hasPrices = prices || !ledger.priceLists().all().empty();
    if (prices) {
        std::ranges::copy_if(prices->lines, std::back_inserter(facts.extras),
                             [](const PriceLine& line) { return line.kind == ChargeKind::Extra; });
    }
    return facts;
}

} // namespace rw::desk
