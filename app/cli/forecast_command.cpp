// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/file_input.h"
#include "app/cli/reports.h"
#include "app/cli/shelf_ahead.h"
#include "app/cli/text_table.h"
#include "core/exchange/forecast_json.h"
#include "core/exchange/string_ahead_json.h"
#include "ui/text/ahead_words.h"
#include "ui/text/forecast_words.h"
#include "ui/text/format.h"

namespace rw::cli {

namespace {
Result<Answer> ofInput(const Given& given) {
    const auto bytes = readInput(given.value("--input"));
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    const auto request = exchange::forecastRequestFromJson(*bytes);
    if (!request) {
        return tl::unexpected(request.error());
    }
    const exchange::Forecast forecast = exchange::forecastOf(*request);
    if (given.has("--json")) {
        return Answer{exchange::forecastToJson(forecast)};
    }
    const QLocale locale = QLocale::system();
    QStringList lines{ui::demandText(forecast.jobsPerDay, locale),
                      ui::orderAtText(forecast.s, request->service.chance, locale)};
    if (forecast.runOut) {
        lines << ui::runOutText(forecast.runOut->p50, forecast.runOut->p10, locale);
    }
    return Answer{joined(lines)};
}

std::string asJson(const std::vector<desk::ShelfString>& strings) {
    exchange::JsonText json;
    json.beginObject().key("strings").beginList();
    for (const desk::ShelfString& string : strings) {
        json.beginObject().key("code").text(string.article.code).key("name").text(string.article.name);
        json.key("wholeJobsFree").whole(string.wholeJobsFree);
        exchange::writeAhead(json, *string.ahead);
        json.endObject();
    }
    json.endList().endObject();
    return json.result();
}

QStringList linesOf(const std::vector<desk::ShelfString>& strings, const QLocale& locale) {
    QStringList lines;
    for (const desk::ShelfString& string : strings) {
        lines << printable(ui::fromUtf8(string.article.code)) + QStringLiteral("  ") +
                     printable(ui::fromUtf8(string.article.name));
        for (const QString& sentence : ui::aheadSentences(string, locale)) {
            lines << QStringLiteral("   ") + sentence;
        }
    }
    if (strings.empty()) {
        lines << QStringLiteral("No string is known yet.");
    }
    return lines;
}

Result<Answer> ofLedger(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto strings = shelfAheadOf(*shop, given);
    if (!strings) {
        return tl::unexpected(strings.error());
    }
    return Answer{given.has("--json") ? asJson(*strings) : joined(linesOf(*strings, readerOf(*shop).locale))};
}
} // namespace

Result<Answer> runForecast(const Given& given) {
    if (given.has("--ledger") && given.has("--input")) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "--input"}, {"text", "given with --ledger"}, {"expected", "one of both"}});
    }
    if (given.has("--ledger")) {
        return ofLedger(given);
    }
    if (!given.has("--input")) {
        return refuse(Code::Missing, {{"what", "option --ledger or --input"}});
    }
    return ofInput(given);
}

} // namespace rw::cli
