// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/shop_ledger.h"

#include "core/desk/settings.h"
#include "ui/text/format.h"

namespace rw::cli {

Result<ShopLedger> ShopLedger::open(const std::string& address, sql::IfMissing ifMissing) {
    const auto parsed = sql::LedgerAddress::parse(address);
    if (!parsed) {
        return tl::unexpected(parsed.error());
    }
    auto ledger = sql::openLedger(*parsed, ifMissing);
    if (!ledger) {
        return tl::unexpected(ledger.error());
    }
    return ShopLedger(*std::move(ledger), parsed->withoutPassword());
}

Reader readerOf(ShopLedger& shop) {
    const auto zone = shop.read([](desk::Transaction& ledger) -> Result<std::string> {
        return desk::openingHours(ledger.shop()).timeZone;
    });
    return {QLocale::system(), ui::timeZoneOf(zone ? *zone : std::string())};
}

} // namespace rw::cli
