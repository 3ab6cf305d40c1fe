// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

#include <array>
#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rw {

/// Minutes after midnight, local: [from, to), at most a day. A pair that is empty or runs backwards is a closed day.
struct DayHours {
    std::chrono::minutes from;
    std::chrono::minutes to;
    bool operator==(const DayHours&) const = default;
};

using WeekHours = std::array<std::optional<DayHours>, 7>; ///< Monday first; nothing: closed, or not at work

/// When the shop is open, on its own wall clock.
struct OpeningHours {
    std::string timeZone = "UTC"; ///< IANA name
    WeekHours week;
    std::vector<CivilDate> closedDays;
    bool operator==(const OpeningHours&) const = default;
};

/// Somebody who works in it.
struct Worker {
    std::optional<WeekHours> week; ///< nothing: whenever the shop is open
    std::vector<CivilDate> daysOff;
    bool operator==(const Worker&) const = default;
};

/// The hours of a date; nothing when closed.
[[nodiscard]] std::optional<DayHours> hoursOn(const OpeningHours& hours, CivilDate date);

/// What two stretches of a day have in common; nothing when that is nothing.
[[nodiscard]] std::optional<DayHours> shared(const std::optional<DayHours>& one, const std::optional<DayHours>& other);
/// When somebody works on a date: in their hours, within the shop's; nothing on a day off or a closed day.
[[nodiscard]] std::optional<DayHours> workingHoursOn(const OpeningHours& shop, const Worker& worker, CivilDate date);

/// Whether this machine knows the time zone by that IANA name.
[[nodiscard]] bool isTimeZone(std::string_view name);

/// Wall clock and instant. A time zone that this machine does not know is a WorldError: its zone data are gone, and
/// no time can be told. Inside a repeated hour the earlier one is meant; inside a skipped hour the moment after it.
[[nodiscard]] Instant toInstant(const OpeningHours& hours, CivilDate date, std::chrono::minutes sinceMidnight);
[[nodiscard]] CivilDate localDate(const OpeningHours& hours, Instant at);
[[nodiscard]] std::chrono::minutes localMinutes(const OpeningHours& hours, Instant at);

} // namespace rw
