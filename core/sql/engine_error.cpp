// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/engine_error.h"

#include "core/sql/connection.h"
#include "core/sql/postgres_error.h"
#include "core/sql/sqlite_error.h"

#include <QSqlError>
#include <QString>

namespace rw::sql {

void throwEngineError(Connection& connection, const QSqlError& error, std::string_view doing) {
    const auto message = error.databaseText().toStdString();
    if (connection.dialect() == Dialect::Sqlite) {
        throwSqliteError(error.nativeErrorCode().toInt(), connection.systemError(), message, doing);
    }
    throwPostgresError(error.nativeErrorCode().toStdString(), message, doing);
}

} // namespace rw::sql
