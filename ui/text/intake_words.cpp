// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/intake_words.h"

#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct IntakeWords {
    Q_DECLARE_TR_FUNCTIONS(IntakeWords)
};
} // namespace

QString pieceProposalText(const desk::PieceProposal& piece, const QLocale& locale) {
    const QString length = lengthText(piece.cut, locale);
    if (piece.source == PieceSource::CustomersSet) {
        return IntakeWords::tr("%1 %2").arg(length, sourceWord(piece.source));
    }
    const QString from = cutFromText(piece.cutFrom);
    if (!piece.lot) {
        return IntakeWords::tr("%1, %2: no open lot of %3 holds it").arg(length, from, fromUtf8(piece.article.name));
    }
    QString words = IntakeWords::tr("%1 off %2, %3: %4")
                        .arg(length, fromUtf8(piece.lot->tag), from, fitText(piece.fit, piece.leavesOnLot, locale));
    if (piece.cameShortAt) {
        words += IntakeWords::tr(" (%1 came short on this frame)").arg(lengthText(*piece.cameShortAt, locale));
    }
    return words;
}

QString stillNeededText(const QStringList& things) {
    return things.isEmpty() ? QString() : IntakeWords::tr("Still needed: %1.").arg(things.join(QStringLiteral(", ")));
}

QString chargesText(const std::vector<Charge>& charges, const QLocale& locale) {
    QStringList lines;
    for (const auto& charge : charges) {
        lines << chargeWord(charge) + QLatin1Char(' ') + moneyText(charge.amount, locale);
    }
    return lines.join(QStringLiteral(" · "));
}

QString markedText(const MarkedRange& marked, const QLocale& locale) {
    if (marked.lowest && marked.highest) {
        return marked.lowest->unit() == marked.highest->unit()
                   ? IntakeWords::tr("marked %1 to %2")
                         .arg(tensionNumber(*marked.lowest, locale), tensionText(*marked.highest, locale))
                   : IntakeWords::tr("marked %1 to %2")
                         .arg(tensionText(*marked.lowest, locale), tensionText(*marked.highest, locale));
    }
    if (marked.highest) {
        return IntakeWords::tr("marked at most %1").arg(tensionText(*marked.highest, locale));
    }
    return marked.lowest ? IntakeWords::tr("marked at least %1").arg(tensionText(*marked.lowest, locale)) : QString();
}

QString inTheShopText(const desk::HistoryEntry& entry, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QString words = IntakeWords::tr("%1 %2: %3")
                              .arg(QString::number(entry.job.number), racketName(entry.frame, entry.mark),
                                   stateWithShape(entry.job.state));
    return entry.job.promised && entry.job.state != JobState::Strung
               ? IntakeWords::tr("%1, promised %2").arg(words, promiseText(*entry.job.promised, now, zone, locale))
               : words;
}

QString loggedText(const Job& job, const QString& person, const QString& racket, Instant now, const QTimeZone& zone,
                   const QLocale& locale) {
    const QString number = QString::number(job.number);
    const QString words = IntakeWords::tr("Logged %1: %2, %3. Write %1 on the tag. %4")
                              .arg(number, person, racket, moneyText(job.total, locale));
    return job.promised ? IntakeWords::tr("%1, promised %2.").arg(words, promiseText(*job.promised, now, zone, locale))
                        : words + QLatin1Char('.');
}

QString handedOverText(const Job& job, const Money& owed, const std::optional<Money>& paid, const QLocale& locale) {
    const QString done = IntakeWords::tr("Handed over %1.").arg(job.number);
    const Money rest = paid ? owed - *paid : owed;
    QStringList words{done};
    if (paid) {
        words << IntakeWords::tr("Paid %1.").arg(moneyText(*paid, locale));
    }
    if (rest.minor() > 0) {
        words << IntakeWords::tr("%1 is still owed.").arg(moneyText(rest, locale));
    } else if (rest.minor() < 0) {
        words << IntakeWords::tr("%1 is in the customer's favour.").arg(moneyText(-rest, locale));
    }
    return words.join(QLatin1Char(' '));
}

} // namespace rw::ui
