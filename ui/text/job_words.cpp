// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/job_words.h"

#include "ui/text/format.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <cassert>

namespace rw::ui {

namespace {
struct JobWords {
    Q_DECLARE_TR_FUNCTIONS(JobWords)
};

Length cutOrPlanned(const JobPiece& piece) { return piece.isCut() ? piece.current().cut->length : piece.planned; }
} // namespace

QString jobStateShape(JobState state) {
    switch (state) {
    case JobState::Logged:
        return QStringLiteral("○");
    case JobState::OnTheMachine:
        return QStringLiteral("◐");
    case JobState::Strung:
        return QStringLiteral("●");
    case JobState::Collected:
        return QStringLiteral("✓");
    case JobState::Waiting:
        return QStringLiteral("◇");
    case JobState::Withdrawn:
        return QStringLiteral("×");
    }
    assert(false && "a value outside its enumeration");
    return {};
}

QString stateWithShape(JobState state) { return jobStateShape(state) + QLatin1Char(' ') + jobStateWord(state); }

QString askedAndStrungText(const Job& job, const QLocale& locale) {
    if (!job.strung) {
        return JobWords::tr("asked %1").arg(tensionPairText(job.asked, locale));
    }
    if (job.strung->tensions == job.asked) {
        return JobWords::tr("%1 asked and strung").arg(tensionPairText(job.asked, locale));
    }
    return JobWords::tr("asked %1, strung %2")
        .arg(tensionPairText(job.asked, locale), tensionPairText(job.strung->tensions, locale));
}

QString cutLengthsText(const Job& job, const QLocale& locale) {
    if (job.pieces.size() == 2) {
        return JobWords::tr("%1 + %2").arg(lengthNumber(cutOrPlanned(job.pieces.front()), locale),
                                           lengthText(cutOrPlanned(job.pieces.back()), locale));
    }
    return job.pieces.empty() ? QString() : lengthText(cutOrPlanned(job.pieces.front()), locale);
}

QString lostHowText(const Attempt& attempt) {
    return attempt.cut && attempt.cut->takenBack ? JobWords::tr("taken back")
                                                 : JobWords::tr("lost, %1").arg(lostReasonWord(attempt.lost.value()));
}

QString lostText(const JobPiece& piece, const QLocale& locale) {
    QStringList lost;
    for (const Attempt& attempt : piece.attempts) {
        if (attempt.lost && attempt.cut) {
            lost << JobWords::tr("%1 %2").arg(lengthText(attempt.cut->length, locale), lostHowText(attempt));
        }
    }
    return lost.join(QStringLiteral("; "));
}

QString lastTimeText(const Job& job, const QString& strings, const QString& machine, const QTimeZone& zone,
                     const QLocale& locale) {
    QStringList facts{strings, askedAndStrungText(job, locale), methodWord(job.method), cutLengthsText(job, locale)};
    if (!machine.isEmpty()) {
        facts << machine;
    }
    const Instant at = job.strung ? job.strung->by.at : job.logged;
    return JobWords::tr("%1: %2").arg(dateText(at, zone, locale), facts.join(QStringLiteral(", ")));
}

QString cutStateText(const JobPiece& piece, const std::optional<Length>& lotLeft, const QString& lotTag,
                     const QLocale& locale) {
    const QString name = pieceWord(piece.role);
    if (piece.isCut()) {
        const DoneCut& cut = *piece.current().cut;
        const QString done =
            JobWords::tr("%1: cut, %2 off %3").arg(name, lengthText(cut.length, locale), fromUtf8(cut.lotTag));
        return lotLeft ? JobWords::tr("%1, which now holds %2").arg(done, heldText(*lotLeft, locale)) : done;
    }
    const QString open = JobWords::tr("%1: not cut").arg(name);
    return lotLeft ? JobWords::tr("%1, %2 holds %3").arg(open, lotTag, heldText(*lotLeft, locale)) : open;
}

} // namespace rw::ui
