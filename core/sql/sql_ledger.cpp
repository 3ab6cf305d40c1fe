// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/sql_ledger.h"

#include "core/base/world_error.h"
#include "core/sql/check/ledger_check.h"
#include "core/sql/migration.h"
#include "core/sql/sql_transaction.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"

namespace rw::sql {

SqlLedger::SqlLedger(std::unique_ptr<Connection> connection)
    : m_connection(std::move(connection)) {
    if (m_connection->dialect() == Dialect::Sqlite) {
        m_file = FileIdentity::of(m_connection->database().databaseName().toStdString());
        (void)changeCount(); // what happened before counts as seen
    }
}

void SqlLedger::checkStillThere() const {
    if (m_connection->dialect() == Dialect::Sqlite && !(m_file && m_file->stands())) {
        throw LedgerLost("the ledger's file was moved or removed");
    }
}

std::unique_ptr<desk::Transaction> SqlLedger::begin(desk::Access access) {
    checkStillThere();
    auto work = access == desk::Access::Write ? Work::writing(*m_connection) : Work::reading(*m_connection);
    if (const int version = schemaVersion(*m_connection); version != latestVersion()) {
        throw LedgerLost("the ledger was brought to schema " + std::to_string(version) + " by another program");
    }
    return std::make_unique<SqlTransaction>(*m_connection, std::move(work), m_people, access);
}

std::vector<desk::Finding> SqlLedger::check() {
    checkStillThere();
    return checkLedger(*m_connection);
}

std::int64_t SqlLedger::changeCount() {
    checkStillThere();
    if (m_connection->dialect() == Dialect::Postgres) {
        auto work = Work::reading(*m_connection);
        Statement query(*m_connection, "select_ledger_turn");
        query.run();
        if (!query.next()) {
            throw LedgerCorrupt("the ledger does not say whose turn it is");
        }
        const auto turns = query.integer("turns") - m_connection->ownTurns();
        work.commit();
        return turns;
    }
    // SQLite's number only says whether something changed; it is made to grow here.
    if (auto version = m_connection->scalar("PRAGMA data_version"); version != m_dataVersion) {
        m_dataVersion = std::move(version);
        ++m_changes;
    }
    return m_changes;
}

} // namespace rw::sql
