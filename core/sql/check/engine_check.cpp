// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/engine_check.h"

#include "core/base/world_error.h"

namespace rw::sql {

std::vector<desk::Finding> checkEngine(Connection& connection) {
    try {
        return connection.dialect() == Dialect::Sqlite ? checkSqlite(connection) : checkPostgres(connection);
    } catch (const LedgerCorrupt& error) {
        return {{kSound, error.what()}};
    }
}

} // namespace rw::sql
