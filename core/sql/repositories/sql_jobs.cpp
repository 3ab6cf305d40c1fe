// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_jobs.h"

#include "core/base/world_error.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/job_rows.h"
#include "core/sql/repositories/new_job.h"
#include "core/sql/repositories/row.h"

#include <algorithm>
#include <cassert>

namespace rw::sql {

namespace {
/// The jobs whose ids the rows hold in that column.
std::vector<JobId> jobIdsIn(Statement& statement, std::string_view column = "id") {
    statement.run();
    std::vector<JobId> ids;
    while (statement.next()) {
        ids.push_back(JobId::of(statement.integer(column)));
    }
    return ids;
}

std::optional<JobId> oneJobIn(Statement& statement, std::string_view column = "id") {
    const auto ids = jobIdsIn(statement, column);
    return ids.empty() ? std::nullopt : std::optional(ids.front());
}

/// What `rowsIn` makes of the rows of a query about one job.
template<class RowsIn>
auto ofJob(Connection& connection, std::string_view query, JobId job, RowsIn rowsIn) {
    Statement statement(connection, query);
    statement.bind(":job", stored(job));
    statement.run();
    return rowsIn(statement);
}

/// The write found nothing to write to: the caller's picture of the ledger is not what is stored.
[[noreturn]] void guard(std::string what, std::int64_t id) {
    throw LedgerGuard(std::move(what) + ' ' + std::to_string(id));
}
} // namespace

JobId SqlJobs::add(const Job& job, const By& by) {
    assert(!job.pieces.empty());
    const JobId id = addJobRow(m_connection, job, by);
    for (const JobPiece& piece : job.pieces) {
        addJobPiece(m_connection, id, piece, by.at);
    }
    std::int64_t line = 0;
    for (const Charge& charge : job.charges) {
        addCharge(m_connection, id, ++line, charge, by);
    }
    record({.id = std::nullopt,
            .job = id,
            .kind = JobEventKind::Logged,
            .by = by,
            .machine = std::nullopt,
            .attempt = std::nullopt});
    if (!job.note.empty()) {
        addNote(id, job.note);
    }
    return id;
}

std::optional<Job> SqlJobs::get(JobId id) {
    const auto read = [&](std::string_view query, auto rowsIn) { return ofJob(m_connection, query, id, rowsIn); };
    std::optional<Job> job = read("get_job", jobIn);
    if (job) {
        job->pieces = read("list_pieces_of_job", piecesIn);
        job->charges = read("list_charges_of_job", chargesIn);
        job->strung = read("get_strung_of_job", strungIn);
        job->note = read("list_notes_of_job", notesIn);
    }
    return job;
}

bool SqlJobs::hasAny() {
    Statement statement(m_connection, "get_first_job");
    statement.run();
    return statement.next();
}

std::optional<JobId> SqlJobs::byNumber(std::int64_t number) {
    Statement statement(m_connection, "get_job_by_number");
    statement.bind(":number", number);
    return oneJobIn(statement);
}

std::optional<JobId> SqlJobs::byRequestKey(std::string_view key) {
    Statement statement(m_connection, "get_job_by_request_key");
    statement.bind(":request_key", key);
    return oneJobIn(statement);
}

std::vector<desk::JobLine> SqlJobs::inStates(const std::vector<JobState>& states) {
    if (states.empty()) {
        return {};
    }
    std::vector<JobState> wanted = states;
    std::ranges::sort(wanted);
    wanted.erase(std::unique(wanted.begin(), wanted.end()), wanted.end());
    Statement statement(m_connection, "list_jobs_in_states");
    for (std::size_t i = 0; i < 6; ++i) { // as many as there are states; the last one fills what is over
        statement.bind(":state" + std::to_string(i + 1), jobStateText(wanted[std::min(i, wanted.size() - 1)]));
    }
    statement.run();
    return jobLinesIn(statement);
}

std::vector<JobId> SqlJobs::ofRacket(RacketId racket) {
    Statement statement(m_connection, "list_jobs_of_racket");
    statement.bind(":racket", stored(racket));
    return jobIdsIn(statement);
}

std::vector<JobId> SqlJobs::ofCustomer(CustomerId customer) {
    Statement statement(m_connection, "list_jobs_of_customer");
    statement.bind(":customer", stored(customer));
    return jobIdsIn(statement);
}

std::vector<JobId> SqlJobs::ofFrame(FrameModelId frame, int atMost) {
    Statement statement(m_connection, "list_jobs_of_frame");
    statement.bind(":frame", stored(frame));
    statement.bind(":at_most", atMost);
    return jobIdsIn(statement);
}

std::optional<JobId> SqlJobs::ofAttempt(AttemptId attempt) {
    Statement statement(m_connection, "get_job_of_attempt");
    statement.bind(":attempt", stored(attempt));
    return oneJobIn(statement, "job_id");
}

std::vector<Length> SqlJobs::lastTakes(StringArticleId article, int atMost) {
    Statement statement(m_connection, "list_last_takes_of_article");
    statement.bind(":article", stored(article));
    statement.bind(":at_most", atMost);
    statement.run();
    std::vector<Length> takes;
    while (statement.next()) {
        takes.push_back(Row(statement, "job").length("taken_mm"));
    }
    return takes;
}

JobEventId SqlJobs::record(const JobEvent& event) {
    Statement statement(m_connection, "add_job_event");
    statement.bind(":job", stored(event.job));
    statement.bind(":kind", jobEventKindText(event.kind));
    statement.bind(":machine", stored(event.machine));
    statement.bind(":attempt", stored(event.attempt));
    bindBy(statement, event.by);
    statement.run();
    return JobEventId::of(statement.insertedId());
}

std::vector<JobEvent> SqlJobs::events(JobId job) { return ofJob(m_connection, "list_events_of_job", job, eventsIn); }

int SqlJobs::loseAttempt(AttemptId attempt, LostReason reason, Instant at) {
    Statement statement(m_connection, "lose_attempt");
    statement.bind(":attempt", stored(attempt));
    statement.bind(":reason", lostReasonText(reason));
    statement.bind(":at", stored(at));
    statement.run();
    if (!statement.next()) {
        guard("no open attempt", attempt.value());
    }
    const Row row(statement, "attempt");
    const int next = row.number("number") + 1;
    addAttempt(m_connection, row.wide("job_piece_id"), next, at);
    return next;
}

void SqlJobs::plan(JobPieceId piece, std::optional<LotId> lot, Length planned, bool pinned) {
    Statement statement(m_connection, "plan_job_piece");
    statement.bind(":piece", stored(piece));
    statement.bind(":lot", stored(lot));
    statement.bind(":planned_mm", stored(planned));
    statement.bind(":pinned", stored(pinned));
    statement.run();
    if (statement.rowsAffected() == 0) {
        guard("no job piece", piece.value());
    }
}

void SqlJobs::setStrung(JobEventId event, JobId job, const TensionPair& tensions, MachineId machine) {
    Statement statement(m_connection, "add_strung");
    statement.bind(":event", stored(event));
    statement.bind(":job", stored(job));
    bindTensionPair(statement, tensions);
    statement.bind(":machine", stored(machine));
    statement.run();
}

void SqlJobs::addConsent(JobId job, const Consent& consent) {
    Statement statement(m_connection, "add_consent");
    statement.bind(":job", stored(job));
    bindTension(statement, "pull", consent.above.pull);
    bindTension(statement, "marked", consent.above.marked);
    bindBy(statement, consent.by);
    statement.run();
    Statement words(m_connection, "add_consent_words");
    words.bind(":consent", statement.insertedId());
    words.bind(":agreed_by", consent.agreedBy);
    words.bind(":words", consent.words);
    words.run();
}

std::vector<Consent> SqlJobs::consents(JobId job) {
    return ofJob(m_connection, "list_consents_of_job", job, consentsIn);
}

void SqlJobs::setAsked(JobId job, const AskedChange& change) {
    Statement update(m_connection, "update_asked_of_job");
    update.bind(":job", stored(job));
    bindTensionPair(update, change.after);
    update.run();
    Statement statement(m_connection, "add_asked_change");
    statement.bind(":job", stored(job));
    bindTension(statement, "old_mains", change.before.mains);
    bindTension(statement, "old_crosses", change.before.crosses);
    bindTensionPair(statement, change.after);
    bindBy(statement, change.by);
    statement.bind(":seen_at", stored(change.seen));
    statement.bind(":seen_by", change.seen ? std::optional(stored(change.by.staff)) : std::nullopt);
    statement.run();
}

std::vector<AskedChange> SqlJobs::askedChanges(JobId job) {
    return ofJob(m_connection, "list_asked_changes_of_job", job, askedChangesIn);
}

void SqlJobs::seeAskedChanges(JobId job, const By& by) {
    Statement statement(m_connection, "see_asked_changes");
    statement.bind(":job", stored(job));
    statement.bind(":staff", stored(by.staff));
    statement.bind(":at", stored(by.at));
    statement.run();
}

void SqlJobs::setBenchStep(JobId job, BenchStep step) {
    Statement statement(m_connection, "update_bench_step_of_job");
    statement.bind(":job", stored(job));
    statement.bind(":step", benchStepText(step));
    statement.run();
    if (statement.rowsAffected() == 0) {
        guard("no job", job.value());
    }
}

void SqlJobs::addNote(JobId job, std::string_view words) {
    Statement statement(m_connection, "add_note");
    statement.bind(":job", stored(job));
    statement.bind(":words", words);
    statement.run();
    if (!statement.next()) {
        guard("no job", job.value());
    }
}

void SqlJobs::tell(JobId job, std::string_view how, const By& by) {
    Statement statement(m_connection, "add_telling");
    statement.bind(":job", stored(job));
    statement.bind(":how", how);
    bindBy(statement, by);
    statement.run();
}

void SqlJobs::pay(JobId job, const Payment& payment) {
    Statement statement(m_connection, "add_payment");
    statement.bind(":job", stored(job));
    statement.bind(":amount_minor", payment.amount.minor());
    statement.bind(":currency", payment.amount.currency().code());
    statement.bind(":way", payment.way);
    statement.bind(":corrects", stored(payment.corrects));
    statement.bind(":request_key",
                   payment.requestKey.empty() ? std::nullopt : std::optional<std::string_view>(payment.requestKey));
    bindBy(statement, payment.by);
    statement.run();
}

std::vector<Payment> SqlJobs::payments(JobId job) {
    return ofJob(m_connection, "list_payments_of_job", job, paymentsIn);
}

std::optional<desk::JobPayment> SqlJobs::paymentByRequestKey(std::string_view key) {
    Statement statement(m_connection, "get_payment_by_request_key");
    statement.bind(":request_key", key);
    statement.run();
    if (!statement.next()) {
        return std::nullopt;
    }
    return desk::JobPayment{Row(statement, "payment").id<JobId>("job_id"), paymentIn(statement)};
}

Money SqlJobs::paid(JobId job) {
    Statement statement(m_connection, "get_paid_of_job");
    statement.bind(":job", stored(job));
    statement.run();
    if (!statement.next()) {
        guard("no job", job.value());
    }
    const Row row(statement, "job");
    return Money::fromMinor(row.wide("paid_minor"), row.currency());
}

void SqlJobs::handOver(JobId job, JobEventId event, const Handover& handover) {
    Statement statement(m_connection, "add_handover");
    statement.bind(":job", stored(job));
    statement.bind(":event", stored(event));
    statement.bind(":taken_by", handover.takenBy);
    statement.bind(":on_account", stored(handover.onAccount));
    statement.run();
}

std::optional<Handover> SqlJobs::handover(JobId job) {
    return ofJob(m_connection, "get_handover_of_job", job, handoverIn);
}

void SqlJobs::inspect(JobId job, const Inspection& inspection) {
    if (inspection.isEmpty()) {
        return;
    }
    Statement statement(m_connection, "add_inspection");
    statement.bind(":job", stored(job));
    statement.bind(":came_with", inspection.cameWith);
    statement.bind(":remarks", inspection.remarks);
    statement.run();
}

Inspection SqlJobs::inspection(JobId job) {
    return ofJob(m_connection, "get_inspection_of_job", job, inspectionIn);
}

} // namespace rw::sql
