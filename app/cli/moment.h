// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/calendar/opening_hours.h"

#include <string_view>

namespace rw::cli {

/// "2026-03-12T10:05" on the shop's wall clock, seconds and a zone ("Z", "+01:00") allowed. Unreadable {what, text}.
[[nodiscard]] Result<Instant> parseMoment(std::string_view text, const OpeningHours& hours);

} // namespace rw::cli
