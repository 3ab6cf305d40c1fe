// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "app/files/csv_files.h"
#include "app/files/ledger_guard.h"
#include "core/desk/owner.h"
#include "core/exchange/json_text.h"
#include "ui/text/format.h"

namespace rw::cli {

namespace {
struct Exported {
    std::vector<desk::LedgerTable> tables;
    Currency currency;
};

/// Where the shop has an owner's PIN, what the shop paid is left out: a console asks for none.
Result<Exported> everything(desk::Transaction& ledger) {
    const auto hasPin = desk::hasOwnerPin(ledger);
    if (!hasPin) {
        return tl::unexpected(hasPin.error());
    }
    auto tables = desk::everything(ledger, !*hasPin);
    if (!tables) {
        return tl::unexpected(tables.error());
    }
    return Exported{*std::move(tables), ledger.shop().currency()};
}
} // namespace

Result<Answer> runExport(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto exported = shop->read(everything);
    if (!exported) {
        return tl::unexpected(exported.error());
    }
    const std::string& ledger = given.value("--ledger");
    const QString folder = ui::fromUtf8(given.value("--out"));
    const app::CsvFiles files(
        [&ledger](const QString& path) { return app::mustNotReplaceLedger(path.toStdString(), ledger); });
    const auto toTheEnd = [](int) { return true; };
    if (const auto written = files.write(folder, exported->tables, exported->currency, toTheEnd); !written) {
        return tl::unexpected(written.error());
    }
    exchange::JsonText json;
    json.beginObject().key("files").beginList();
    TextTable table({TextTable::Align::Left, TextTable::Align::Right});
    for (const desk::LedgerTable& each : exported->tables) {
        const QString path = app::CsvFiles::path(folder, each.name);
        const auto rows = static_cast<std::int64_t>(each.rows.size());
        table.add({printable(path), QStringLiteral("%1 rows").arg(rows)});
        json.beginObject().key("file").text(path.toStdString()).key("rows").whole(rows).endObject();
    }
    json.endList().endObject();
    return Answer{given.has("--json") ? json.result() : joined(table.lines())};
}

} // namespace rw::cli
