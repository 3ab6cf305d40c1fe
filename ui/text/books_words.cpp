// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/books_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>
#include <QStringList>

namespace rw::ui {

namespace {
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};
} // namespace

QString openMatterText(const desk::OpenMatter& matter, const QLocale& locale) {
    QStringList parts;
    if (matter.job.state == JobState::Strung) {
        parts << (matter.told ? Words::tr("told, not collected") : Words::tr("not told"));
    }
    const Money owed = matter.owed();
    if (matter.job.state == JobState::Withdrawn) {
        parts << Words::tr("withdrawn, %1 paid").arg(moneyText(matter.paid, locale));
    } else if (owed.minor() > 0) {
        parts << Words::tr("%1 owed").arg(moneyText(owed, locale));
    } else if (owed.minor() < 0) {
        parts << Words::tr("%1 too much paid").arg(moneyText(-owed, locale));
    }
    return parts.join(QStringLiteral(", "));
}

QString ageText(Instant since, Instant now) {
    const auto days = std::chrono::floor<std::chrono::days>(now - since).count();
    if (days < 1) {
        return Words::tr("today");
    }
    return days == 1 ? Words::tr("1 day") : Words::tr("%1 days").arg(days);
}

} // namespace rw::ui
