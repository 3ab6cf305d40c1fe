// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/books_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>
#include <QDate>
#include <QStringList>

namespace rw::ui {

namespace {
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QDate dateOf(CivilDate day) {
    return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
            static_cast<int>(static_cast<unsigned>(day.day()))};
}
} // namespace

QString openMatterText(const desk::OpenMatter& matter, const QLocale& locale) {
    QStringList parts;
    if (matter.job.state == JobState::Strung) {
        parts << (matter.told ? Words::tr("told, not collected") : Words::tr("not told"));
    }
    const Money owed = matter.owed();
    const bool withdrawn = matter.job.state == JobState::Withdrawn;
    if (owed.minor() > 0) {
        parts << Words::tr("%1 owed").arg(moneyText(owed, locale));
    } else if (owed.minor() < 0) {
        parts << (withdrawn ? Words::tr("withdrawn, %1 to give back") : Words::tr("%1 too much paid"))
                     .arg(moneyText(-owed, locale));
    }
    return parts.join(QStringLiteral(", "));
}

QString openMattersText(const std::vector<desk::OpenMatter>& matters, const QLocale& locale) {
    if (matters.empty()) {
        return Words::tr(
            "Nothing is open. What the bench finishes stands here until its owner was told, paid for it and "
            "took it home.");
    }
    Money owed = Money::zero(matters.front().total.currency());
    for (const desk::OpenMatter& matter : matters) {
        if (matter.owed().minor() > 0) {
            owed += matter.owed();
        }
    }
    const auto count = matters.size();
    const QString rackets = count == 1 ? Words::tr("1 racket") : Words::tr("%1 rackets").arg(count);
    return owed.minor() == 0 ? rackets : Words::tr("%1, %2 owed together").arg(rackets, moneyText(owed, locale));
}

QString paymentTakenText(const desk::PaymentTaken& taken, const QLocale& locale) {
    const QString what = taken.already ? Words::tr("%1: %2 was taken before") : Words::tr("%1: %2 taken");
    const QString sentence = what.arg(taken.job.number).arg(moneyText(taken.paidNow, locale));
    const Money owed = taken.owed();
    if (owed.minor() > 0) {
        return Words::tr("%1, %2 is still owed.").arg(sentence, moneyText(owed, locale));
    }
    return owed.minor() < 0 ? Words::tr("%1, %2 in the customer's favour.").arg(sentence, moneyText(-owed, locale))
                            : Words::tr("%1, all of it is paid.").arg(sentence);
}

QString dayText(CivilDate day, const QLocale& locale) {
    return locale.toString(dateOf(day), QStringLiteral("dddd d MMMM yyyy"));
}

QString monthText(CivilDate day, const QLocale& locale) {
    return locale.toString(dateOf(day), QStringLiteral("MMMM yyyy"));
}

QString strungJobsText(std::size_t jobs) { return jobs == 1 ? Words::tr("1 job") : Words::tr("%1 jobs").arg(jobs); }

QString earnedBesideText(const desk::Earned& earned, const QLocale& locale) {
    QStringList lines;
    const auto minutes = earned.work.count();
    if (earned.labour) {
        lines << Words::tr("Work, shown beside and not taken off: %1 minutes, worth %2.")
                     .arg(locale.toString(static_cast<qlonglong>(minutes)), moneyText(*earned.labour, locale));
    } else {
        lines << Words::tr("Work, shown beside and not taken off: %1 minutes.")
                     .arg(locale.toString(static_cast<qlonglong>(minutes)));
    }
    if (earned.scrap.empty()) {
        lines << Words::tr("No reel was closed with string left on it.");
    } else {
        QStringList ends;
        for (const desk::ScrapLine& end : earned.scrap) {
            ends << Words::tr("%1 %2, %3")
                        .arg(fromUtf8(end.tag), heldText(end.length, locale), moneyText(end.cost, locale));
        }
        lines << Words::tr("Left on reels that were closed: %1; %2 together.")
                     .arg(ends.join(QStringLiteral("; ")), moneyText(earned.scrapCost, locale));
    }
    return lines.join(QLatin1Char('\n'));
}

QString exportWords(bool withCosts) {
    const QString what =
        Words::tr("Everything that the ledger holds, as CSV files that a spreadsheet opens: customers, "
                  "rackets, strings, lots with their movements and weighings, jobs, pieces, charges, payments. "
                  "Files of these names in the folder are replaced.");
    return withCosts
               ? what
               : what + QLatin1Char('\n') + Words::tr("What the shop paid is left out until the owner's PIN is given.");
}

QString exportedText(int files, std::int64_t rows, const QString& folder) {
    return Words::tr("%1 files with %2 rows are in %3.").arg(files).arg(rows).arg(folder);
}

QString ageText(Instant since, Instant now) {
    const auto days = std::chrono::floor<std::chrono::days>(now - since).count();
    if (days < 1) {
        return Words::tr("today");
    }
    return days == 1 ? Words::tr("1 day") : Words::tr("%1 days").arg(days);
}

} // namespace rw::ui
