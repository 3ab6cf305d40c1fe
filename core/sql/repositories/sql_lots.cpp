// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_lots.h"

#include "core/base/world_error.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stored_texts.h"

#include <algorithm>
#include <cassert>

namespace rw::sql {

namespace {
Lot lotIn(const Statement& statement) {
    const Row row(statement, "lot");
    const Currency currency = row.currency();
    return {.id = row.id<LotId>(),
            .tag = row.text("tag"),
            .article = row.id<StringArticleId>("article_id"),
            .kind = row.oneOf("kind", lotKindFromText),
            .owner = row.optionalId<CustomerId>("owner_customer_id"),
            .nominal = row.length("nominal_mm"),
            .length = row.length("length_mm"),
            .price = Money::fromMinor(row.wide("price_minor"), currency),
            .shipping = Money::fromMinor(row.wide("shipping_minor"), currency),
            .batch = row.text("batch"),
            .received = row.instant("received_at"),
            .sealed = row.flag("sealed"),
            .measuredSinceLastCut = row.flag("measured_since_last_cut"),
            .delivery = row.optionalId<DeliveryId>("delivery_id"),
            .closed = row.optionalInstant("closed_at")};
}

std::vector<Lot> lotsIn(Statement& statement) {
    statement.run();
    std::vector<Lot> lots;
    while (statement.next()) {
        lots.push_back(lotIn(statement));
    }
    return lots;
}

std::optional<Lot> lotOf(Statement& statement) {
    statement.run();
    return statement.next() ? std::optional(lotIn(statement)) : std::nullopt;
}

constexpr int kCutsATake = 2; ///< a job takes two pieces off a lot at most

/// Oldest first; the statement gives the newest first.
std::vector<Length> takesIn(Statement& statement, int atMost) {
    statement.bind(":cuts", atMost * kCutsATake);
    statement.bind(":at_most", atMost);
    statement.run();
    std::vector<Length> takes;
    while (statement.next()) {
        takes.push_back(Row(statement, "movement", "last_id").length("taken_mm"));
    }
    std::ranges::reverse(takes);
    return takes;
}
} // namespace

LotId SqlLots::add(const Lot& lot) {
    assert(lot.price.sameCurrency(lot.shipping));
    Statement statement(m_connection, "add_lot");
    statement.bind(":tag", lot.tag);
    statement.bind(":article", stored(lot.article));
    statement.bind(":kind", lotKindText(lot.kind));
    statement.bind(":owner", stored(lot.owner));
    statement.bind(":nominal_mm", stored(lot.nominal));
    statement.bind(":price_minor", lot.price.minor());
    statement.bind(":shipping_minor", lot.shipping.minor());
    statement.bind(":currency", lot.price.currency().code());
    statement.bind(":batch", lot.batch);
    statement.bind(":received_at", stored(lot.received));
    statement.bind(":closed_at", stored(lot.closed));
    statement.bind(":delivery", stored(lot.delivery));
    statement.run();
    return LotId::of(statement.insertedId());
}

DeliveryId SqlLots::addDelivery(std::string_view requestKey, std::string_view supplier, const Money& shipping,
                                const By& by) {
    Statement statement(m_connection, "add_delivery");
    statement.bind(":request_key", requestKey);
    statement.bind(":supplier", supplier);
    statement.bind(":shipping_minor", shipping.minor());
    statement.bind(":currency", shipping.currency().code());
    bindBy(statement, by);
    statement.run();
    return DeliveryId::of(statement.insertedId());
}

std::vector<LotId> SqlLots::ofDelivery(std::string_view requestKey) {
    Statement statement(m_connection, "list_lots_of_delivery");
    statement.bind(":request_key", requestKey);
    statement.run();
    std::vector<LotId> lots;
    while (statement.next()) {
        lots.push_back(LotId::of(statement.integer("id")));
    }
    return lots;
}

std::optional<Delivery> SqlLots::delivery(DeliveryId id) {
    Statement statement(m_connection, "get_delivery");
    statement.bind(":delivery", stored(id));
    statement.run();
    if (!statement.next()) {
        return std::nullopt;
    }
    const Row row(statement, "delivery");
    return Delivery{.id = row.id<DeliveryId>(),
                    .supplier = row.text("supplier"),
                    .shipping = Money::fromMinor(row.wide("shipping_minor"), row.currency()),
                    .by = row.by()};
}

std::vector<std::string> SqlLots::suppliers() {
    Statement statement(m_connection, "list_suppliers");
    statement.run();
    std::vector<std::string> names;
    while (statement.next()) {
        names.push_back(statement.text("supplier"));
    }
    return names;
}

std::optional<Lot> SqlLots::get(LotId id) {
    Statement statement(m_connection, "get_lot");
    statement.bind(":lot", stored(id));
    return lotOf(statement);
}

std::optional<Lot> SqlLots::byTag(std::string_view tag) {
    Statement statement(m_connection, "get_lot_by_tag");
    statement.bind(":tag", tag);
    return lotOf(statement);
}

std::vector<Lot> SqlLots::open() {
    Statement statement(m_connection, "list_open_lots");
    return lotsIn(statement);
}

std::vector<Lot> SqlLots::open(StringArticleId article) {
    Statement statement(m_connection, "list_open_lots_of_article");
    statement.bind(":article", stored(article));
    return lotsIn(statement);
}

std::vector<Lot> SqlLots::closed(StringArticleId article) {
    Statement statement(m_connection, "list_closed_lots_of_article");
    statement.bind(":article", stored(article));
    return lotsIn(statement);
}

MovementId SqlLots::move(const Movement& movement) {
    Statement statement(m_connection, "add_movement");
    statement.bind(":lot", stored(movement.lot));
    statement.bind(":change_mm", stored(movement.change));
    statement.bind(":reason", movementReasonText(movement.reason));
    statement.bind(":attempt", stored(movement.attempt));
    statement.bind(":lost_reason", stored(movement.lostReason, lostReasonText));
    statement.bind(":corrects", stored(movement.corrects));
    bindBy(statement, movement.by);
    statement.run();
    const auto id = MovementId::of(statement.insertedId());
    if (!movement.words.empty()) {
        Statement words(m_connection, "add_movement_words");
        words.bind(":movement", stored(id));
        words.bind(":words", movement.words);
        words.run();
    }
    return id;
}

std::vector<Movement> SqlLots::movements(LotId lot) {
    Statement statement(m_connection, "list_movements_of_lot");
    statement.bind(":lot", stored(lot));
    statement.run();
    std::vector<Movement> movements;
    while (statement.next()) {
        const Row row(statement, "movement");
        movements.push_back({.id = row.id<MovementId>(),
                             .lot = row.id<LotId>("lot_id"),
                             .reason = row.oneOf("reason", movementReasonFromText),
                             .change = row.length("change_mm"),
                             .attempt = row.optionalId<AttemptId>("attempt_id"),
                             .lostReason = row.optionalOneOf("lost_reason", lostReasonFromText),
                             .corrects = row.optionalId<MovementId>("corrects_id"),
                             .by = row.by(),
                             .words = row.text("words")});
    }
    return movements;
}

void SqlLots::close(LotId lot, Instant at) {
    Statement statement(m_connection, "close_lot");
    statement.bind(":lot", stored(lot));
    statement.bind(":at", stored(at));
    statement.run();
}

void SqlLots::setKind(LotId lot, LotKind kind) {
    Statement statement(m_connection, "update_kind_of_lot");
    statement.bind(":lot", stored(lot));
    statement.bind(":kind", lotKindText(kind));
    statement.run();
}

void SqlLots::reopen(LotId lot) {
    Statement statement(m_connection, "reopen_lot");
    statement.bind(":lot", stored(lot));
    statement.run();
}

std::vector<PlannedCut> SqlLots::plannedCuts() {
    Statement statement(m_connection, "list_planned_cuts");
    statement.run();
    std::vector<PlannedCut> cuts;
    while (statement.next()) {
        const Row row(statement, "job_piece", "job_piece_id");
        cuts.push_back({.piece = row.id<JobPieceId>("job_piece_id"),
                        .article = row.id<StringArticleId>("article_id"),
                        .lot = row.optionalId<LotId>("lot_id"),
                        .owner = row.optionalId<CustomerId>("owner_customer_id"),
                        .length = row.length("planned_mm")});
    }
    return cuts;
}

std::vector<WaitingCut> SqlLots::waitingCuts(StringArticleId article) {
    Statement statement(m_connection, "list_waiting_cuts_of_article");
    statement.bind(":article", stored(article));
    statement.run();
    std::vector<WaitingCut> cuts;
    while (statement.next()) {
        const Row row(statement, "job_piece", "job_piece_id");
        cuts.push_back({.piece = row.id<JobPieceId>("job_piece_id"),
                        .job = row.id<JobId>("job_id"),
                        .jobNumber = row.wide("number"),
                        .role = row.oneOf("role", pieceRoleFromText),
                        .lot = row.optionalId<LotId>("lot_id"),
                        .owner = row.optionalId<CustomerId>("owner_customer_id"),
                        .length = row.length("planned_mm"),
                        .pinned = row.flag("pinned"),
                        .begun = row.flag("begun")});
    }
    return cuts;
}

std::vector<Length> SqlLots::lastTakesOff(StringArticleId article, int atMost) {
    Statement statement(m_connection, "list_last_takes_off_lots_of_article");
    statement.bind(":article", stored(article));
    return takesIn(statement, atMost);
}

std::vector<Length> SqlLots::lastTakesOff(Sport sport, int atMost) {
    Statement statement(m_connection, "list_last_takes_off_lots_of_sport");
    statement.bind(":sport", sportText(sport));
    return takesIn(statement, atMost);
}

std::optional<LotId> SqlLots::lastCutOn(MachineId machine) {
    Statement statement(m_connection, "get_lot_last_cut_on_machine");
    statement.bind(":machine", stored(machine));
    statement.run();
    return statement.next() ? std::optional(LotId::of(statement.integer("lot_id"))) : std::nullopt;
}

} // namespace rw::sql
