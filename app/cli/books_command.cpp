// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/now.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/books.h"
#include "core/desk/owner.h"
#include "core/desk/settings.h"
#include "core/exchange/json_text.h"
#include "ui/text/books_words.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace rw::cli {

namespace {
using Align = TextTable::Align;

/// What the owner looks at: what is open, and this day's and this month's money.
struct Books {
    Instant now;
    std::vector<desk::OpenMatter> open;
    desk::Takings day;
    desk::Takings month;
    std::optional<desk::Earned> earned; ///< in the month; nothing: the owner's PIN hides it
};

/// `moment`: what to take for now; nothing: what the computer says.
Result<Books> booksOf(desk::Transaction& ledger, const std::optional<std::string>& moment) {
    const OpeningHours hours = desk::openingHours(ledger.shop());
    const auto now = nowIn(ledger, moment);
    if (!now) {
        return tl::unexpected(now.error());
    }
    const CivilDate today = localDate(hours, *now);
    auto open = desk::openMatters(ledger);
    auto day = desk::takings(ledger, desk::dayOf(today));
    auto month = desk::takings(ledger, desk::monthOf(today));
    auto earned = desk::earned(ledger, desk::monthOf(today));
    auto hasPin = desk::hasOwnerPin(ledger);
    for (const Refusal* refusal :
         {hasPin ? nullptr : &hasPin.error(), open ? nullptr : &open.error(), day ? nullptr : &day.error(),
          month ? nullptr : &month.error(), earned ? nullptr : &earned.error()}) {
        if (refusal != nullptr) {
            return tl::unexpected(*refusal);
        }
    }
    return Books{*now, *std::move(open), *std::move(day), *std::move(month),
                 *hasPin ? std::nullopt : std::optional(*std::move(earned))};
}

QStringList takingsLines(const QString& title, const desk::Takings& takings, const Reader& reader) {
    TextTable table({Align::Left, Align::Right});
    for (const auto& [way, amount] : takings.byWay) {
        table.add({printable(ui::fromUtf8(way)), ui::moneyText(amount, reader.locale)});
    }
    table.add({QStringLiteral("together"), ui::moneyText(takings.total, reader.locale)});
    return QStringList{title} + table.lines(2);
}

QStringList asLines(const Books& books, const Reader& reader) {
    QStringList lines{QStringLiteral("Open")};
    TextTable open({Align::Right, Align::Left, Align::Left, Align::Left, Align::Right});
    for (const desk::OpenMatter& matter : books.open) {
        open.add({QString::number(matter.job.number), printable(ui::fromUtf8(matter.job.customer)),
                  printable(ui::racketName(matter.job.frame, matter.job.mark)),
                  ui::openMatterText(matter, reader.locale),
                  matter.strung ? ui::ageText(*matter.strung, books.now) : QString()});
    }
    lines << (books.open.empty() ? QStringList{QStringLiteral("  nothing")} : open.lines(2)) << QString();
    lines << takingsLines(QStringLiteral("Taken today"), books.day, reader) << QString();
    lines << takingsLines(QStringLiteral("Taken this month"), books.month, reader) << QString();
    if (!books.earned) {
        lines << QStringLiteral("What was earned is hidden by the owner's PIN; the program's window asks for it.");
        return lines;
    }
    const Earnings& sum = books.earned->sum;
    TextTable earned({Align::Left, Align::Right});
    earned.add({QStringLiteral("charged, without tax"), ui::moneyText(sum.charged, reader.locale)});
    earned.add({QStringLiteral("string that was cut"), ui::moneyText(sum.string, reader.locale)});
    earned.add({QStringLiteral("cost of extras"), ui::moneyText(sum.extras, reader.locale)});
    earned.add({QStringLiteral("left"), ui::moneyText(sum.margin(), reader.locale)});
    lines << QStringLiteral("Strung this month: %1 jobs").arg(books.earned->jobs.size()) << earned.lines(2);
    return lines;
}

void writeTakings(exchange::JsonText& json, std::string_view name, const desk::Takings& takings) {
    json.key(name).beginObject().key("total").text(takings.total.text()).key("byWay").beginList();
    for (const auto& [way, amount] : takings.byWay) {
        json.beginObject().key("way").text(way).key("amount").text(amount.text()).endObject();
    }
    json.endList().endObject();
}

std::string asJson(const Books& books) {
    exchange::JsonText json;
    json.beginObject().key("currency").text(books.day.total.currency().code());
    json.key("open").beginList();
    for (const desk::OpenMatter& matter : books.open) {
        json.beginObject()
            .key("job")
            .whole(matter.job.number)
            .key("state")
            .text(jobStateText(matter.job.state))
            .key("told")
            .yesNo(matter.told.has_value())
            .key("owed")
            .text(matter.owed().text())
            .endObject();
    }
    json.endList();
    writeTakings(json, "today", books.day);
    writeTakings(json, "month", books.month);
    json.key("earned");
    if (books.earned) {
        const Earnings& sum = books.earned->sum;
        json.beginObject().key("jobs").whole(static_cast<std::int64_t>(books.earned->jobs.size()));
        json.key("charged").text(sum.charged.text()).key("string").text(sum.string.text());
        json.key("extras").text(sum.extras.text()).key("margin").text(sum.margin().text()).endObject();
    } else {
        json.nothing();
    }
    json.endObject();
    return json.result();
}
} // namespace

Result<Answer> runBooks(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto books = shop->read([&](desk::Transaction& ledger) { return booksOf(ledger, given.maybe("--now")); });
    if (!books) {
        return tl::unexpected(books.error());
    }
    return Answer{given.has("--json") ? asJson(*books) : joined(asLines(*books, readerOf(*shop)))};
}

} // namespace rw::cli
