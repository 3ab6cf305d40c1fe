// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/new_job.h"

#include "core/sql/repositories/bound_values.h"
#include "core/sql/statement.h"

#include <optional>

namespace rw::sql {

void addAttempt(Connection& connection, std::int64_t piece, int number, Instant at) {
    Statement statement(connection, "add_attempt");
    statement.bind(":piece", piece);
    statement.bind(":number", number);
    statement.bind(":opened_at", stored(at));
    statement.run();
}

void addJobPiece(Connection& connection, JobId job, const JobPiece& piece, Instant at) {
    Statement statement(connection, "add_job_piece");
    statement.bind(":job", stored(job));
    statement.bind(":role", pieceRoleText(piece.role));
    statement.bind(":article", stored(piece.article));
    statement.bind(":source", pieceSourceText(piece.source));
    statement.bind(":lot", stored(piece.lot));
    statement.bind(":pinned", stored(piece.pinned));
    statement.bind(":planned_mm", stored(piece.planned));
    statement.bind(":expected_mm", stored(piece.expected));
    statement.bind(":set_mm", stored(piece.setLength));
    statement.run();
    addAttempt(connection, statement.insertedId(), 1, at);
}

void addCharge(Connection& connection, JobId job, std::int64_t line, const Charge& charge, const By& by) {
    Statement statement(connection, "add_charge");
    statement.bind(":job", stored(job));
    statement.bind(":line", line);
    statement.bind(":kind", chargeKindText(charge.kind));
    statement.bind(":article", stored(charge.article));
    statement.bind(":label", charge.label);
    statement.bind(":count", charge.count);
    statement.bind(":amount_minor", charge.amount.minor());
    statement.bind(":tax_hundredths_percent", charge.taxHundredthsPercent);
    statement.bind(":currency", charge.amount.currency().code());
    statement.bind(":cost_minor", charge.cost ? std::optional(charge.cost->minor()) : std::nullopt);
    statement.bind(":at", stored(by.at));
    statement.bind(":staff", stored(by.staff));
    statement.run();
}

JobId addJobRow(Connection& connection, const Job& job, const By& by) {
    Statement statement(connection, "add_job");
    statement.bind(":number", job.number == 0 ? std::nullopt : std::optional(job.number));
    statement.bind(":request_key", job.requestKey);
    statement.bind(":customer", stored(job.customer));
    statement.bind(":racket", stored(job.racket));
    statement.bind(":method", methodText(job.method));
    statement.bind(":route", job.route);
    statement.bind(":short_side", sideText(job.shortSide));
    statement.bind(":short_side_mm", stored(job.shortSideLength));
    bindTensionPair(statement, job.asked);
    statement.bind(":promised_at", stored(job.promised));
    statement.bind(":must_by", stored(job.mustBy));
    statement.bind(":logged_at", stored(by.at));
    statement.bind(":currency", job.total.currency().code());
    statement.run();
    return JobId::of(statement.insertedId());
}

} // namespace rw::sql
