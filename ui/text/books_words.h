// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"

#include <QLocale>
#include <QString>

// The owner's books in words.
namespace rw::ui {

/// "not told, 14.00 owed": what is still to be done with a job that is strung; "3.00 too much paid" for a credit.
[[nodiscard]] QString openMatterText(const desk::OpenMatter& matter, const QLocale& locale = QLocale());
/// "today", "1 day", "12 days": how long ago by whole days.
[[nodiscard]] QString ageText(Instant since, Instant now);

} // namespace rw::ui
