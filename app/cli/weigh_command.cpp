// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/moment.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/settings.h"
#include "core/desk/weigh_in.h"
#include "core/exchange/json_text.h"
#include "ui/text/format.h"
#include "ui/text/weigh_words.h"

#include <cmath>

namespace rw::cli {

namespace {
std::int64_t whole(double mm) { return std::llround(mm); }

Result<std::optional<Mass>> massIn(const Given& given, std::string_view option) {
    const auto text = given.maybe(option);
    if (!text) {
        return std::optional<Mass>();
    }
    const auto mass = Mass::tryParse(*text);
    return mass ? Result<std::optional<Mass>>(*mass) : tl::unexpected(mass.error());
}

/// Who weighed, and when.
Result<By> byIn(desk::Transaction& ledger, const Given& given) {
    const auto moment = given.maybe("--now");
    const auto now =
        moment ? parseMoment(*moment, desk::openingHours(ledger.shop())) : Result<Instant>(SystemClock().now());
    if (!now) {
        return tl::unexpected(now.error());
    }
    const auto name = given.maybe("--by");
    for (const desk::StaffMember& member : ledger.shop().staff()) {
        if (!member.retired && (!name || member.name == *name)) {
            return By{*member.id, "stockroom", *now};
        }
    }
    return refuse(Code::NotFound, {{"what", "person"}, {"text", name.value_or("")}});
}

Result<desk::WeighLot> commandIn(const Given& given, const By& by) {
    const auto gross = massIn(given, "--gross");
    const auto empty = massIn(given, "--empty");
    const auto fresh = massIn(given, "--new");
    const auto step = massIn(given, "--step");
    for (const auto* mass : {&gross, &empty, &fresh, &step}) {
        if (!*mass) {
            return tl::unexpected(mass->error());
        }
    }
    return desk::WeighLot{
        .tag = given.value("--lot"), .gross = **gross, .step = *step, .empty = *empty, .fresh = *fresh, .by = by};
}

Result<desk::WeighIn> weighed(desk::Transaction& ledger, const Given& given) {
    const auto by = byIn(ledger, given);
    const auto command = by ? commandIn(given, *by) : tl::unexpected(by.error());
    if (!command) {
        return tl::unexpected(command.error());
    }
    if (!given.has("--keep") && !given.has("--book")) {
        return desk::wouldWeigh(ledger, *command);
    }
    auto in = desk::weigh(ledger, *command);
    if (!in || !given.has("--book")) {
        return in;
    }
    const auto booked = desk::bookWeighing(ledger, {*in->weighing.id, *by});
    if (!booked) {
        return booked;
    }
    in->weighing = booked->weighing; // what was said of it when it was weighed stays said
    in->lot = booked->lot;
    return in;
}

QStringList asLines(const desk::WeighIn& in, const Reader& reader) {
    using Align = TextTable::Align;
    TextTable table({Align::Left, Align::Left});
    table.add({QStringLiteral("by the scale"), ui::weighedText(in, reader.locale)});
    table.add({QStringLiteral("by the book"), ui::sureLengthText(in.weighing.bookMm, reader.locale)});
    QStringList lines{QStringLiteral("%1 %2: %3")
                          .arg(printable(ui::fromUtf8(in.lot.tag)), printable(ui::fromUtf8(in.article.name)),
                               ui::massText(in.weighing.gross.weight, reader.locale))};
    lines << table.lines(2) << ui::weighVerdictText(in, reader.locale);
    if (const QString causes = ui::weighCausesText(in, reader.locale); !causes.isEmpty()) {
        lines << causes;
    }
    for (const QString& note : ui::weighNotes(in, reader.locale)) {
        lines << printable(note);
    }
    if (in.weighing.booked) {
        lines << QStringLiteral("Booked: it holds %1 now.").arg(ui::heldText(in.lot.length, reader.locale));
    }
    return lines << ui::weighLimitsText();
}

void writeLength(exchange::JsonText& json, std::string_view name, const stock::Estimate& mm) {
    json.key(name).beginObject(exchange::JsonText::Shape::Line);
    json.key("lengthMm").whole(whole(mm.value)).key("twiceSdMm").whole(whole(2 * mm.sd)).endObject();
}

std::string_view causeText(desk::WeighCause cause) {
    switch (cause) {
    case desk::WeighCause::UnbookedJobs:
        return "unbooked-jobs";
    case desk::WeighCause::UnbookedCut:
        return "unbooked-cut";
    case desk::WeighCause::CutNotMade:
        return "cut-not-made";
    case desk::WeighCause::NotFull:
        return "not-full-when-new";
    case desk::WeighCause::WrongSpool:
        return "wrong-spool";
    case desk::WeighCause::WrongReel:
        return "wrong-reel";
    }
    return {};
}

std::string asJson(const desk::WeighIn& in) {
    exchange::JsonText json;
    json.beginObject().key("lot").text(in.lot.tag).key("string").text(in.article.code);
    json.key("grossMg").whole(in.weighing.gross.weight.milligrams());
    json.key("basis").text(stock::weighBasisText(in.weighing.basis));
    writeLength(json, "weighed", in.weighing.weighedMm);
    writeLength(json, "book", in.weighing.bookMm);
    json.key("differenceMm").whole(whole(in.finding.differenceMm)).key("finding").yesNo(in.finding.isFinding);
    json.key("causes").beginList(exchange::JsonText::Shape::Line);
    for (const desk::WeighCause cause : in.causes) {
        json.text(causeText(cause));
    }
    json.endList().key("unbookedJobs");
    if (in.finding.unbookedJobs) {
        json.whole(*in.finding.unbookedJobs);
    } else {
        json.nothing();
    }
    if (in.weighing.whenNewMm) {
        writeLength(json, "whenNew", *in.weighing.whenNewMm);
    } else {
        json.key("whenNew").nothing();
    }
    json.key("gramsPerMetre").number(in.weighing.gramsPerMetre.value);
    json.key("keptAsNewWeight").yesNo(in.isNewWeight && in.weighing.id);
    json.key("booked").yesNo(in.weighing.booked.has_value());
    json.key("leftMm").whole(in.lot.length.millimetres()).endObject();
    return json.result();
}
} // namespace

Result<Answer> runWeigh(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto work = [&](desk::Transaction& ledger) { return weighed(ledger, given); };
    const bool writes = given.has("--keep") || given.has("--book");
    const auto in = writes ? shop->write(work) : shop->read(work);
    if (!in) {
        return tl::unexpected(in.error());
    }
    return Answer{given.has("--json") ? asJson(*in) : joined(asLines(*in, readerOf(*shop)))};
}

} // namespace rw::cli
