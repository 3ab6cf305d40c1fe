// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/ahead_words.h"

#include "core/stock/order_point.h"
#include "ui/text/forecast_words.h"
#include "ui/text/format.h"
#include "ui/text/stock_words.h"

#include <QCoreApplication>
#include <QDate>

namespace rw::ui {

namespace {
struct AheadWords {
    Q_DECLARE_TR_FUNCTIONS(AheadWords)
};

constexpr std::chrono::days kTenMonths{300};
constexpr qsizetype kMostNamed = 4;

bool isToday(const std::optional<CivilDate>& day, const desk::StringAhead& ahead) { return day == ahead.today; }

QString orderAtJobsText(int s) {
    return s == 0   ? AheadWords::tr("order when none is left")
           : s == 1 ? AheadWords::tr("order at 1 job")
                    : AheadWords::tr("order at %1 jobs").arg(QString::number(s));
}

QString whatToDo(const desk::ShelfString& string, const QLocale& locale) {
    const desk::StringAhead& ahead = *string.ahead;
    if (ahead.onRequest) {
        return AheadWords::tr("On request: nobody wants it often enough to keep it. Order it when somebody asks.");
    }
    if (ahead.runningShort && ahead.jobsLeft == 0) {
        return AheadWords::tr("Order now: none is left.");
    }
    if (!ahead.isKnown()) {
        return ahead.runningShort ? AheadWords::tr("Order now: fewer are left than the shop always wants.") : QString();
    }
    if (ahead.runningShort && ahead.jobsLeft > ahead.s) {
        return AheadWords::tr("Order now: fewer are left than the shop always wants, though they would last.");
    }
    if (ahead.runningShort) {
        return AheadWords::tr("Order now: %1 that none is left before it comes.")
            .arg(chanceText(ahead.chanceOfNone, locale));
    }
    QString order = orderAtText(ahead.s, ahead.service, locale);
    order[0] = order[0].toUpper();
    return order + QLatin1Char('.');
}
/// When it runs out, as a sentence; "" where that cannot be told.
QString outSentence(const desk::StringAhead& ahead, const QLocale& locale) {
    if (ahead.jobsLeft > 0) {
        QString out = likelyOutText(ahead, locale);
        if (!out.isEmpty()) {
            out[0] = out[0].toUpper();
            out += QLatin1Char('.');
        }
        return out;
    }
    const auto& likely = ahead.runOut.p50;
    return !likely                  ? QString()
           : isToday(likely, ahead) ? AheadWords::tr("The next job finds none, likely today.")
                                    : AheadWords::tr("The next job finds none, likely on %1.")
                                          .arg(dayToComeText(*likely, ahead.today, locale));
}
} // namespace

QString dayToComeText(CivilDate day, CivilDate today, const QLocale& locale) {
    using std::chrono::sys_days;
    if (sys_days(day) - sys_days(today) > kTenMonths) {
        return civilDateText(day, locale);
    }
    const QDate date(static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                     static_cast<int>(static_cast<unsigned>(day.day())));
    return locale.toString(date, QStringLiteral("d MMMM"));
}

QString likelyOutText(const desk::StringAhead& ahead, const QLocale& locale) {
    if (!ahead.isKnown() || !ahead.runOut.p10) {
        return {};
    }
    if (ahead.jobsLeft == 0) {
        return AheadWords::tr("none left");
    }
    const auto word = [&](const std::optional<CivilDate>& day) {
        return isToday(day, ahead) ? AheadWords::tr("today") : dayToComeText(*day, ahead.today, locale);
    };
    const QString early = word(ahead.runOut.p10);
    if (!ahead.runOut.p50) {
        return AheadWords::tr("could be out %1, likely far later").arg(early);
    }
    const QString likely = word(ahead.runOut.p50);
    return likely == early ? AheadWords::tr("likely out %1").arg(likely)
                           : AheadWords::tr("likely out %1, could be %2").arg(likely, early);
}

QString whenToOrderText(const desk::StringAhead& ahead) {
    return ahead.onRequest      ? AheadWords::tr("on request")
           : ahead.runningShort ? AheadWords::tr("order now")
           : ahead.isKnown()    ? orderAtJobsText(ahead.s)
                                : QString();
}

QString boardAheadText(const desk::StringAhead& ahead, const QLocale& locale) {
    QStringList words{whenToOrderText(ahead), ahead.onRequest ? QString() : likelyOutText(ahead, locale)};
    words.removeAll(QString());
    return words.join(QStringLiteral("; "));
}

QStringList aheadSentences(const desk::ShelfString& string, const QLocale& locale) {
    const desk::StringAhead& ahead = *string.ahead;
    QStringList lines{whatToDo(string, locale)};
    if (ahead.isKnown()) {
        lines << AheadWords::tr("%1; %2.").arg(jobsFreeText(string), demandText(ahead.jobsPerDay, locale));
        lines << outSentence(ahead, locale);
    } else {
        lines << AheadWords::tr("When it runs out can be told once jobs of a day or more are in the ledger.");
    }
    lines.removeAll(QString());
    return lines;
}

QString orderNowText(const std::vector<desk::ShelfString>& shelf, const QLocale& locale) {
    QStringList named;
    qsizetype more = 0;
    for (const desk::ShelfString& string : shelf) {
        if (!string.runningShort()) {
            continue;
        }
        if (named.size() == kMostNamed) {
            ++more;
            continue;
        }
        const QString title = fromUtf8(string.article.code) + QLatin1Char(' ') + fromUtf8(string.article.name);
        const auto& likely = string.ahead->runOut.p50;
        const QString when =
            string.ahead->jobsLeft == 0                ? AheadWords::tr("none left")
            : likely && isToday(likely, *string.ahead) ? AheadWords::tr("likely out today")
            : likely ? AheadWords::tr("likely out %1").arg(dayToComeText(*likely, string.ahead->today, locale))
                     : jobsFreeText(string);
        named << AheadWords::tr("%1, %2").arg(title, when);
    }
    if (named.isEmpty()) {
        return {};
    }
    const QString names = named.join(QStringLiteral("; "));
    return more == 0 ? AheadWords::tr("▼ Order now: %1").arg(names)
                     : AheadWords::tr("▼ Order now: %1; and %2 more").arg(names, QString::number(more));
}

} // namespace rw::ui
