// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/ledger_guard.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/owner.h"
#include "core/exchange/json_text.h"
#include "core/exchange/table_csv.h"
#include "ui/documents/file_set.h"
#include "ui/text/format.h"

#include <QDir>
#include <QFileInfo>

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

tl::unexpected<Refusal> unwritable(const std::string& folder, const char* reason) {
    return refuse(Code::FileUnwritable, {{"file", folder}, {"reason", std::string(reason)}});
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
    const std::string& folder = given.value("--out");
    const QDir out(ui::fromUtf8(folder));
    if (!out.mkpath(QStringLiteral("."))) {
        return unwritable(folder, "the folder cannot be made");
    }
    const auto pathOf = [&](const desk::LedgerTable& each) {
        return out.filePath(ui::fromUtf8(each.name) + QStringLiteral(".csv"));
    };
    for (const desk::LedgerTable& each : exported->tables) {
        if (const auto guarded = mustNotReplaceLedger(pathOf(each).toStdString(), given.value("--ledger")); !guarded) {
            return tl::unexpected(guarded.error());
        }
    }
    ui::FileSet together;
    exchange::JsonText json;
    json.beginObject().key("files").beginList();
    TextTable table({TextTable::Align::Left, TextTable::Align::Right});
    for (const desk::LedgerTable& each : exported->tables) {
        const QString path = pathOf(each);
        const QByteArray bytes = QByteArray::fromStdString(exchange::tableCsv(each, exported->currency));
        if (const auto added = together.add(path, bytes); !added) {
            return tl::unexpected(added.error());
        }
        const auto rows = static_cast<std::int64_t>(each.rows.size());
        table.add({printable(path), QStringLiteral("%1 rows").arg(rows)});
        json.beginObject().key("file").text(path.toStdString()).key("rows").whole(rows).endObject();
    }
    together.putInPlace();
    json.endList().endObject();
    return Answer{given.has("--json") ? json.result() : joined(table.lines())};
}

} // namespace rw::cli
