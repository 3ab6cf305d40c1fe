// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/bench_words.h"

#include "ui/text/format.h"
#include "ui/text/job_words.h"
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
    const QString state = cutStateText(piece.piece, left, piece.lot ? fromUtf8(piece.lot->tag) : QString(), locale);
    return piece.piece.isCut()
               ? what + QStringLiteral(", ") + state
               : BenchWords::tr("%1, cut %2; %3").arg(what, lengthText(piece.piece.planned, locale), state);
}
} // namespace

QString whoseRacketText(const desk::JobCard& card) {
    return BenchWords::tr("%1, %2").arg(fromUtf8(card.customer.name), racketName(card.frame.name, card.racket.mark));
}

QString cardInWords(const desk::JobCard& card, const QLocale& locale) {
    QStringList lines;
    lines << BenchWords::tr("Job %1, %2, %3")
                 .arg(QString::number(card.job.number), whoseRacketText(card), stateWithShape(card.job.state));
    lines << BenchWords::tr("%1, %2").arg(askedAndStrungText(card.job, locale), methodWord(card.job.method));
    if (card.machine && card.mains && card.crosses) {
        lines << BenchWords::tr("%1: mains %2, crosses %3")
                     .arg(fromUtf8(card.machine->name), dialText(*card.mains, locale), dialText(*card.crosses, locale));
    }
    for (const auto& piece : card.pieces) {
        lines << pieceText(piece, locale);
    }
    if (card.shortSide) {
        lines << BenchWords::tr("Short side %1: %2")
                     .arg(shortSideWhere(*card.shortSide), shortSideHowLong(*card.shortSide, locale));
    }
    if (!card.job.note.empty()) {
        lines << BenchWords::tr("Note: %1").arg(fromUtf8(card.job.note));
    }
    return lines.join(QLatin1Char('\n'));
}

QString takeText(const QString& machine) { return BenchWords::tr("take it on %1").arg(machine); }

QString cutText(const desk::CardPiece& piece, const QLocale& locale) {
    const QString length = lengthText(piece.piece.planned, locale);
    const QString role = pieceWord(piece.piece.role);
    if (piece.lot) {
        return BenchWords::tr("cut %1 off %2: %3").arg(length, fromUtf8(piece.lot->tag), role);
    }
    return BenchWords::tr("cut %1 %2: %3").arg(length, sourceWord(piece.piece.source), role);
}

QString finishText() { return BenchWords::tr("say what was strung"); }

QString cutPieceText(const JobPiece& piece, const QLocale& locale) {
    const DoneCut& cut = *piece.current().cut;
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
