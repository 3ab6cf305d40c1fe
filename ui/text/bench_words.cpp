// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/bench_words.h"

#include "ui/text/card_notices.h"
#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/need_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace rw::ui {

namespace {
struct BenchWords {
    Q_DECLARE_TR_FUNCTIONS(BenchWords)
};

QString dialText(const desk::DialSetting& dial, const QLocale& locale) {
    if (dial.below == dial.above) {
        return tensionText(dial.below, locale);
    }
    return BenchWords::tr("%1 or %2").arg(tensionText(dial.below, locale), tensionText(dial.above, locale));
}

QString pieceText(const desk::CardPiece& piece, const QLocale& locale) {
    const QString what = BenchWords::tr("%1: %2").arg(pieceWord(piece.piece.role), fromUtf8(piece.article.name));
    const std::optional<Length> left = piece.lot ? std::optional(piece.lot->length) : std::nullopt;
    const bool ownSet = !piece.lot && piece.piece.source == PieceSource::CustomersSet && !piece.piece.isCut();
    const QString state =
        ownSet ? fromWhereText(piece.piece, locale)
               : cutStateText(piece.piece, left, piece.lot ? fromUtf8(piece.lot->tag) : QString(), locale);
    return piece.piece.isCut()
               ? what + QStringLiteral(", ") + state
               : BenchWords::tr("%1, cut %2; %3").arg(what, lengthText(piece.piece.planned, locale), state);
}
} // namespace

QString whoseRacketText(const desk::JobCard& card) {
    return BenchWords::tr("%1, %2").arg(fromUtf8(card.customer.name), racketName(card.frame.name, card.racket.mark));
}

QString cardInWords(const desk::JobCard& card, const QTimeZone& zone, const QLocale& locale) {
    QStringList lines;
    if (card.above) {
        lines << aboveText(*card.above, zone, locale);
    }
    if (card.change) {
        lines << changeText(*card.change, card.job.asked, zone, locale);
    }
    lines << BenchWords::tr("Job %1, %2, %3")
                 .arg(QString::number(card.job.number), whoseRacketText(card), stateWithShape(card.job.state));
    if (card.job.state == JobState::OnTheMachine) {
        lines << BenchWords::tr("At the bench: %1").arg(benchStepWord(card.job.benchStep));
    }
    if (card.hands) {
        lines << handsText(*card.hands, zone, locale);
    }
    lines << BenchWords::tr("%1, %2").arg(askedAndStrungText(card.job, locale), methodWord(card.job.method));
    if (card.machine && card.mains && card.crosses) {
        lines << BenchWords::tr("%1: mains %2, crosses %3")
                     .arg(fromUtf8(card.machine->name), dialText(*card.mains, locale), dialText(*card.crosses, locale));
    }
    for (const auto& piece : card.pieces) {
        lines << pieceText(piece, locale);
    }
    lines << needsText(card.plan, locale);
    if (card.shortSide) {
        lines << BenchWords::tr("Short side %1: %2")
                     .arg(shortSideWhere(*card.shortSide), shortSideHowLong(*card.shortSide, locale));
    }
    if (!card.job.note.empty()) {
        lines << BenchWords::tr("Note: %1").arg(fromUtf8(card.job.note));
    }
    if (const QString seen = inspectionText(card.inspection); !seen.isEmpty()) {
        lines << seen;
    }
    return lines.join(QLatin1Char('\n'));
}

QString takeText(const QString& machine, const std::optional<std::int64_t>& lyingThere) {
    return lyingThere
               ? BenchWords::tr("take it on %1, where %2 lies already").arg(machine, QString::number(*lyingThere))
               : BenchWords::tr("take it on %1").arg(machine);
}

QString takeAllTheSameText(const QString& machine, std::int64_t other) {
    return BenchWords::tr("take it on %1 beside %2 all the same").arg(machine, QString::number(other));
}

QString cutAllTheSameText(std::int64_t other, std::int64_t mine) {
    return BenchWords::tr("%1 lies on this machine too. Enter again cuts for %2.")
        .arg(QString::number(other), QString::number(mine));
}

QString cutText(const desk::CardPiece& piece, const QLocale& locale) {
    const QString length = lengthText(piece.piece.planned, locale);
    const QString role = pieceWord(piece.piece.role);
    if (piece.lot) {
        return BenchWords::tr("cut %1 off %2: %3").arg(length, fromUtf8(piece.lot->tag), role);
    }
    return BenchWords::tr("cut %1 %2: %3").arg(length, fromWhereText(piece.piece, locale), role);
}

QString finishText() { return BenchWords::tr("say what was strung"); }

QString tailsHintText(Method method) {
    return method == Method::TwoPiece ? BenchWords::tr("mains / crosses, cm")
                                      : BenchWords::tr("short / long, cm");
}

QString tailsNoteText() {
    return BenchWords::tr("tails if you look: 38 / 25, or a hand");
}

QString nodText(const desk::CardChange& change, const TensionPair& asked, const QLocale& locale) {
    return BenchWords::tr("nod: %1 instead of %2")
        .arg(tensionPairText(asked, locale), tensionPairText(change.before, locale));
}

QString nodFirstText(const desk::CardChange& change, const TensionPair& asked, const QLocale& locale) {
    return BenchWords::tr("%1 is asked now instead of %2: N nods to it, then finish.")
        .arg(tensionPairText(asked, locale), tensionPairText(change.before, locale));
}

QString noddedText(const Job& job, const QLocale& locale) {
    return BenchWords::tr("Seen: job %1 is asked with %2.")
        .arg(QString::number(job.number), tensionPairText(job.asked, locale));
}

QString cutPieceText(const JobPiece& piece, const QLocale& locale) {
    const DoneCut& cut = *piece.current().cut;
    if (!cut.lot) {
        return BenchWords::tr("%1 %2").arg(pieceWord(piece.role), lengthText(cut.length, locale));
    }
    return BenchWords::tr("%1 %2 off %3")
        .arg(pieceWord(piece.role), lengthText(cut.length, locale), fromUtf8(cut.lotTag));
}

QString cutDoneText(const desk::CutDone& done, Length length, const QLocale& locale) {
    if (done.already) {
        return BenchWords::tr("It was cut already; nothing was changed.");
    }
    QString words =
        done.lot ? BenchWords::tr("Cut %1 off %2, which now holds %3.")
                       .arg(lengthText(length, locale), fromUtf8(done.lot->tag), heldText(done.lot->length, locale))
                 : BenchWords::tr("Cut %1.").arg(lengthText(length, locale));
    if (done.corrected && done.corrected->millimetres() != 0) {
        words += BenchWords::tr(" The book was corrected by %1.").arg(heldText(*done.corrected, locale));
    }
    if (done.lot && !done.lot->isOpen()) {
        words += BenchWords::tr(" It is used up and closed.");
    }
    return words;
}

QString lostText(const Job& job, PieceRole role, LostReason reason, const QLocale& locale) {
    const auto piece =
        std::ranges::find_if(job.pieces, [role](const JobPiece& candidate) { return candidate.role == role; });
    QString words = BenchWords::tr("Lost, %1: %2.").arg(pieceWord(role), lostReasonWord(reason));
    if (piece != job.pieces.end()) {
        if (piece->attempts.size() > 1 && piece->attempts[piece->attempts.size() - 2].cut) {
            words = BenchWords::tr("Lost %1, %2: %3.")
                        .arg(lengthText(piece->attempts[piece->attempts.size() - 2].cut->length, locale),
                             pieceWord(role), lostReasonWord(reason));
        }
        words += BenchWords::tr(" The next cut is %1.").arg(lengthText(piece->planned, locale));
    }
    return words;
}

QString finishedText(const Job& job, const QLocale& locale) {
    const QString pair = tensionPairText(job.strung ? job.strung->tensions : job.asked, locale);
    return BenchWords::tr("Job %1 is strung, %2. Hang it on the rack.").arg(QString::number(job.number), pair);
}

QString endSetAsideText(const desk::EndSetAside& aside, PieceRole role, const QLocale& locale) {
    const QString tag = fromUtf8(aside.end.tag);
    const QString kept =
        aside.end.isOpen()
            ? BenchWords::tr("%1 is kept as a remnant of %2.").arg(tag, heldText(aside.end.length, locale))
            : BenchWords::tr("%1 is used up and closed.").arg(tag);
    const QString next = aside.next ? BenchWords::tr("Next is %1: %2.").arg(fromUtf8(aside.next->tag), pieceWord(role))
                                    : BenchWords::tr("No other reel holds it: %1.").arg(pieceWord(role));
    return kept + QLatin1Char(' ') + next;
}

QString mayBeSetAsideText() { return BenchWords::tr("Ctrl+R keeps it as a remnant."); }

QString measureToSetAsideText() {
    return BenchWords::tr("Measure the end first: what the tape says is kept as a remnant.");
}

namespace {
struct CutToTakeBack {
    QString piece;
    QString length;
    QString lot; ///< "" off none
};

/// Precondition: a cut is what was done last.
CutToTakeBack cutOf(const desk::LastDone& last, const QLocale& locale) {
    const auto piece = std::ranges::find(last.job.pieces, *last.cut, &JobPiece::role);
    const DoneCut& cut = *piece->current().cut;
    return {pieceWord(piece->role), lengthText(cut.length, locale), fromUtf8(cut.lotTag)};
}
} // namespace

QString takeBackText(const desk::LastDone& last, const QLocale& locale) {
    const QString number = QString::number(last.job.number);
    if (!last.cut) {
        return BenchWords::tr("Take back that job %1 is strung, %2? It lies on its machine again.")
            .arg(number, tensionPairText(last.job.strung ? last.job.strung->tensions : last.job.asked, locale));
    }
    const CutToTakeBack cut = cutOf(last, locale);
    if (cut.lot.isEmpty()) {
        return BenchWords::tr("Take back the cut of job %1, %2 %3? Only when it was never made.")
            .arg(number, cut.piece, cut.length);
    }
    return BenchWords::tr(
               "Take back the cut of job %1, %2 %3 off %4? Only when it was never made: the length goes back.")
        .arg(number, cut.piece, cut.length, cut.lot);
}

QString takenBackText(const desk::LastDone& last, const QLocale& locale) {
    const QString number = QString::number(last.job.number);
    if (!last.cut) {
        return BenchWords::tr("Corrected: job %1 is not strung, and lies on its machine again.").arg(number);
    }
    const CutToTakeBack cut = cutOf(last, locale);
    if (cut.lot.isEmpty()) {
        return BenchWords::tr("Corrected: job %1 was not cut, %2.").arg(number, cut.piece);
    }
    return BenchWords::tr("Corrected: job %1 was not cut, %2; %3 are on %4 again.")
        .arg(number, cut.piece, cut.length, cut.lot);
}

QString farCutText(Length length, Length planned, const QLocale& locale) {
    const QString typed = lengthText(length, locale);
    return length > planned ? BenchWords::tr("%1 is %2 more than was planned. Enter again takes it.")
                                  .arg(typed, lengthText(length - planned, locale))
                            : BenchWords::tr("%1 is %2 less than was planned. Enter again takes it.")
                                  .arg(typed, lengthText(planned - length, locale));
}

QString farStrungText(const TensionPair& strung, const TensionPair& asked, const QLocale& locale) {
    return BenchWords::tr("%1 is far from the %2 that is asked. Enter again takes it.")
        .arg(tensionPairText(strung, locale), tensionPairText(asked, locale));
}

QString nothingToTakeBackText() {
    return BenchWords::tr("Nothing can be taken back: this racket is neither cut on a machine nor just strung.");
}

QString machineText(const desk::Machine& machine, const QLocale& locale) {
    return BenchWords::tr("%1: dial in %2 by %3, reach %4")
        .arg(fromUtf8(machine.name), fromUtf8(unitText(machine.unit)), locale.toString(machine.stepHundredths / 100.0),
             lengthText(machine.reach, locale));
}

QString offLotText(const Lot& lot, const QLocale& locale) {
    const QString words =
        lot.kind == LotKind::Remnant ? BenchWords::tr("off remnant %1, %2 left") : BenchWords::tr("off %1, %2 left");
    return words.arg(fromUtf8(lot.tag), heldText(lot.length, locale));
}

QString cardIsComingText() { return BenchWords::tr("The card is being looked up."); }
QString nothingWaitsText() {
    return BenchWords::tr("Nothing waits for the bench.\nA racket comes here when the counter has logged it.");
}
QString jobChangedText() { return BenchWords::tr("This job was changed meanwhile. Look at its card."); }
QString noRacketForHistoryText() {
    return BenchWords::tr("History is that of a racket at the bench, and there is none.");
}

QString foundOnMachineText(const desk::JobCard& card, const QLocale& locale) {
    QStringList pieces;
    for (const auto& piece : card.pieces) {
        const std::optional<Length> left = piece.lot ? std::optional(piece.lot->length) : std::nullopt;
        pieces << cutStateText(piece.piece, left, piece.lot ? fromUtf8(piece.lot->tag) : QString(), locale);
    }
    const QString number = QString::number(card.job.number);
    const QString where =
        card.machine
            ? BenchWords::tr("Job %1, %2, is on %3;").arg(number, whoseRacketText(card), fromUtf8(card.machine->name))
            : BenchWords::tr("Job %1, %2, is on a machine;").arg(number, whoseRacketText(card));
    return where + QLatin1Char(' ') + pieces.join(QStringLiteral("; ")) + QLatin1Char('.');
}

} // namespace rw::ui
