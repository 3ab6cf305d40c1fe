// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/now.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/order_drafts.h"
#include "core/desk/owner.h"
#include "core/exchange/json_text.h"
#include "core/exchange/string_ahead_json.h"
#include "core/exchange/table_csv.h"
#include "ui/text/format.h"
#include "ui/text/order_words.h"

namespace rw::cli {

namespace {
struct Drafts {
    std::vector<desk::OrderDraft> drafts;
    Currency currency;
    bool showsPaid; ///< where the shop has an owner's PIN, what it pays is left out: a console asks for none
};

Result<Drafts> draftsOf(desk::Transaction& ledger, const std::optional<std::string>& moment) {
    const auto now = nowIn(ledger, moment);
    const auto hasPin = desk::hasOwnerPin(ledger);
    if (!now || !hasPin) {
        return tl::unexpected<Refusal>(now ? hasPin.error() : now.error());
    }
    auto drafts = desk::orderDrafts(ledger, *now);
    if (!drafts) {
        return tl::unexpected(drafts.error());
    }
    return Drafts{*std::move(drafts), ledger.shop().currency(), !*hasPin};
}

void writeMoney(exchange::JsonText& json, std::string_view key, const std::optional<Money>& amount) {
    json.key(key);
    if (amount) {
        json.text(amount->text());
    } else {
        json.nothing();
    }
}

std::string asJson(const Drafts& found) {
    exchange::JsonText json;
    json.beginObject().key("orders").beginList();
    for (const desk::OrderDraft& draft : found.drafts) {
        json.beginObject().key("supplier").text(draft.supplier);
        if (found.showsPaid) {
            writeMoney(json, "goods", draft.goods());
            writeMoney(json, "lastShipping", draft.shipping);
        }
        json.key("lines").beginList();
        for (const desk::OrderLine& line : draft.lines) {
            json.beginObject().key("code").text(line.article.code).key("name").text(line.article.name);
            json.key("kind").text(line.kind == LotKind::Packet ? "packet" : "reel");
            json.key("eachMm");
            if (line.each) {
                json.whole(line.each->millimetres());
            } else {
                json.nothing();
            }
            json.key("count").whole(line.count).key("because").text(desk::becauseText(line.because));
            json.key("wholeJobsFree").whole(line.ahead.jobsLeft);
            if (found.showsPaid) {
                writeMoney(json, "priceEach", line.priceEach);
            }
            exchange::writeAhead(json, line.ahead);
            json.endObject();
        }
        json.endList().endObject();
    }
    json.endList().endObject();
    return json.result();
}

QStringList linesOf(const Drafts& found, const QLocale& locale) {
    QStringList lines;
    for (const desk::OrderDraft& draft : found.drafts) {
        if (!lines.isEmpty()) {
            lines << QString();
        }
        lines << printable(ui::supplierText(draft));
        TextTable table({TextTable::Align::Left, TextTable::Align::Left, TextTable::Align::Left});
        for (const desk::OrderLine& line : draft.lines) {
            table.add({ui::orderCountText(line, locale),
                       printable(ui::fromUtf8(line.article.code) + QLatin1Char(' ') + ui::fromUtf8(line.article.name)),
                       ui::orderWhyText(line, locale)});
        }
        lines << table.lines(3);
        if (found.showsPaid) {
            lines << QStringLiteral("   ") + ui::orderSumText(draft, locale);
        }
    }
    return lines.isEmpty() ? QStringList{QStringLiteral("Nothing runs short, so there is nothing to order.")} : lines;
}

std::string asCsv(const Drafts& found) {
    const desk::LedgerTable table = desk::orderTable(found.drafts);
    return exchange::tableCsv(found.showsPaid ? table : desk::withoutOwnersColumns(table), found.currency);
}
} // namespace

Result<Answer> runOrder(const Given& given) {
    if (given.has("--json") && given.has("--csv")) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "--csv"}, {"text", "given with --json"}, {"expected", "one of both"}});
    }
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto found = shop->read([&](desk::Transaction& ledger) { return draftsOf(ledger, given.maybe("--now")); });
    if (!found) {
        return tl::unexpected(found.error());
    }
    return Answer{given.has("--json")  ? asJson(*found)
                  : given.has("--csv") ? asCsv(*found)
                                       : joined(linesOf(*found, readerOf(*shop).locale))};
}

} // namespace rw::cli
