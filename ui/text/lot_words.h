// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

// A lot's life, and what was done to it, in words.
namespace rw::ui {

/// "+200 m", "−10.8 m": a change, with its sign.
[[nodiscard]] QString lengthChangeText(Length change, const QLocale& locale = QLocale());
/// "−10.8 m, cut for job 2119", "+200 m, received", "−0.05 m, measured".
[[nodiscard]] QString movementText(const Movement& movement, std::int64_t jobNumber, const QLocale& locale = QLocale());
/// "Received K-5: 200 m. Write K-5 on it."
[[nodiscard]] QString receivedText(const Lot& lot, const QLocale& locale = QLocale());
/// "K-2 holds 6.35 m now; the book was corrected by −0.05 m." "K-2: the book was right, 6.4 m."
[[nodiscard]] QString correctedText(const Lot& lot, Length by, const QLocale& locale = QLocale());

} // namespace rw::ui
