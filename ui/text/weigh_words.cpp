// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/weigh_words.h"

#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"

#include <QCoreApplication>

#include <cmath>

namespace rw::ui {

namespace {
constexpr double kShownMm = 100; ///< the last place that is shown of a weighed length

struct WeighWords {
    Q_DECLARE_TR_FUNCTIONS(WeighWords)
};

constexpr double kMmPerMetre = 1'000;

QString metres(double mm, int decimals, const QLocale& locale) {
    return WeighWords::tr("%1 m").arg(locale.toString(mm / kMmPerMetre, 'f', decimals));
}

int decimalsFor(double twiceSdMm) { return twiceSdMm < kMmPerMetre / 2 ? 2 : 1; }

QString basisText(stock::WeighBasis basis, const stock::Estimate& gramsPerMetre, const QLocale& locale) {
    const QString metre = locale.toString(gramsPerMetre.value, 'f', 3);
    switch (basis) {
    case stock::WeighBasis::AgainstNew:
        return WeighWords::tr("against its weight when new");
    case stock::WeighBasis::ByMetre:
        return WeighWords::tr("at %1 g a metre").arg(metre);
    case stock::WeighBasis::ByGone:
        return WeighWords::tr("by what has gone since it was new, at %1 g a metre").arg(metre);
    }
    return {};
}

QString unbookedJobsText(int jobs) {
    return jobs == 1 ? WeighWords::tr("a job that nobody booked")
                     : WeighWords::tr("%1 jobs that nobody booked").arg(jobs);
}

QString causeText(desk::WeighCause cause, const desk::WeighIn& in, const QLocale& locale) {
    switch (cause) {
    case desk::WeighCause::UnbookedJobs:
        return unbookedJobsText(in.finding.unbookedJobs.value_or(1));
    case desk::WeighCause::UnbookedCut:
        return WeighWords::tr("a cut that nobody booked");
    case desk::WeighCause::CutNotMade:
        return WeighWords::tr("a cut that was booked and never made");
    case desk::WeighCause::NotFull:
        return WeighWords::tr("a reel that held %1 when new").arg(sureLengthText(*in.weighing.whenNewMm, locale));
    case desk::WeighCause::WrongSpool:
        return WeighWords::tr("the empty weight of another spool");
    case desk::WeighCause::WrongReel:
        return WeighWords::tr("the tag of another reel");
    }
    return {};
}
} // namespace

QString massNumber(Mass mass, const QLocale& locale) {
    return locale.toString(mass.grams(), 'f', QLocale::FloatingPointShortest);
}

QString massText(Mass mass, const QLocale& locale) { return WeighWords::tr("%1 g").arg(massNumber(mass, locale)); }

QString sureLengthText(const stock::Estimate& millimetres, const QLocale& locale) {
    const double twice = 2 * millimetres.sd;
    const int decimals = decimalsFor(twice);
    return WeighWords::tr("%1 ± %2").arg(metres(millimetres.value, decimals, locale), metres(twice, decimals, locale));
}

QString weighedText(const desk::WeighIn& in, const QLocale& locale) {
    return WeighWords::tr("%1 %2").arg(sureLengthText(in.weighing.weighedMm, locale),
                                       basisText(in.weighing.basis, in.weighing.gramsPerMetre, locale));
}

QString weighVerdictText(const desk::WeighIn& in, const QLocale& locale) {
    if (in.isNewWeight) {
        return WeighWords::tr("Nothing was cut from it yet, so that is its weight when new.");
    }
    if (!in.finding.isFinding) {
        return WeighWords::tr("The book is right, as far as a scale can tell.");
    }
    const QString by = metres(std::abs(in.finding.differenceMm), 1, locale);
    return in.finding.differenceMm < 0 ? WeighWords::tr("%1 less than the book says.").arg(by)
                                       : WeighWords::tr("%1 more than the book says.").arg(by);
}

QString weighedChangeText(const desk::WeighIn& in, const QLocale& locale) {
    const QString by = metres(std::abs(in.finding.differenceMm), 1, locale);
    if (std::abs(in.finding.differenceMm) < kShownMm / 2) {
        return by; // nothing has no sign
    }
    return (in.finding.differenceMm < 0 ? QStringLiteral("−") : QStringLiteral("+")) + by;
}

QString weighCausesText(const desk::WeighIn& in, const QLocale& locale) {
    QStringList causes;
    for (const desk::WeighCause cause : in.causes) {
        causes << causeText(cause, in, locale);
    }
    return causes.isEmpty() ? QString() : WeighWords::tr("It may be: %1.").arg(causes.join(QStringLiteral("; ")));
}

QStringList weighNotes(const desk::WeighIn& in, const QLocale& locale) {
    QStringList notes;
    if (!in.owner.empty()) {
        notes << WeighWords::tr("It is kept here for %1.").arg(fromUtf8(in.owner));
    }
    if (in.spoolOf) {
        notes << WeighWords::tr("Its spool is taken to weigh %1, as that of %2 does.")
                     .arg(massText(in.weighing.empty->weight, locale), fromUtf8(*in.spoolOf));
    }
    if (in.weighing.whenNewMm && !in.finding.isFinding) {
        notes << WeighWords::tr("When new it held %1; its label says %2.")
                     .arg(sureLengthText(*in.weighing.whenNewMm, locale), heldText(in.lot.nominal, locale));
    }
    return notes;
}

QString weighStateText(const desk::WeighIn& in) {
    return in.weighing.booked     ? WeighWords::tr("● booked")
           : in.finding.isFinding ? WeighWords::tr("▲ look")
           : in.isNewWeight       ? WeighWords::tr("○ new")
                                  : WeighWords::tr("✓ right");
}

QString weighStoryText(const desk::WeighIn& in, const QLocale& locale) {
    QStringList story{WeighWords::tr("%1: %2.").arg(fromUtf8(in.lot.tag), weighedText(in, locale)),
                      weighVerdictText(in, locale)};
    if (const QString causes = weighCausesText(in, locale); !causes.isEmpty()) {
        story << causes;
    }
    return (story + weighNotes(in, locale)).join(QLatin1Char(' '));
}

QString stockTakeText(const desk::StockTakeSheet& sheet) {
    QStringList parts;
    if (!sheet.lines.empty()) {
        const int look = sheet.findings();
        parts << (look == 0 ? WeighWords::tr("%1 weighed.").arg(sheet.lines.size())
                            : WeighWords::tr("%1 weighed, %2 to look at.").arg(sheet.lines.size()).arg(look));
    }
    std::vector<std::string> tags;
    for (const Lot& lot : sheet.toWeigh) {
        tags.push_back(lot.tag);
    }
    if (!tags.empty()) {
        parts << WeighWords::tr("Still to weigh: %1.").arg(tagsText(tags));
    } else if (!sheet.lines.empty()) {
        parts << WeighWords::tr("Nothing is left to weigh.");
    }
    if (sheet.packets > 0) {
        parts << (sheet.packets == 1 ? WeighWords::tr("1 packet is counted, not weighed.")
                                     : WeighWords::tr("%1 packets are counted, not weighed.").arg(sheet.packets));
    }
    return parts.join(QLatin1Char(' '));
}

QString stockTakeWhenText(const StockTake& take, const QString& startedBy, const QString& endedBy,
                          const QTimeZone& zone, const QLocale& locale) {
    const QString began = momentText(take.started.at, zone, locale);
    return take.ended ? WeighWords::tr("Begun %1 by %2, ended %3 by %4.")
                            .arg(began, startedBy, momentText(*take.ended, zone, locale), endedBy)
                      : WeighWords::tr("Begun %1 by %2, still going on.").arg(began, startedBy);
}

QString weighFirstText() {
    return WeighWords::tr("Put a reel on the scale, type its tag, Enter, what the scale shows, Enter: the next one. A "
                          "scale that types its number with Enter may do that itself.");
}

QString weighNextText() {
    return WeighWords::tr("Tab goes to the lines: B books what was weighed on one, P prints the sheet to sign, D ends "
                          "the stock-take.");
}

QString weighBookedText(const desk::WeighIn& in, const QLocale& locale) {
    return WeighWords::tr("%1 holds %2 now, as it was weighed. Ctrl+Z takes that back.")
        .arg(fromUtf8(in.lot.tag), heldText(in.lot.length, locale));
}

QString stockTakeEndedText() { return WeighWords::tr("The stock-take is ended. P prints the sheet to sign."); }

QString stockTakeTitle() { return WeighWords::tr("Stock-take by weight"); }

QString weighLimitsText() {
    return WeighWords::tr("Weighing tells whether the book is right within a metre, not whether this end does one more "
                          "cross: that wants a tape.");
}

} // namespace rw::ui
