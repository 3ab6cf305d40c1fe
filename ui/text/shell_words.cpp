// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/shell_words.h"

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

QString askedAgainText() { return ShellWords::tr("The program asks it again until it answers."); }

} // namespace rw::ui
