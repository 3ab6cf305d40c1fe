// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/moment.h"
#include "app/cli/reports.h"
#include "app/cli/shop_ledger.h"
#include "app/cli/text_table.h"
#include "core/desk/demo_shop.h"
#include "core/desk/settings.h"
#include "core/exchange/json_text.h"
#include "ui/text/format.h"

namespace rw::cli {

Result<Answer> runDemo(const Given& given) {
    Instant now = SystemClock().now();
    if (const auto told = given.maybe("--now")) {
        const auto read = parseMoment(*told, OpeningHours{.timeZone = "Europe/London", .week = {}, .closedDays = {}});
        if (!read) {
            return tl::unexpected(read.error());
        }
        now = *read;
    }
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Create);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto stocked = shop->write([now](desk::Transaction& ledger) { return desk::stockDemoShop(ledger, now); });
    if (!stocked) {
        return tl::unexpected(stocked.error());
    }
    const auto name = shop->read([](desk::Transaction& ledger) -> Result<std::string> {
        return ledger.shop().setting(desk::setting::kShopName).value_or("The demo shop");
    });
    if (!name) {
        return tl::unexpected(name.error());
    }
    if (given.has("--json")) {
        exchange::JsonText json;
        json.beginObject().key("ledger").text(shop->address()).key("shop").text(*name).endObject();
        return Answer{json.result()};
    }
    return Answer{joined({QStringLiteral("%1 is in %2.")
                              .arg(printable(ui::fromUtf8(*name)), printable(ui::fromUtf8(shop->address())))})};
}

} // namespace rw::cli
