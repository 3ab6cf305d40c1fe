// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <string>
#include <string_view>
#include <vector>

namespace rw::sql::test {

/// Runs the statements in one transaction and commits.
void write(Connection& connection, const std::vector<std::string_view>& statements);

/// Writes, by plain SQL into an empty migrated database, the least of a shop in which everything can happen:
/// staff 1 and machine 1; frame 1; customer 1 with racket 1, customer 2; string K (article 1); lot K-1 (lot 1, 60 m)
/// and K-2 (lot 2, 0.2 m, closed after it was thrown away). Job 1, number 2120, two pieces (1 mains, 2 crosses, one
/// attempt each, 1 and 2), 27.00 in two charges: logged, on the machine, its mains cut (6.2 m off K-1). Job 2, number
/// 2121, one piece (3, attempt 3): strung and collected. All of it in the first 24 ms of 2026 (1767225600000).
void stockSmallShop(Connection& connection);

/// What the guard that refused `sql` calls itself; "" when nothing refused it. Nothing of it is kept.
[[nodiscard]] std::string guardAgainst(Connection& connection, std::string_view sql);

} // namespace rw::sql::test
