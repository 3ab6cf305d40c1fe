// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

} // namespace rw::ui
