// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger_table.h"
#include "core/sql/connection.h"

#include <vector>

namespace rw::sql {

/// Every table of a ledger that people would want in a spreadsheet, each from the query export_<name>.
[[nodiscard]] std::vector<desk::LedgerTable> ledgerTables(Connection& connection);

} // namespace rw::sql
