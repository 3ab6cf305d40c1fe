// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/work.h"

#include "core/base/world_error.h"
#include "core/sql/statement.h"

#include <utility>

namespace rw::sql {

namespace {

/// Any number, the same in every version of the program: who changes the schema holds it.
constexpr std::string_view kTakeSchemaLock = "SELECT pg_advisory_xact_lock(5283920451)";

bool isSqlite(const Connection& connection) { return connection.dialect() == Dialect::Sqlite; }

} // namespace

Work::Work(Connection& connection, std::string_view begin)
    : m_connection(nullptr) {
    connection.enterWork();
    try {
        connection.execute(begin);
    } catch (...) {
        connection.leaveWork();
        throw;
    }
    m_connection = &connection;
}

Work Work::reading(Connection& connection) {
    Work work(connection, isSqlite(connection) ? "BEGIN" : "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
    if (isSqlite(connection)) {
        connection.execute("PRAGMA query_only = 1");
        work.m_queryOnly = true;
    }
    return work;
}

Work Work::writing(Connection& connection) {
    Work work(connection, isSqlite(connection) ? "BEGIN IMMEDIATE" : "BEGIN ISOLATION LEVEL SERIALIZABLE");
    if (!isSqlite(connection)) {
        connection.execute("LOCK TABLE ledger_turn IN SHARE ROW EXCLUSIVE MODE");
        work.m_takesTurn = true;
    }
    return work;
}

Work Work::changingSchema(Connection& connection) {
    // READ COMMITTED: each statement after the lock sees what the one before us did.
    Work work(connection, isSqlite(connection) ? "BEGIN IMMEDIATE" : "BEGIN ISOLATION LEVEL READ COMMITTED");
    if (!isSqlite(connection)) {
        connection.execute(kTakeSchemaLock);
    }
    return work;
}

Work::Work(Work&& other) noexcept
    : m_connection(std::exchange(other.m_connection, nullptr))
    , m_queryOnly(other.m_queryOnly)
    , m_takesTurn(other.m_takesTurn) {}

Work::~Work() { end(); }

void Work::end() noexcept {
    if (m_connection == nullptr) {
        return;
    }
    auto& connection = *std::exchange(m_connection, nullptr);
    connection.leaveWork();
    try {
        connection.execute("ROLLBACK");
    } catch (const WorldError&) {
        // The engine has rolled back already (a full disk does that), or the connection is gone and with it the work.
    }
    try {
        if (m_queryOnly) {
            connection.execute("PRAGMA query_only = 0");
        }
    } catch (const WorldError&) {
        // A connection that cannot do even this is lost, and says so to whoever uses it next.
    }
}

void Work::commit() {
    if (m_takesTurn) {
        Statement(*m_connection, "update_ledger_turn").run();
    }
    m_connection->execute("COMMIT");
    auto& connection = *std::exchange(m_connection, nullptr);
    connection.leaveWork();
    if (m_takesTurn) {
        connection.countOwnTurn();
    }
    if (m_queryOnly) {
        connection.execute("PRAGMA query_only = 0");
    }
}

} // namespace rw::sql
