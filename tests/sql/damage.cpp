// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/damage.h"

#include <string>

namespace rw::sql::test {

namespace {

void onSqlite(Connection& connection, const std::vector<std::string_view>& statements) {
    connection.execute("PRAGMA foreign_keys = 0");
    connection.execute("PRAGMA ignore_check_constraints = 1");
    connection.execute("BEGIN");
    const auto triggers = connection.rows("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'");
    for (const auto& trigger : triggers) {
        connection.execute("DROP TRIGGER " + trigger[0]);
    }
    for (const auto statement : statements) {
        connection.execute(statement);
    }
    for (const auto& trigger : triggers) {
        connection.execute(trigger[1]);
    }
    connection.execute("COMMIT");
    connection.execute("PRAGMA ignore_check_constraints = 0");
    connection.execute("PRAGMA foreign_keys = 1");
}

void onPostgres(Connection& connection, const std::vector<std::string_view>& statements) {
    connection.execute("SET session_replication_role = replica"); // triggers and references sleep
    for (const auto statement : statements) {
        connection.execute(statement);
    }
    connection.execute("SET session_replication_role = origin");
}

} // namespace

void damage(Connection& connection, const std::vector<std::string_view>& statements) {
    if (connection.dialect() == Dialect::Sqlite) {
        onSqlite(connection, statements);
    } else {
        onPostgres(connection, statements);
    }
}

} // namespace rw::sql::test
