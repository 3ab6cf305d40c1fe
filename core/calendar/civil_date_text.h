// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

#include <optional>
#include <string>
#include <string_view>

namespace rw {

/// A date as ISO 8601 writes it, "2026-03-12", of the years 1 to 9999; nothing for any other text.
[[nodiscard]] std::optional<CivilDate> civilDateFromText(std::string_view text);
[[nodiscard]] std::string civilDateText(CivilDate date); ///< the same way; the year is within 1 to 9999

} // namespace rw
