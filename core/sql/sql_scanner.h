// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/dialect.h"

#include <string_view>
#include <vector>

namespace rw::sql {

/// A piece of SQL text. All pieces together are the whole text, in order.
struct SqlToken {
    enum class Kind {
        Word,        ///< keyword, name or number
        Placeholder, ///< :name
        Quoted,      ///< string, quoted name, dollar-quoted text, with its quotes
        Comment,     ///< -- to the end of the line, or between slash-star and star-slash
        Space,
        Symbol, ///< one character, or "::"
    };
    Kind kind;
    std::string_view text; ///< a view into what was scanned
};

/// Takes SQL apart far enough to know what is code and what is quoted. Block comments nest and dollar quotes and
/// E'' strings count in PostgreSQL only; [name] and `name` are quoted names in SQLite only. Throws std::logic_error for
/// a quote or comment that never ends: all SQL here is the program's own.
[[nodiscard]] std::vector<SqlToken> scanSql(std::string_view sql, Dialect dialect);

} // namespace rw::sql
