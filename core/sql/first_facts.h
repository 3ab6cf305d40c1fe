// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// Writes the row of `ledger` into a new one, unless it has one: made now, in UTC, in pounds, until the shop says
/// otherwise.
void writeFirstFacts(Connection& connection, Instant now);

} // namespace rw::sql
