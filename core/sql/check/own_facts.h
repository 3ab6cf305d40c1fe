// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <string>
#include <vector>

namespace rw::sql {

// Rules of checkLedger() that hold what is stored against what the program knows. Each gives a text for each thing that
// is not as it should be. They throw what reading throws.

/// The steps of a job: the ledger's and core/jobs/job_state.h must be the same.
[[nodiscard]] std::vector<std::string> wrongTransitions(Connection& connection);

/// A row for each migration up to the latest, under its name.
[[nodiscard]] std::vector<std::string> wrongVersions(Connection& connection);

/// The ledger's currency, by ISO 4217, and the shop's time zone, which this machine must know.
[[nodiscard]] std::vector<std::string> unknownFacts(Connection& connection);

/// On PostgreSQL, the one row by which a station sees that another one wrote.
[[nodiscard]] std::vector<std::string> wrongTurns(Connection& connection);

} // namespace rw::sql
