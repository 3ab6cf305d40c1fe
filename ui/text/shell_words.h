// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

// What the window itself says, whichever station is in view.
namespace rw::ui {

/// Something was to be written and nobody has said who is working.
[[nodiscard]] QString whoIsWorkingText();
/// The window was closed while something is on its way to the ledger.
[[nodiscard]] QString closingText();
/// The ledger holds something of a moment that this computer's clock has not come to.
[[nodiscard]] QString clockIsBehindText(Instant newest, Instant now, const QTimeZone& zone,
                                        const QLocale& locale = QLocale());
/// Below the sentence that says why a ledger is out of reach.
[[nodiscard]] QString askedAgainText();

} // namespace rw::ui
