// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <optional>

namespace rw::desktop {

/// What the desktop was asked for on its command line.
struct DesktopOptions {
    QString ledger; ///< the path of a file or a postgresql:// address
    bool demo = false;
    QString pictures; ///< the folder for pictures; "" : a window is opened
    QString station = QStringLiteral("counter");
};

/// Reads the command line, with the program's name first. Nothing when the program is to end at once: after help or
/// the version with 0, after a mistake (said on standard error) with 2.
[[nodiscard]] std::optional<DesktopOptions> readOptions(const QStringList& arguments, int& exitCode);

/// Where the shop's own ledger lies when nobody says: reelwright/ledger.sqlite in the user's data folder. `name` is
/// "ledger" or "demo". The folder is made.
[[nodiscard]] QString ownLedgerPath(const QString& name);

} // namespace rw::desktop
