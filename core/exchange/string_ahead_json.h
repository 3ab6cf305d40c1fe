// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/string_ahead.h"
#include "core/exchange/json_text.h"

#include <optional>
#include <string_view>

// What will become of a string that a ledger keeps, as JSON.
namespace rw::exchange {

/// Writes the keys runningShort, onRequest, s, orderPoint, rate, chanceOfNone and runOut {p10, p50, p90} into the
/// object that is open; null stands for what cannot be told.
void writeAhead(JsonText& json, const desk::StringAhead& ahead);

/// A date as "2026-03-12", or null.
void writeDate(JsonText& json, std::string_view key, const std::optional<CivilDate>& date);

} // namespace rw::exchange
