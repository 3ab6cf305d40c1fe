// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/reports.h"

#include "app/cli/text_table.h"
#include "ui/documents/card_words.h"
#include "ui/text/ahead_words.h"
#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/queue_words.h"
#include "ui/text/stock_words.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"

#include <algorithm>
#include <map>

namespace rw::cli {

namespace {
using Align = TextTable::Align;

QString words(std::string_view text) { return printable(ui::fromUtf8(text)); }

/// "Aldermoor 98 · A".
QString racketName(std::string_view frame, std::string_view mark) {
    return mark.empty() ? words(frame) : words(frame) + QStringLiteral(" · ") + words(mark);
}

QString warning(const QString& text) { return QStringLiteral("▲ ") + text; }

QStringList indented(const QStringList& lines, int by) {
    QStringList moved;
    for (const QString& line : lines) {
        moved << (line.isEmpty() ? line : QString(by, QLatin1Char(' ')) + line);
    }
    return moved;
}

QString articleText(const StringArticle& article, const QLocale& locale) {
    return QStringList{printable(ui::stringName(article)), ui::sportWord(article.sport),
                       ui::materialWord(article.material) + QLatin1Char(' ') + ui::gaugeText(article, locale)}
        .join(QStringLiteral(", "));
}

QString lotState(const Lot& lot) {
    return lot.sealed ? QStringLiteral("sealed") : lot.measuredSinceLastCut ? QStringLiteral("measured") : QString();
}

QString cutText(const JobPiece& piece, const QLocale& locale) {
    QStringList cuts;
    for (const Attempt& attempt : piece.attempts) {
        if (!attempt.cut) {
            continue;
        }
        QString cut =
            ui::lengthText(attempt.cut->length, locale) + QStringLiteral(" off ") + words(attempt.cut->lotTag);
        if (attempt.lost) {
            cut += QStringLiteral(" (") + ui::lostHowText(attempt) + QLatin1Char(')');
        }
        cuts << cut;
    }
    return cuts.join(QStringLiteral(", "));
}

QString cutsText(const Job& job, const QLocale& locale) {
    QStringList pieces;
    for (const JobPiece& piece : job.pieces) {
        const QString cut = cutText(piece, locale);
        if (!cut.isEmpty()) {
            pieces << cut;
        }
    }
    return pieces.join(QStringLiteral(" + "));
}

QString stringsText(const std::vector<StringArticle>& strings) {
    QStringList names;
    for (const StringArticle& article : strings) {
        const QString name = words(article.name);
        if (!names.contains(name)) {
            names << name;
        }
    }
    return names.join(QStringLiteral(" / "));
}

QString stateText(const Job& job) { return job.state == JobState::Collected ? QString() : ui::jobStateWord(job.state); }
} // namespace

std::string joined(const QStringList& lines) {
    return lines.isEmpty() ? std::string() : (lines.join(QLatin1Char('\n')) + QLatin1Char('\n')).toStdString();
}

QStringList stockLines(const desk::ShelfString& string, const Reader& reader) {
    const QLocale& locale = reader.locale;
    QStringList lines;
    lines << words(string.article.code) + QStringLiteral("  ") + articleText(string.article, locale);
    lines << QStringLiteral("   %1; %2, about %3 each; %4")
                 .arg(ui::holdingText(string.holding, locale), ui::jobsFreeText(string),
                      ui::aboutLengthText(static_cast<double>(string.perJob.millimetres()), locale),
                      ui::usableText(string, locale));
    if (string.runningShort()) {
        lines << QStringLiteral("   ") + warning(ui::runningShortText(string));
    }
    if (string.ahead && !ui::boardAheadText(*string.ahead, locale).isEmpty()) {
        lines << QStringLiteral("   ") + ui::boardAheadText(*string.ahead, locale);
    }
    TextTable table({Align::Left, Align::Left, Align::Left, Align::Right, Align::Right, Align::Left});
    for (const desk::ShelfLot& shelf : string.lots) {
        const QString promised = shelf.promised.isPositive()
                                     ? ui::heldText(shelf.promised, locale) + QStringLiteral(" promised")
                                     : QString();
        if (shelf.packets > 0) {
            table.add({words(shelf.lot.tag), ui::heldThereText(shelf, locale), lotState(shelf.lot),
                       ui::heldText(shelf.held(), locale), promised, ui::jobsText(shelf.whole.jobs)});
            continue;
        }
        table.add({words(shelf.lot.tag), ui::lotKindWord(shelf.lot.kind), lotState(shelf.lot),
                   ui::heldText(shelf.lot.length, locale), promised, ui::wholeJobsText(shelf.whole, locale)});
    }
    return lines << table.lines(3);
}

QStringList stockLines(const std::vector<desk::ShelfString>& strings, const Reader& reader) {
    QStringList lines;
    for (const desk::ShelfString& string : strings) {
        if (!lines.isEmpty()) {
            lines << QString();
        }
        lines << stockLines(string, reader);
    }
    if (strings.empty()) {
        lines << QStringLiteral("No string is known yet.");
    }
    return lines;
}

QStringList historyLines(const Customer& customer, const std::vector<desk::HistoryEntry>& entries,
                         const Reader& reader) {
    QString heading = words(customer.name);
    for (const Contact& contact : customer.contacts) {
        heading += QStringLiteral(", ") + words(contact.text);
    }
    QStringList lines{heading};
    // In the order of each racket's newest job.
    std::vector<QString> rackets;
    std::map<QString, TextTable> tables;
    for (const desk::HistoryEntry& entry : entries) {
        const QString racket = racketName(entry.frame, entry.mark);
        const auto [table, isNew] =
            tables.try_emplace(racket, TextTable({Align::Left, Align::Right, Align::Left, Align::Left, Align::Left,
                                                  Align::Left, Align::Left, Align::Left, Align::Left}));
        if (isNew) {
            rackets.push_back(racket);
            table->second.add({QStringLiteral("date"),
                               QStringLiteral("tag"),
                               QStringLiteral("string"),
                               QStringLiteral("asked"),
                               QStringLiteral("strung"),
                               QStringLiteral("on"),
                               QStringLiteral("cut"),
                               {},
                               {}});
        }
        const Job& job = entry.job;
        table->second.add({ui::dateText(job.strung ? job.strung->by.at : job.logged, reader.zone, reader.locale),
                           QString::number(job.number), stringsText(entry.strings),
                           ui::tensionPairText(job.asked, reader.locale),
                           job.strung ? ui::tensionPairText(job.strung->tensions, reader.locale) : QString(),
                           words(entry.machine), cutsText(job, reader.locale), stateText(job), words(job.note)});
    }
    for (const QString& racket : rackets) {
        lines << QString() << QStringLiteral("  ") + racket << tables.at(racket).lines(4);
    }
    if (entries.empty()) {
        lines << QStringLiteral("  nothing strung here yet");
    }
    return lines;
}

QStringList intakeLines(const desk::IntakePreview& preview, const TensionPair& asked, Instant now,
                        const Reader& reader) {
    const QLocale& locale = reader.locale;
    QStringList lines;
    lines << QStringLiteral("asked %1").arg(ui::tensionPairText(asked, locale));
    if (preview.aboveMarked) {
        lines << warning(ui::aboveMarkedText(preview, asked, locale));
    }
    for (const desk::PieceProposal& piece : preview.pieces) {
        lines << QStringLiteral("%1: %2, cut %3 (%4; should need %5)")
                     .arg(ui::pieceWord(piece.role), words(piece.article.name), ui::lengthText(piece.cut, locale),
                          ui::cutFromText(piece.cutFrom, preview.plan.hoop.standsOn),
                          ui::aboutLengthText(static_cast<double>(piece.expected.millimetres()), locale));
        lines << QStringLiteral("  of this string %1").arg(ui::holdingText(piece.holding, locale));
        if (!piece.lot) {
            lines << QStringLiteral("  ") + warning(QStringLiteral("no reel holds it"));
            continue;
        }
        const QString fit = printable(ui::cutReasonText(piece.fit, piece.leavesOnLot, piece.why, locale));
        lines << QStringLiteral("  off %1 with everything promised there: %2")
                     .arg(words(piece.lot->tag), piece.fit == Fit::Fits ? fit : warning(fit));
    }
    if (preview.shortSide) {
        lines << QStringLiteral("short side %1: %2 (%3)")
                     .arg(printable(ui::shortSideWhere(*preview.shortSide)),
                          ui::shortSideHowLong(*preview.shortSide, locale),
                          printable(ui::sideFromText(*preview.shortSide)));
    }
    QStringList charges;
    for (const Charge& charge : preview.quote.charges) {
        charges << printable(ui::chargeWord(charge)) + QLatin1Char(' ') + ui::moneyText(charge.amount, locale);
    }
    lines << QStringLiteral("price %1 (%2)")
                 .arg(ui::moneyText(preview.quote.total, locale), charges.join(QStringLiteral(" + ")));
    lines << QStringLiteral("ready %1").arg(ui::promiseText(preview.promise, now, reader.zone, locale));
    return lines;
}

QStringList jobLines(const std::vector<desk::JobLine>& jobs, const Reader& reader) {
    TextTable table({Align::Right, Align::Left, Align::Left, Align::Left, Align::Left, Align::Left, Align::Left});
    for (const desk::JobLine& job : jobs) {
        table.add({QString::number(job.number), ui::jobStateWord(job.state), words(job.customer),
                   racketName(job.frame, job.mark), words(job.strings), ui::tensionPairText(job.asked, reader.locale),
                   job.promised ? ui::momentText(*job.promised, reader.zone, reader.locale) : QString()});
    }
    return table.lines();
}

QStringList cardLines(const desk::JobCard& card, const Reader& reader) {
    ui::JobCardStyle style;
    style.locale = reader.locale;
    style.zone = reader.zone;
    const ui::CardWords says = ui::cardWords(card, style);
    QStringList lines;
    lines << QStringLiteral("%1  %2, %3").arg(says.number, printable(says.customer), printable(says.racket));
    if (!says.promise.isEmpty()) {
        lines << QStringLiteral("promised %1").arg(says.promise);
    }
    for (const auto& notice : says.notices) {
        lines << (notice.warns ? warning(printable(notice.words)) : printable(notice.words));
    }
    if (!says.hands.isEmpty()) {
        lines << printable(says.hands);
    }
    for (const auto& pull : says.pulls) {
        QString line = QStringLiteral("%1 %2 %3").arg(pull.name, pull.number, pull.unit);
        if (!pull.dial.isEmpty()) {
            line += QStringLiteral(": dial %1 on %2").arg(pull.dial, printable(says.machine));
        }
        if (!pull.detail.isEmpty()) {
            line += QStringLiteral(" (%1)").arg(pull.detail);
        }
        lines << line;
    }
    for (const auto& cut : says.cuts) {
        lines << QStringLiteral("%1 %2 %3, %4, %5")
                     .arg(cut.done ? QStringLiteral("[x]") : QStringLiteral("[ ]"), cut.length, cut.piece,
                          printable(cut.string), cut.careful ? warning(printable(cut.source)) : printable(cut.source));
        if (!cut.lost.isEmpty()) {
            lines << QStringLiteral("    ") + cut.lost;
        }
    }
    if (!says.shortSide.isEmpty()) {
        lines << QStringLiteral("short side %1, %2: %3 (%4)")
                     .arg(says.shortSide, printable(says.shortSideMark), says.shortSideLength,
                          printable(says.shortSideFrom));
    }
    lines << says.routeName << indented(says.route, 2);
    if (!says.note.isEmpty()) {
        lines << QStringLiteral("note: %1").arg(printable(says.note));
    }
    if (!says.inspection.isEmpty()) {
        lines << printable(says.inspection);
    }
    if (!says.strung.isEmpty()) {
        lines << printable(says.strung);
    }
    return lines;
}

QStringList lotLines(const desk::LotLife& life, std::size_t atMost, const Reader& reader) {
    TextTable table({Align::Left, Align::Left, Align::Right, Align::Left});
    const std::size_t first = life.movements.size() > atMost ? life.movements.size() - atMost : 0;
    for (std::size_t i = first; i < life.movements.size(); ++i) {
        const Movement& movement = life.movements[i];
        const QString sign = movement.change.isPositive() ? QStringLiteral("+") : QString();
        const std::int64_t job = i < life.jobNumbers.size() ? life.jobNumbers[i] : 0;
        table.add({ui::momentText(movement.by.at, reader.zone, reader.locale), ui::movementWord(movement.reason),
                   sign + ui::heldText(movement.change, reader.locale),
                   job == 0 ? QString() : QStringLiteral("job %1").arg(job)});
    }
    return QStringList{
               QStringLiteral("%1 holds %2").arg(words(life.lot.tag), ui::heldText(life.lot.length, reader.locale))}
           << table.lines(2);
}

std::string planReport(const length::CutPlan& plan) {
    const QLocale locale = QLocale::system();
    QStringList lines;
    lines << ui::routeName(plan) << indented(ui::routeLines(plan), 2) << QString();
    TextTable table({Align::Left, Align::Left, Align::Left, Align::Left});
    for (const length::PiecePlan& piece : plan.pieces) {
        table.add({ui::pieceWord(piece.role), QStringLiteral("cut %1").arg(ui::lengthText(piece.cut, locale)),
                   QStringLiteral("should need %1").arg(ui::aboutLengthText(piece.needMm, locale)),
                   QStringLiteral("comes short %1").arg(ui::chanceText(piece.chanceShort, locale))});
    }
    lines << table.lines();
    for (const length::PiecePlan& piece : plan.pieces) {
        if (piece.shortSide) {
            lines << QStringLiteral("short side %1: measure %2, %3")
                         .arg(ui::sideWord(piece.shortSide->side), ui::lengthText(piece.shortSide->measure, locale),
                              ui::headLengthsText(piece.shortSide->headLengths));
        }
    }
    lines << QStringLiteral("the job comes short %1").arg(ui::chanceText(plan.chanceShortJob, locale)) << QString();
    for (const length::Why& why : plan.why) {
        lines << ui::whyText(why, locale);
    }
    return joined(lines);
}

} // namespace rw::cli
