// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/sql/connection.h"

#include <vector>

namespace rw::sql {

/// Proves on the stored rows what the guards promise, and that the guards stand: one finding for each row, guard or
/// setting that is not as it should be, empty when all is well. Reads only. A ledger that cannot be read through any
/// more is a finding too; throws WorldError for everything else, LedgerLost above all.
[[nodiscard]] std::vector<desk::Finding> checkLedger(Connection& connection);

/// How many rules are proved by a query check_*.sql each.
[[nodiscard]] int ruleCount();

} // namespace rw::sql
