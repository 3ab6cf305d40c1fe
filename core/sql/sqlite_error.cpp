// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/sqlite_error.h"

#include "core/base/world_error.h"

#include <sqlite3.h>

#include <cerrno>

namespace rw::sql {

namespace {

/// "lot.tag" is "lot_tag"; "racket.customer_id, racket.mark" is "racket_customer_id_mark".
std::string joinedColumns(std::string_view columns) {
    std::string result;
    while (!columns.empty()) {
        const auto comma = columns.find(", ");
        auto column = columns.substr(0, comma);
        columns = comma == std::string_view::npos ? std::string_view{} : columns.substr(comma + 2);
        const auto dot = column.find('.');
        if (result.empty()) {
            result = column.substr(0, dot);
        }
        if (dot != std::string_view::npos) {
            result += '_';
            result += column.substr(dot + 1);
        }
    }
    return result;
}

bool noRoom(int code, int systemErrno) {
    return (code & 0xff) == SQLITE_FULL ||
           ((code & 0xff) == SQLITE_IOERR && (systemErrno == ENOSPC || systemErrno == EDQUOT || systemErrno == EFBIG));
}

} // namespace

std::string sqliteGuard(int code, std::string_view message) {
    const auto colon = message.find(": ");
    const auto subject = colon == std::string_view::npos ? message : message.substr(colon + 2);
    switch (code) {
    case SQLITE_CONSTRAINT_UNIQUE:
        // An index over an expression is given by its own name, in quotes: index 'usual_cut_one_each'.
        if (subject.starts_with("index '") && subject.ends_with("'")) {
            return std::string(subject.substr(7, subject.size() - 8));
        }
        return joinedColumns(subject) + "_key";
    case SQLITE_CONSTRAINT_PRIMARYKEY:
    case SQLITE_CONSTRAINT_ROWID:
        return std::string(subject.substr(0, subject.find('.'))) + "_pkey";
    case SQLITE_CONSTRAINT_NOTNULL:
        return joinedColumns(subject) + "_not_null";
    case SQLITE_CONSTRAINT_FOREIGNKEY:
        return "foreign_key"; // SQLite does not say which
    default:
        return std::string(subject);
    }
}

void throwSqliteError(int code, int systemErrno, std::string_view message, std::string_view doing) {
    const auto what = std::string(message) + " (" + std::string(doing) + ")";
    if (noRoom(code, systemErrno)) {
        throw LedgerFull(what);
    }
    switch (code & 0xff) {
    case SQLITE_CONSTRAINT:
        throw LedgerGuard(sqliteGuard(code, message) + " (" + std::string(doing) + ")");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        throw LedgerBusy(what);
    case SQLITE_READONLY:
        if (code == SQLITE_READONLY_DBMOVED) {
            throw LedgerLost(what);
        }
        throw LedgerReadOnly(what);
    case SQLITE_PERM:
    case SQLITE_AUTH:
        throw LedgerReadOnly(what);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_SCHEMA:
        throw LedgerCorrupt(what);
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
    case SQLITE_PROTOCOL:
        throw LedgerLost(what);
    case SQLITE_ERROR:
        // The program's own SQL is prepared by tests, so a table that is not there means that the ledger lacks it.
        throw LedgerCorrupt(what);
    default:
        throw WorldError(what);
    }
}

} // namespace rw::sql
