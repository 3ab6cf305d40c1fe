// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/sql/connection.h"
#include "core/sql/ledger_address.h"

#include <memory>

namespace rw::sql {

/// Opens the ledger in the database that `address` names, creating its tables in an empty database and migrating them
/// as openLedger() says. The database itself is made by whoever runs the server. Of two who create a ledger at once one
/// waits for the other and finds it done.
[[nodiscard]] Result<std::unique_ptr<Connection>> openPostgresLedger(const LedgerAddress& address, IfMissing ifMissing);

} // namespace rw::sql
