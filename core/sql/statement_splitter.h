// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/dialect.h"

#include <string>
#include <string_view>
#include <vector>

namespace rw::sql {

/// The statements of a file, one string each, without comments outside quotes, without the closing semicolon. Knows
/// quotes, comments, dollar quotes, and that the semicolons between BEGIN and END of a trigger (CASE ... END within)
/// belong to it. Throws std::logic_error for a quote, comment or body that never ends.
[[nodiscard]] std::vector<std::string> splitStatements(std::string_view sql, Dialect dialect);

} // namespace rw::sql
