// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/migration.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace rw::sql {

/// What the migrations say a PostgreSQL ledger holds: kind ("table", "view", "index", "trigger", "function",
/// "constraint") and name, and for a function its body.
using SchemaPromise = std::map<std::pair<std::string, std::string>, std::string>;

/// Reads it off the statements, in their order: CREATE adds, DROP takes away. Constraints count that were given a name.
[[nodiscard]] SchemaPromise promisedSchema(const std::vector<Migration>& steps);

} // namespace rw::sql
