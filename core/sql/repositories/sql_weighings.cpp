// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_weighings.h"

#include "core/base/named_texts.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"

#include <cmath>

namespace rw::sql {

namespace {
constexpr double kMicrogramsPerGram = 1e6;

constexpr NamedTexts<SpoolWeight, 2> kSpoolWeights({{{SpoolWeight::Empty, "empty"}, {SpoolWeight::New, "new"}}});
std::optional<SpoolWeight> spoolWeightFromText(std::string_view text) { return kSpoolWeights.value(text); }

ScaleReading readingIn(const Row& row, std::string_view weight, std::string_view step) {
    return {Mass::fromMilligrams(row.wide(weight)), Mass::fromMilligrams(row.wide(step))};
}
std::optional<ScaleReading> maybeReadingIn(const Row& row, std::string_view weight, std::string_view step) {
    return row.isNull(weight) ? std::nullopt : std::optional(readingIn(row, weight, step));
}
stock::Estimate lengthIn(const Row& row, std::string_view value, std::string_view sd) {
    return {static_cast<double>(row.wide(value)), static_cast<double>(row.wide(sd))};
}

KeptWeighing weighingIn(const Statement& statement) {
    const Row row(statement, "weighing");
    return {.id = row.id<WeighingId>(),
            .lot = row.id<LotId>("lot_id"),
            .stockTake = row.optionalId<StockTakeId>("stock_take_id"),
            .gross = readingIn(row, "gross_mg", "gross_step_mg"),
            .empty = maybeReadingIn(row, "empty_mg", "empty_step_mg"),
            .fresh = maybeReadingIn(row, "new_mg", "new_step_mg"),
            .gramsPerMetre = {static_cast<double>(row.wide("metre_ug")) / kMicrogramsPerGram,
                              static_cast<double>(row.wide("metre_sd_ug")) / kMicrogramsPerGram},
            .basis = row.oneOf("basis", stock::weighBasisFromText),
            .weighedMm = lengthIn(row, "weighed_mm", "weighed_sd_mm"),
            .bookMm = lengthIn(row, "book_mm", "book_sd_mm"),
            .whenNewMm = row.isNull("when_new_mm") ? std::nullopt
                                                   : std::optional(lengthIn(row, "when_new_mm", "when_new_sd_mm")),
            .by = row.by(),
            .booked = row.optionalId<MovementId>("booked_id")};
}

std::vector<KeptWeighing> weighingsIn(Statement& statement) {
    statement.run();
    std::vector<KeptWeighing> weighings;
    while (statement.next()) {
        weighings.push_back(weighingIn(statement));
    }
    return weighings;
}

std::optional<StockTake> stockTakeIn(Statement& statement) {
    statement.run();
    if (!statement.next()) {
        return std::nullopt;
    }
    const Row row(statement, "stock_take");
    return StockTake{.id = row.id<StockTakeId>(),
                     .started = row.by(),
                     .ended = row.optionalInstant("ended_at"),
                     .endedBy = row.optionalId<StaffId>("ended_by_staff_id")};
}

std::optional<std::int64_t> weightOf(const std::optional<ScaleReading>& reading) {
    return reading ? std::optional(reading->weight.milligrams()) : std::nullopt;
}
std::optional<std::int64_t> stepOf(const std::optional<ScaleReading>& reading) {
    return reading ? std::optional(reading->step.milligrams()) : std::nullopt;
}
std::int64_t whole(double value) { return std::llround(value); }
} // namespace

void SqlWeighings::setSpoolWeight(LotId lot, SpoolWeight what, const ScaleReading& reading, const By& by) {
    Statement statement(m_connection, "add_spool_weight");
    statement.bind(":lot", stored(lot));
    statement.bind(":what", kSpoolWeights.text(what));
    statement.bind(":weight_mg", reading.weight.milligrams());
    statement.bind(":step_mg", reading.step.milligrams());
    bindBy(statement, by);
    statement.run();
}

SpoolWeights SqlWeighings::spoolWeights(LotId lot) {
    Statement statement(m_connection, "list_spool_weights_of_lot");
    statement.bind(":lot", stored(lot));
    statement.run();
    SpoolWeights weights;
    while (statement.next()) {
        const Row row(statement, "spool_weight");
        auto& place = row.oneOf("what", spoolWeightFromText) == SpoolWeight::Empty ? weights.empty : weights.fresh;
        place = readingIn(row, "weight_mg", "step_mg");
    }
    return weights;
}

std::optional<desk::Weighings::KnownSpool> SqlWeighings::spoolLike(LotId lot) {
    Statement statement(m_connection, "get_spool_like");
    statement.bind(":lot", stored(lot));
    statement.run();
    if (!statement.next()) {
        return std::nullopt;
    }
    const Row row(statement, "spool_weight");
    return KnownSpool{row.id<LotId>("lot_id"), readingIn(row, "weight_mg", "step_mg")};
}

WeighingId SqlWeighings::add(const KeptWeighing& weighing) {
    Statement statement(m_connection, "add_weighing");
    statement.bind(":lot", stored(weighing.lot));
    statement.bind(":stock_take", stored(weighing.stockTake));
    statement.bind(":gross_mg", weighing.gross.weight.milligrams());
    statement.bind(":gross_step_mg", weighing.gross.step.milligrams());
    statement.bind(":empty_mg", weightOf(weighing.empty));
    statement.bind(":empty_step_mg", stepOf(weighing.empty));
    statement.bind(":new_mg", weightOf(weighing.fresh));
    statement.bind(":new_step_mg", stepOf(weighing.fresh));
    statement.bind(":metre_ug", whole(weighing.gramsPerMetre.value * kMicrogramsPerGram));
    statement.bind(":metre_sd_ug", whole(weighing.gramsPerMetre.sd * kMicrogramsPerGram));
    statement.bind(":basis", stock::weighBasisText(weighing.basis));
    statement.bind(":weighed_mm", whole(weighing.weighedMm.value));
    statement.bind(":weighed_sd_mm", whole(weighing.weighedMm.sd));
    statement.bind(":book_mm", whole(weighing.bookMm.value));
    statement.bind(":book_sd_mm", whole(weighing.bookMm.sd));
    const auto& whenNew = weighing.whenNewMm;
    statement.bind(":when_new_mm", whenNew ? std::optional(whole(whenNew->value)) : std::nullopt);
    statement.bind(":when_new_sd_mm", whenNew ? std::optional(whole(whenNew->sd)) : std::nullopt);
    bindBy(statement, weighing.by);
    statement.run();
    return WeighingId::of(statement.insertedId());
}

std::optional<KeptWeighing> SqlWeighings::get(WeighingId id) {
    Statement statement(m_connection, "get_weighing");
    statement.bind(":weighing", stored(id));
    statement.run();
    return statement.next() ? std::optional(weighingIn(statement)) : std::nullopt;
}

std::vector<KeptWeighing> SqlWeighings::ofLot(LotId lot) {
    Statement statement(m_connection, "list_weighings_of_lot");
    statement.bind(":lot", stored(lot));
    return weighingsIn(statement);
}

std::vector<KeptWeighing> SqlWeighings::ofStockTake(StockTakeId stockTake) {
    Statement statement(m_connection, "list_weighings_of_stock_take");
    statement.bind(":stock_take", stored(stockTake));
    return weighingsIn(statement);
}

std::vector<desk::Weighings::LotReading> SqlWeighings::readingsOf(StringArticleId article) {
    Statement statement(m_connection, "list_readings_of_article");
    statement.bind(":article", stored(article));
    statement.run();
    std::vector<LotReading> readings;
    while (statement.next()) {
        const Row row(statement, "weighing", "lot_id");
        readings.push_back({row.id<LotId>("lot_id"), readingIn(row, "weight_mg", "step_mg"), row.instant("at")});
    }
    return readings;
}

void SqlWeighings::book(WeighingId weighing, MovementId movement) {
    Statement statement(m_connection, "add_weighed_movement");
    statement.bind(":movement", stored(movement));
    statement.bind(":weighing", stored(weighing));
    statement.run();
}

StockTakeId SqlWeighings::startStockTake(const By& by) {
    Statement statement(m_connection, "add_stock_take");
    bindBy(statement, by);
    statement.run();
    return StockTakeId::of(statement.insertedId());
}

std::optional<StockTake> SqlWeighings::stockTake(StockTakeId id) {
    Statement statement(m_connection, "get_stock_take");
    statement.bind(":stock_take", stored(id));
    return stockTakeIn(statement);
}

std::optional<StockTake> SqlWeighings::stockTakeGoingOn() {
    Statement statement(m_connection, "get_stock_take_going_on");
    return stockTakeIn(statement);
}

void SqlWeighings::endStockTake(StockTakeId id, const By& by) {
    Statement statement(m_connection, "end_stock_take");
    statement.bind(":stock_take", stored(id));
    statement.bind(":at", stored(by.at));
    statement.bind(":staff", stored(by.staff));
    statement.run();
}

} // namespace rw::sql
