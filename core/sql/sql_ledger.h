// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/sql/connection.h"
#include "core/sql/file_identity.h"
#include "core/sql/repositories/known_people.h"

#include <memory>
#include <optional>
#include <string>

namespace rw::sql {

/// A ledger behind one open connection.
class SqlLedger final : public desk::Ledger {
public:
    explicit SqlLedger(std::unique_ptr<Connection> connection);

    /// LedgerLost when the file has been moved or removed, or a newer program has changed the ledger's schema since it
    /// was opened: what this one would write then could not be trusted.
    [[nodiscard]] std::unique_ptr<desk::Transaction> begin(desk::Access access) override;
    [[nodiscard]] std::vector<desk::Finding> check() override;
    [[nodiscard]] std::int64_t changeCount() override;

private:
    void checkStillThere() const;

    std::unique_ptr<Connection> m_connection;
    KnownPeople m_people;
    std::optional<FileIdentity> m_file; ///< of a SQLite ledger
    std::int64_t m_changes = 0;         ///< on SQLite: how often m_dataVersion has changed
    std::string m_dataVersion;
};

} // namespace rw::sql
