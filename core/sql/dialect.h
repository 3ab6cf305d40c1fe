// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace rw::sql {

/// Which engine's SQL is spoken. Files that differ carry the name: insert_x.sqlite.sql, insert_x.postgres.sql.
enum class Dialect { Sqlite, Postgres };

[[nodiscard]] std::string_view dialectText(Dialect dialect); ///< "sqlite", "postgres"

} // namespace rw::sql
