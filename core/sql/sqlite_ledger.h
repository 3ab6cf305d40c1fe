// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/sql/connection.h"
#include "core/sql/ledger_address.h"

#include <memory>
#include <string>

namespace rw::sql {

/// Opens the ledger file `path`, creating and migrating it as openLedger() says. A new ledger is written under another
/// name and gets its own when it is whole, so nobody ever meets half of one, and of two who create it at once one wins
/// and both open that one. Before an older ledger is migrated it is copied to "<path>.version-N".
[[nodiscard]] Result<std::unique_ptr<Connection>> openSqliteLedger(const std::string& path, IfMissing ifMissing);

} // namespace rw::sql
