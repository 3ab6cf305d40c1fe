// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/opening_hours.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rw {

/// The hours of a day as people write them: "10:00-18:00", "10-18", "9.30 – 17". 24:00 is the end of the day. Nothing
/// for any other text, and for hours that are empty or run backwards.
[[nodiscard]] std::optional<DayHours> dayHoursFromText(std::string_view text);
[[nodiscard]] std::string dayHoursText(const DayHours& hours); ///< "10:00-18:00"

/// Days as ISO 8601 writes them, with white space, commas or semicolons between them; "2026-08-03 to 2026-08-14" is all
/// of them from the one to the other, a year at most. Sorted, each once. Unreadable {what: days, text}, with the word
/// that cannot be read.
[[nodiscard]] Result<std::vector<CivilDate>> daysFromText(std::string_view text);
/// The same way, sorted days: "2026-08-03 to 2026-08-14, 2026-12-25".
[[nodiscard]] std::string daysText(const std::vector<CivilDate>& days);

} // namespace rw
