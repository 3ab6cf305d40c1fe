// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace rw::sql {

/// The one place where SQLite's errors become ours. `code` is an extended result code, `systemErrno` what
/// sqlite3_system_errno() gave (0: unknown).
[[noreturn]] void throwSqliteError(int code, int systemErrno, std::string_view message, std::string_view doing);

/// The guard behind a constraint error, named as PostgreSQL would name it: "UNIQUE constraint failed: lot.tag" is
/// "lot_tag_key"; a trigger's own words are its name.
[[nodiscard]] std::string sqliteGuard(int code, std::string_view message);

} // namespace rw::sql
