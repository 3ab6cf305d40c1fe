// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

namespace rw::sql {

/// One transaction of a connection. Destroyed without commit() it is rolled back. A second one before the first has
/// ended is a bug and throws std::logic_error.
class Work {
public:
    /// Sees one state of the ledger throughout; writing in it is LedgerReadOnly.
    [[nodiscard]] static Work reading(Connection& connection);
    /// Begins at once: from here to its end no other station writes. Throws LedgerBusy when its turn does not come.
    ///
    /// SQLite: BEGIN IMMEDIATE. PostgreSQL: SERIALIZABLE behind a lock on the table ledger_turn. Use cases
    /// read and then decide (is there string left, which number is next); row locks would ask each of them to know
    /// what to lock. The lock gives both engines the same rule, one writer at a time, which a shop's few stations
    /// never notice; SERIALIZABLE still catches a writer that came around it. LOCK TABLE takes no snapshot, so the
    /// one that waited sees what the other committed.
    [[nodiscard]] static Work writing(Connection& connection);
    /// As writing(), for a database that may not have its tables yet.
    [[nodiscard]] static Work changingSchema(Connection& connection);

    ~Work();
    Work(Work&& other) noexcept;
    Work(const Work&) = delete;
    Work& operator=(const Work&) = delete;
    Work& operator=(Work&&) = delete;

    /// Makes it last. Throws WorldError; nothing is kept then, unless it is LedgerLost, when nobody knows.
    void commit();

private:
    Work(Connection& connection, std::string_view begin);
    void end() noexcept;

    Connection* m_connection; ///< null once it ended
    bool m_queryOnly = false;
    bool m_takesTurn = false;
};

} // namespace rw::sql
