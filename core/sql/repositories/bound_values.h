// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/sql/statement.h"
#include "core/stock/movement.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <cstdint>
#include <optional>
#include <string_view>

// Values of the trade as the ledger stores them: the way in. Row is the way out.
namespace rw::sql {

[[nodiscard]] inline std::int64_t stored(bool flag) { return flag ? 1 : 0; }
[[nodiscard]] inline std::int64_t stored(Length length) { return length.millimetres(); }
[[nodiscard]] inline std::int64_t stored(Instant at) { return at.time_since_epoch().count(); }
template<class Kind>
[[nodiscard]] std::int64_t stored(Id<Kind> id) {
    return id.value();
}
template<class Value>
[[nodiscard]] std::optional<std::int64_t> stored(const std::optional<Value>& value) {
    return value ? std::optional(stored(*value)) : std::nullopt;
}
template<class Enum>
[[nodiscard]] std::optional<std::string_view> stored(const std::optional<Enum>& value,
                                                     std::string_view (*textOf)(Enum)) {
    return value ? std::optional(textOf(*value)) : std::nullopt;
}

/// :<name>_hundredths and :<name>_unit.
void bindTension(Statement& statement, std::string_view name, const std::optional<Tension>& tension);
void bindTensionPair(Statement& statement, const TensionPair& tensions); ///< "mains" and "crosses"
void bindBy(Statement& statement, const By& by);                         ///< :staff, :station, :at

} // namespace rw::sql
