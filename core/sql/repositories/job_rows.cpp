// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/job_rows.h"

#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stored_texts.h"

namespace rw::sql {

namespace {
std::optional<DoneCut> cutIn(const Row& row, const JobPiece& piece) {
    if (!row.isNull("cut_lot_id")) {
        return DoneCut{.lot = row.id<LotId>("cut_lot_id"),
                       .lotTag = row.text("cut_lot_tag"),
                       .length = row.length("cut_mm"),
                       .at = row.instant("cut_at"),
                       .allThereWas = row.flag("all_there_was"),
                       .takenBack = row.flag("taken_back")};
    }
    if (piece.source == PieceSource::CustomersSet && !row.isNull("cut_event_at")) {
        return DoneCut{.lot = std::nullopt,
                       .lotTag = {},
                       .length = piece.planned,
                       .at = row.instant("cut_event_at"),
                       .allThereWas = false,
                       .takenBack = false};
    }
    return std::nullopt;
}

JobPiece pieceIn(const Row& row) {
    return {.id = row.id<JobPieceId>(),
            .role = row.oneOf("role", pieceRoleFromText),
            .article = row.id<StringArticleId>("article_id"),
            .source = row.oneOf("source", pieceSourceFromText),
            .lot = row.optionalId<LotId>("lot_id"),
            .pinned = row.flag("pinned"),
            .planned = row.length("planned_mm"),
            .expected = row.length("expected_mm"),
            .attempts = {},
            .setLength = row.optionalLength("set_mm")};
}

/// "L", "K / L": the codes of the pieces, a string that is in both named once.
std::string codesIn(const Row& row) {
    std::string codes = row.isNull("whole_code") ? std::string() : row.text("whole_code");
    std::string last;
    for (const auto* column : {"mains_code", "crosses_code"}) {
        if (row.isNull(column) || row.text(column) == last) {
            continue;
        }
        last = row.text(column);
        codes += (codes.empty() ? "" : " / ") + last;
    }
    return codes;
}
} // namespace

std::optional<Job> jobIn(Statement& statement) {
    if (!statement.next()) {
        return std::nullopt;
    }
    const Row row(statement, "job");
    return Job{.id = row.id<JobId>(),
               .number = row.wide("number"),
               .requestKey = row.text("request_key"),
               .customer = row.id<CustomerId>("customer_id"),
               .racket = row.id<RacketId>("racket_id"),
               .method = row.oneOf("method", methodFromText),
               .route = row.text("route"),
               .shortSide = row.oneOf("short_side", storedSide),
               .shortSideLength = row.optionalLength("short_side_mm"),
               .asked = row.tensionPair(),
               .pieces = {},
               .charges = {},
               .total = Money::fromMinor(row.wide("total_minor"), row.currency()),
               .promised = row.optionalInstant("promised_at"),
               .mustBy = row.optionalInstant("must_by"),
               .note = {},
               .state = row.oneOf("state", jobStateFromText),
               .benchStep = row.oneOf("bench_step", benchStepFromText),
               .logged = row.instant("logged_at"),
               .strung = std::nullopt,
               .collected = row.optionalInstant("collected_at"),
               .version = row.wide("row_version")};
}

std::vector<JobPiece> piecesIn(Statement& statement) {
    std::vector<JobPiece> pieces;
    while (statement.next()) {
        const Row row(statement, "job_piece");
        if (pieces.empty() || pieces.back().id != row.id<JobPieceId>()) {
            pieces.push_back(pieceIn(row));
        }
        JobPiece& piece = pieces.back();
        if (!row.isNull("attempt_id")) {
            const Row attempt(statement, "attempt", "attempt_id");
            piece.attempts.push_back({.id = attempt.id<AttemptId>("attempt_id"),
                                      .number = attempt.number("attempt_number"),
                                      .cut = cutIn(attempt, piece),
                                      .lost = attempt.optionalOneOf("lost_reason", lostReasonFromText)});
        }
    }
    return pieces;
}

Charge chargeIn(const Statement& statement) {
    const Row row(statement, "charge");
    return {.kind = row.oneOf("kind", chargeKindFromText),
            .article = row.optionalId<StringArticleId>("article_id"),
            .label = row.text("label"),
            .count = row.number("count"),
            .amount = Money::fromMinor(row.wide("amount_minor"), row.currency()),
            .taxHundredthsPercent = row.number("tax_hundredths_percent"),
            .cost = row.optionalMoney("cost_minor", row.currency())};
}

std::vector<Charge> chargesIn(Statement& statement) {
    std::vector<Charge> charges;
    while (statement.next()) {
        charges.push_back(chargeIn(statement));
    }
    return charges;
}

std::optional<Strung> strungIn(Statement& statement) {
    if (!statement.next()) {
        return std::nullopt;
    }
    const Row row(statement, "strung", "job_event_id");
    return Strung{.tensions = row.tensionPair(), .machine = row.id<MachineId>("machine_id"), .by = row.by()};
}

std::string notesIn(Statement& statement) {
    std::string words;
    while (statement.next()) {
        words += (words.empty() ? "" : "\n") + statement.text("words");
    }
    return words;
}

desk::JobLine jobLineIn(const Statement& statement) {
    const Row row(statement, "job");
    return {.id = row.id<JobId>(),
            .number = row.wide("number"),
            .state = row.oneOf("state", jobStateFromText),
            .customerId = row.id<CustomerId>("customer_id"),
            .customer = row.text("customer_name"),
            .phone = row.text("phone"),
            .frame = row.text("frame_name"),
            .mark = row.text("mark"),
            .sport = row.oneOf("sport", sportFromText),
            .method = row.oneOf("method", methodFromText),
            .asked = row.tensionPair(),
            .strings = codesIn(row),
            .promised = row.optionalInstant("promised_at"),
            .logged = row.instant("logged_at")};
}

std::vector<desk::JobLine> jobLinesIn(Statement& statement) {
    std::vector<desk::JobLine> lines;
    while (statement.next()) {
        lines.push_back(jobLineIn(statement));
        const Row row(statement, "job");
        lines.back().mustBy = row.optionalInstant("must_by");
        lines.back().highestMarked = row.optionalTension("highest");
        lines.back().told = row.optionalInstant("told_at");
    }
    return lines;
}

Payment paymentIn(const Statement& statement) {
    const Row row(statement, "payment");
    return {.id = row.id<PaymentId>(),
            .amount = Money::fromMinor(row.wide("amount_minor"), row.currency()),
            .way = row.text("way"),
            .by = row.by(),
            .corrects = row.optionalId<PaymentId>("corrects_id"),
            .requestKey = row.isNull("request_key") ? std::string() : row.text("request_key")};
}

std::vector<Payment> paymentsIn(Statement& statement) {
    std::vector<Payment> payments;
    while (statement.next()) {
        payments.push_back(paymentIn(statement));
    }
    return payments;
}

std::vector<Consent> consentsIn(Statement& statement) {
    std::vector<Consent> consents;
    while (statement.next()) {
        const Row row(statement, "consent");
        consents.push_back({.above = {row.tension("pull"), row.tension("marked")},
                            .agreedBy = row.text("agreed_by"),
                            .words = row.text("words"),
                            .by = row.by()});
    }
    return consents;
}

std::vector<AskedChange> askedChangesIn(Statement& statement) {
    std::vector<AskedChange> changes;
    while (statement.next()) {
        const Row row(statement, "asked_change");
        changes.push_back({.before = {row.tension("old_mains"), row.tension("old_crosses")},
                           .after = row.tensionPair(),
                           .by = row.by(),
                           .seen = row.optionalInstant("seen_at")});
    }
    return changes;
}

std::optional<Handover> handoverIn(Statement& statement) {
    if (!statement.next()) {
        return std::nullopt;
    }
    const Row row(statement, "handover", "job_event_id");
    return Handover{row.text("taken_by"), row.flag("on_account")};
}

Inspection inspectionIn(Statement& statement) {
    return statement.next() ? Inspection{statement.text("came_with"), statement.text("remarks")} : Inspection();
}

std::vector<JobEvent> eventsIn(Statement& statement) {
    std::vector<JobEvent> events;
    while (statement.next()) {
        const Row row(statement, "job_event");
        events.push_back({.id = row.id<JobEventId>(),
                          .job = row.id<JobId>("job_id"),
                          .kind = row.oneOf("kind", jobEventKindFromText),
                          .by = row.by(),
                          .machine = row.optionalId<MachineId>("machine_id"),
                          .attempt = row.optionalId<AttemptId>("attempt_id")});
    }
    return events;
}

} // namespace rw::sql
