// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/opening_hours.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

namespace rw::ui {

/// A time to come, as people say it: "17:00", "today 17:00", "tomorrow", "fri 17:00", "13 mar", "13.3. 17:00",
/// "Mon 1 Feb 2027 10:30", "2026-03-13 17:00". Without a date it is the next such time; without a time it is when the shop closes on that day
/// (midnight where it is closed all day); a day without a year is the next one. Unreadable {what: time}, ImpossibleValue
/// {must by} for what is over.
[[nodiscard]] Result<Instant> momentFromText(const QString& text, Instant now, const OpeningHours& hours,
                                             const QLocale& locale = QLocale());

} // namespace rw::ui
