// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/reel_choice.h"
#include "core/stock/queue_reasons.h"

#include <QLocale>
#include <QString>

// Where the queue is cut, in words.
namespace rw::ui {

/// "K-2: leaves 6.1 m: one more piece later", "K-3: leaves 8 m: bad end, 2.40 m of it likely lost". `lot` and `piece`
/// are what the reader calls those of the reason; `wanted` says what the lots are cut into.
enum class Wanted { Pieces, Jobs };
[[nodiscard]] QString queueReasonText(const stock::QueueReason& reason, const QString& lot, const QString& piece,
                                      Wanted wanted, const QLocale& locale = QLocale());

/// What a Leaves reason says, without its lot: "leaves 6.1 m: half a bed later".
[[nodiscard]] QString whatIsLeftText(const stock::QueueReason& reason, Wanted wanted,
                                     const QLocale& locale = QLocale());

/// What a cut off a lot leaves there, and why it comes off that one: "leaves 6.1 m: half a bed later; on the machine
/// already", "leaves 188.8 m; a new reel, because K-7 would lose 3.60 m". `leaves` as fitText() takes it.
[[nodiscard]] QString cutReasonText(Fit fit, Length leaves, const desk::CutReason& why,
                                    const QLocale& locale = QLocale());

} // namespace rw::ui
