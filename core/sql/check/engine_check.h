// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/sql/connection.h"

#include <vector>

namespace rw::sql {

/// The part of checkLedger() that each engine does in its own way: the file or database is sound, references lead
/// somewhere, columns hold what they should, tables and guards are as they were made, settings are on.
[[nodiscard]] std::vector<desk::Finding> checkEngine(Connection& connection);
[[nodiscard]] std::vector<desk::Finding> checkSqlite(Connection& connection);
[[nodiscard]] std::vector<desk::Finding> checkPostgres(Connection& connection);

// What both call their findings.
constexpr char kSound[] = "the ledger can be read through";
constexpr char kReferences[] = "every reference leads somewhere";
constexpr char kSchema[] = "tables and guards are as they were made";
constexpr char kColumns[] = "columns hold what they are for";
constexpr char kSettings[] = "the engine is set as it must be";

} // namespace rw::sql
