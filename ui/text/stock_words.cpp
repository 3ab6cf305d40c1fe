// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/stock_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace rw::ui {

namespace {
struct StockWords {
    Q_DECLARE_TR_FUNCTIONS(StockWords)
};

/// "a third", "an eighth", "an 11th": one more of what there are `n` - 1 of. n >= 2.
QString oneMore(std::int64_t n) {
    const std::array<QString, 9> words = {
        StockWords::tr("a second"),  StockWords::tr("a third"), StockWords::tr("a fourth"),
        StockWords::tr("a fifth"),   StockWords::tr("a sixth"), StockWords::tr("a seventh"),
        StockWords::tr("an eighth"), StockWords::tr("a ninth"), StockWords::tr("a tenth")};
    const auto index = static_cast<std::size_t>(n - 2);
    if (index < words.size()) {
        return words[index];
    }
    const auto lastTwo = n % 100;
    const auto last = n % 10;
    const bool teen = lastTwo >= 11 && lastTwo <= 13;
    const QString ending = !teen && last == 1   ? StockWords::tr("st")
                           : !teen && last == 2 ? StockWords::tr("nd")
                           : !teen && last == 3 ? StockWords::tr("rd")
                                                : StockWords::tr("th");
    const QString number = QString::number(n);
    const bool vowel = n == 11 || n == 18 || number.startsWith(QLatin1Char('8'));
    return (vowel ? StockWords::tr("an %1%2") : StockWords::tr("a %1%2")).arg(number, ending);
}
} // namespace

QString jobsFreeText(const desk::ShelfString& string) {
    return StockWords::tr("%1 free").arg(jobsText(std::max<std::int64_t>(0, string.wholeJobsFree)));
}

QString usableText(const desk::ShelfString& string, const QLocale& locale) {
    const Length tenth = Length::fromMillimetres(100); // nobody knows the next jobs to the centimetre
    const Length usable = tenth * string.usable.wholeTimes(tenth);
    return usable.isPositive() ? StockWords::tr("about %1 usable").arg(heldText(usable, locale))
                               : StockWords::tr("nothing usable");
}

QString jobsText(std::int64_t jobs) {
    return jobs == 1 ? StockWords::tr("1 job") : StockWords::tr("%1 jobs").arg(QString::number(jobs));
}

QString wholeJobsText(const WholeJobs& whole, const QLocale& locale) {
    // To the centimetre, as a tape is read, and never less than is lacking.
    const QString lacking = lengthText(whole.nextShortBy.roundedUpTo(Length::fromMillimetres(10)), locale);
    if (whole.jobs <= 0) {
        return StockWords::tr("no whole job; the first would be %1 short").arg(lacking);
    }
    return StockWords::tr("%1; %2 would be %3 short").arg(jobsText(whole.jobs), oneMore(whole.jobs + 1), lacking);
}

QString fitText(Fit fit, Length leaves, const QLocale& locale) {
    switch (fit) {
    case Fit::Fits:
        if (leaves == Length::fromMillimetres(0)) {
            return StockWords::tr("uses it up");
        }
        return StockWords::tr("leaves %1").arg(heldText(leaves, locale));
    case Fit::FitsIfBookIsRight:
        return StockWords::tr("fits by %1 if the book is right, measure before cutting").arg(heldText(leaves, locale));
    case Fit::DoesNotFit:
        return StockWords::tr("%1 short by the book").arg(heldText(-leaves, locale));
    }
    return {};
}

QString holdingText(const Holding& holding, const QLocale& locale) {
    const QString left = StockWords::tr("%1 left").arg(heldText(holding.left, locale));
    if (holding.promised == Length::fromMillimetres(0)) {
        return StockWords::tr("%1, nothing promised").arg(left);
    }
    const QString promised = StockWords::tr("%1 promised").arg(heldText(holding.promised, locale));
    const Length free = holding.free();
    if (free.isNegative()) {
        return StockWords::tr("%1, %2, %3 more than there is").arg(left, promised, heldText(-free, locale));
    }
    return StockWords::tr("%1, %2, %3 free").arg(left, promised, heldText(free, locale));
}

QString runningShortText(const desk::ShelfString& string) {
    if (!string.runningShort()) {
        return {};
    }
    const std::int64_t free = string.wholeJobsFree;
    return free <= 0   ? StockWords::tr("running short: no whole job free")
           : free == 1 ? StockWords::tr("running short: 1 whole job free")
                       : StockWords::tr("running short: %1 whole jobs free").arg(QString::number(free));
}

} // namespace rw::ui
