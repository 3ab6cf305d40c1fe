// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/intake_words.h"

#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/queue_words.h"
#include "ui/text/sentences.h"
#include "ui/text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace rw::ui {

namespace {
struct IntakeWords {
    Q_DECLARE_TR_FUNCTIONS(IntakeWords)
};
} // namespace

QString pieceProposalText(const desk::PieceProposal& piece, length::StandsOn head, const QLocale& locale) {
    const QString length = lengthText(piece.cut, locale);
    if (piece.source == PieceSource::CustomersSet) {
        return IntakeWords::tr("%1 %2").arg(length, sourceWord(piece.source));
    }
    const QString from = cutFromText(piece.cutFrom, head);
    if (!piece.lot) {
        return IntakeWords::tr("%1, %2: no open lot of %3 holds it").arg(length, from, fromUtf8(piece.article.name));
    }
    QString words = IntakeWords::tr("%1 off %2, %3: %4")
                        .arg(length, fromUtf8(piece.lot->tag), from,
                             cutReasonText(piece.fit, piece.leavesOnLot, piece.why, locale));
    if (piece.cameShortAt) {
        words += IntakeWords::tr(" (%1 came short on this frame)").arg(lengthText(*piece.cameShortAt, locale));
    }
    return words;
}

QString readyText(const desk::IntakePreview& preview, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QString promise = promiseText(preview.promise, now, zone, locale);
    QStringList missing;
    for (const desk::PieceProposal& piece : preview.pieces) {
        if (piece.fit == Fit::DoesNotFit) {
            missing << (piece.role == PieceRole::Whole ? IntakeWords::tr("this racket")
                                                       : IntakeWords::tr("the %1").arg(pieceWord(piece.role)));
        }
    }
    const bool setIsShort = std::ranges::any_of(
        preview.ownSets, [](const desk::OwnSet& set) { return set.verdict == length::PacketVerdict::NotEnough; });
    if (missing.isEmpty() && setIsShort) {
        return IntakeWords::tr("not enough string; with enough, ready %1").arg(promise);
    }
    return missing.isEmpty() ? IntakeWords::tr("ready %1").arg(promise)
                             : IntakeWords::tr("no string for %1; with it, ready %2")
                                   .arg(missing.join(IntakeWords::tr(" and ")), promise);
}

namespace {
QString wayText(const desk::OwnSet::Way& way, const QLocale& locale) {
    const QString need = aboutLengthText(static_cast<double>(way.need.millimetres()), locale);
    const QString what = [&] {
        switch (way.advice) {
        case desk::SetAdvice::OnePiece:
            return IntakeWords::tr("one piece needs about %1").arg(need);
        case desk::SetAdvice::StartingClamp:
            return IntakeWords::tr("with a starting clamp about %1 are needed").arg(need);
        case desk::SetAdvice::OtherCrosses:
            return IntakeWords::tr("the mains alone need about %1, with other string for the crosses").arg(need);
        }
        return QString();
    }();
    return way.verdict == length::PacketVerdict::Enough ? IntakeWords::tr("%1: enough").arg(what)
                                                        : IntakeWords::tr("%1: tight").arg(what);
}
} // namespace

QString ownSetText(const desk::OwnSet& set, const QLocale& locale) {
    const QString length = lengthText(set.length, locale);
    const QString need = aboutLengthText(static_cast<double>(set.need.millimetres()), locale);
    const QString otherwise = set.better ? QStringLiteral("; ") + wayText(*set.better, locale) : QString();
    const QString its =
        set.shops ? IntakeWords::tr("the packet's %1").arg(length) : IntakeWords::tr("the set's %1").arg(length);
    switch (set.verdict) {
    case length::PacketVerdict::Enough:
        return IntakeWords::tr("%1 are enough, about %2 are needed").arg(its, need);
    case length::PacketVerdict::Tight:
        return set.first == PieceRole::Mains
                   ? IntakeWords::tr("%1 are tight, about %2 are needed: measure the mains first%3")
                         .arg(its, need, otherwise)
                   : IntakeWords::tr("%1 are tight, about %2 are needed%3").arg(its, need, otherwise);
    case length::PacketVerdict::NotEnough:
        return IntakeWords::tr("%1 are not enough, about %2 are needed%3").arg(its, need, otherwise);
    }
    return {};
}

QString tooLongText(const QString& text, std::int64_t most, const char* what) {
    const std::int64_t length = text.toUcs4().size();
    return length <= most
               ? QString()
               : sentenceFor(Refusal(Code::TooLong, {{"what", std::string(what)}, {"length", length}, {"most", most}}));
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
    if (!job.promised) {
        return words + QLatin1Char('.');
    }
    const QString promise = promiseText(*job.promised, now, zone, locale);
    const bool lacksString = std::ranges::any_of(
        job.pieces, [](const JobPiece& piece) { return piece.source != PieceSource::CustomersSet && !piece.lot; });
    return lacksString ? IntakeWords::tr("%1, ready %2 if there is string for it by then: none is free now.")
                             .arg(words, promise)
                       : IntakeWords::tr("%1, promised %2.").arg(words, promise);
}

QString handedOverText(const desk::HandedOver& done, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QString number = QString::number(done.job.number);
    QStringList words;
    if (done.already) {
        const QString when = promiseText(done.job.collected.value_or(now), now, zone, locale);
        words << IntakeWords::tr("%1 was handed over already, %2; nothing was booked now.").arg(number, when)
              << IntakeWords::tr("%1 was paid for it.").arg(moneyText(done.paid, locale));
    } else {
        words << IntakeWords::tr("Handed over %1.").arg(number);
        if (done.paidNow) {
            words << IntakeWords::tr("Paid %1.").arg(moneyText(*done.paidNow, locale));
        }
    }
    const Money owed = done.owed();
    if (owed.minor() > 0) {
        words << IntakeWords::tr("%1 is still owed.").arg(moneyText(owed, locale));
    } else if (owed.minor() < 0) {
        words << IntakeWords::tr("%1 is in the customer's favour.").arg(moneyText(-owed, locale));
    }
    return words.join(QLatin1Char(' '));
}

QString jobCourseText(const Job& job) {
    switch (job.state) {
    case JobState::Waiting:
        return IntakeWords::tr("Job %1 waits now: %2.").arg(job.number).arg(fromUtf8(job.note).section(u'\n', -1));
    default:
        return IntakeWords::tr("Job %1 goes on.").arg(job.number);
    }
}

QString paymentText(const Money& owed, const Money& paying, const QLocale& locale) {
    const Money rest = owed - paying;
    if (rest.minor() > 0) {
        return IntakeWords::tr("%1 stays owed").arg(moneyText(rest, locale));
    }
    return rest.minor() < 0 ? IntakeWords::tr("%1 too much: it becomes the customer's credit; Enter again takes it")
                                  .arg(moneyText(-rest, locale))
                            : QString();
}

} // namespace rw::ui
