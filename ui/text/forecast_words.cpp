// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/forecast_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>
#include <QDate>

namespace rw::ui {

namespace {
struct ForecastWords {
    Q_DECLARE_TR_FUNCTIONS(ForecastWords)
};
} // namespace

QString civilDateText(CivilDate date, const QLocale& locale) {
    const QDate day(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                    static_cast<int>(static_cast<unsigned>(date.day())));
    return locale.toString(day, QStringLiteral("d MMMM yyyy"));
}

QString demandText(double jobsPerDay, const QLocale& locale) {
    constexpr double kDaysOfAWeek = 7;
    constexpr double kDaysOfAYear = 365.25;
    if (jobsPerDay <= 0) {
        return ForecastWords::tr("no job yet");
    }
    const double weekly = jobsPerDay * kDaysOfAWeek;
    const bool often = weekly >= 1;
    const QString number = locale.toString(often ? weekly : jobsPerDay * kDaysOfAYear, 'f', 1);
    return often ? ForecastWords::tr("about %1 jobs a week").arg(number)
                 : ForecastWords::tr("about %1 jobs a year").arg(number);
}

QString orderAtText(int s, double service, const QLocale& locale) {
    const QString jobs = s == 0   ? ForecastWords::tr("order when no whole job is left")
                         : s == 1 ? ForecastWords::tr("order at 1 job or fewer")
                                  : ForecastWords::tr("order at %1 jobs or fewer").arg(QString::number(s));
    return ForecastWords::tr("%1: %2 that none is left before the delivery").arg(jobs, chanceText(1 - service, locale));
}

QString runOutText(const std::optional<CivilDate>& likely, const std::optional<CivilDate>& couldBe,
                   const QLocale& locale) {
    if (!couldBe) {
        return ForecastWords::tr("runs out: not to be expected");
    }
    const QString early = civilDateText(*couldBe, locale);
    return likely ? ForecastWords::tr("runs out: likely %1, could be %2").arg(civilDateText(*likely, locale), early)
                  : ForecastWords::tr("runs out: could be %1, most likely far later").arg(early);
}

} // namespace rw::ui
