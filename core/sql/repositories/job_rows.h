// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/statement.h"

#include <optional>
#include <string>
#include <vector>

// A job is kept in several tables; each function here reads the rows of one statement (run before) into their part
// of it. How many statements a job takes does not grow with what it holds.
namespace rw::sql {

/// The job's own row: everything but pieces, charges, what was strung and the notes. Nothing when there is no row.
[[nodiscard]] std::optional<Job> jobIn(Statement& statement);
/// Pieces with their attempts and cuts: mains, crosses, whole.
[[nodiscard]] std::vector<JobPiece> piecesIn(Statement& statement);
[[nodiscard]] Charge chargeIn(const Statement& statement); ///< the row it stands on
[[nodiscard]] std::vector<Charge> chargesIn(Statement& statement);
[[nodiscard]] std::optional<Strung> strungIn(Statement& statement);
/// Notes one below the other, oldest first.
[[nodiscard]] std::string notesIn(Statement& statement);

[[nodiscard]] desk::JobLine jobLineIn(const Statement& statement); ///< the row it stands on
[[nodiscard]] std::vector<desk::JobLine> jobLinesIn(Statement& statement);
[[nodiscard]] Payment paymentIn(const Statement& statement);
[[nodiscard]] std::vector<Payment> paymentsIn(Statement& statement);
[[nodiscard]] std::vector<Consent> consentsIn(Statement& statement);
[[nodiscard]] std::vector<AskedChange> askedChangesIn(Statement& statement);
[[nodiscard]] std::optional<Handover> handoverIn(Statement& statement);
[[nodiscard]] Inspection inspectionIn(Statement& statement);
[[nodiscard]] std::vector<JobEvent> eventsIn(Statement& statement);

} // namespace rw::sql
