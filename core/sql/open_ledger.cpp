// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/ledger_address.h"
#include "core/sql/postgres_ledger.h"
#include "core/sql/sql_ledger.h"
#include "core/sql/sqlite_ledger.h"

namespace rw::sql {

Result<std::unique_ptr<desk::Ledger>> openLedger(const LedgerAddress& address, IfMissing ifMissing) {
    auto connection = address.engine() == LedgerAddress::Engine::Sqlite ? openSqliteLedger(address.text(), ifMissing)
                                                                        : openPostgresLedger(address, ifMissing);
    return std::move(connection).map([](std::unique_ptr<Connection> opened) -> std::unique_ptr<desk::Ledger> {
        return std::make_unique<SqlLedger>(std::move(opened));
    });
}

} // namespace rw::sql
