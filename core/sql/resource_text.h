// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/dialect.h"

#include <string>
#include <string_view>
#include <vector>

namespace rw::sql {

/// The text of the query `name` (queries/<name>.<dialect>.sql if there is one, else queries/<name>.sql).
/// Throws std::logic_error when there is none: a name without a file is a bug.
[[nodiscard]] std::string queryText(std::string_view name, Dialect dialect);

/// The names of all queries that this dialect has a file for, sorted.
[[nodiscard]] std::vector<std::string> queryNames(Dialect dialect);

/// The files packed from migrations/, by name.
[[nodiscard]] std::vector<std::string> migrationFiles();
[[nodiscard]] std::string migrationText(std::string_view file);

} // namespace rw::sql
