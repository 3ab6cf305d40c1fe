// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/shell_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct ShellWords {
    Q_DECLARE_TR_FUNCTIONS(ShellWords)
};
} // namespace

QString whoIsWorkingText() { return ShellWords::tr("Who is working? Choose a name, then do it again."); }

QString closingText() {
    return ShellWords::tr("Closing as soon as the ledger has answered. Close again to leave at once.");
}

QString clockIsBehindText(Instant newest, Instant now, const QTimeZone& zone, const QLocale& locale) {
    return ShellWords::tr("This computer's clock says %1, and the ledger holds what was written on %2. If the clock is "
                          "wrong, put it right before you go on.")
        .arg(dateText(now, zone, locale), dateText(newest, zone, locale));
}

QString askedAgainText() { return ShellWords::tr("The program asks it again until it answers."); }

} // namespace rw::ui
