// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/ledger_tables.h"

#include "core/sql/statement.h"

#include <string>
#include <utility>

namespace rw::sql {

namespace {
using Kind = desk::ColumnKind;

struct Shape {
    std::string name;
    std::vector<desk::Column> columns; ///< as the query export_<name> calls them
};

const std::vector<Shape>& shapes() {
    static const std::vector<Shape> kShapes = {
        {"customers",
         {{"customer", Kind::Number}, {"name", Kind::Words}, {"added", Kind::Moment}, {"removed", Kind::Moment}}},
        {"contacts", {{"customer", Kind::Number}, {"kind", Kind::Fact}, {"contact_text", Kind::Words}}},
        {"rackets",
         {{"racket", Kind::Number}, {"customer", Kind::Number}, {"frame", Kind::Words}, {"mark", Kind::Words}}},
        {"strings",
         {{"code", Kind::Words},
          {"name", Kind::Words},
          {"colour", Kind::Words},
          {"sport", Kind::Fact},
          {"material", Kind::Fact},
          {"diameter_um", Kind::Number},
          {"mg_per_m", Kind::Number}}},
        {"lots",
         {{"tag", Kind::Words},
          {"string", Kind::Words},
          {"kind", Kind::Fact},
          {"owner", Kind::Number},
          {"nominal_mm", Kind::Number},
          {"length_mm", Kind::Number},
          {"price", Kind::Money, true},
          {"shipping", Kind::Money, true},
          {"batch", Kind::Words},
          {"received", Kind::Moment},
          {"closed", Kind::Moment}}},
        {"movements",
         {{"movement", Kind::Number},
          {"lot", Kind::Words},
          {"change_mm", Kind::Number},
          {"reason", Kind::Fact},
          {"lost_reason", Kind::Fact},
          {"job", Kind::Number},
          {"corrects", Kind::Number},
          {"at", Kind::Moment},
          {"person", Kind::Words},
          {"station", Kind::Fact}}},
        {"weighings",
         {{"weighing", Kind::Number},
          {"lot", Kind::Words},
          {"stock_take", Kind::Number},
          {"gross_mg", Kind::Number},
          {"scale_step_mg", Kind::Number},
          {"empty_mg", Kind::Number},
          {"new_mg", Kind::Number},
          {"metre_ug", Kind::Number},
          {"weighed_mm", Kind::Number},
          {"weighed_sd_mm", Kind::Number},
          {"book_mm", Kind::Number},
          {"book_sd_mm", Kind::Number},
          {"movement", Kind::Number},
          {"at", Kind::Moment},
          {"person", Kind::Words},
          {"station", Kind::Fact}}},
        {"jobs",
         {{"job", Kind::Number},
          {"customer", Kind::Number},
          {"racket", Kind::Number},
          {"state", Kind::Fact},
          {"method", Kind::Fact},
          {"route", Kind::Words},
          {"asked_mains_hundredths", Kind::Number},
          {"asked_mains_unit", Kind::Fact},
          {"asked_crosses_hundredths", Kind::Number},
          {"asked_crosses_unit", Kind::Fact},
          {"strung_mains_hundredths", Kind::Number},
          {"strung_mains_unit", Kind::Fact},
          {"strung_crosses_hundredths", Kind::Number},
          {"strung_crosses_unit", Kind::Fact},
          {"logged", Kind::Moment},
          {"promised", Kind::Moment},
          {"total", Kind::Money}}},
        {"pieces",
         {{"job", Kind::Number},
          {"role", Kind::Fact},
          {"string", Kind::Words},
          {"source", Kind::Fact},
          {"planned_mm", Kind::Number},
          {"attempt", Kind::Number},
          {"cut_mm", Kind::Number},
          {"lot", Kind::Words},
          {"lost_reason", Kind::Fact},
          {"tails_low_mm", Kind::Number},
          {"tails_high_mm", Kind::Number}}},
        {"charges",
         {{"job", Kind::Number},
          {"line", Kind::Number},
          {"kind", Kind::Fact},
          {"string", Kind::Words},
          {"label", Kind::Words},
          {"pieces", Kind::Number},
          {"amount", Kind::Money},
          {"tax_hundredths_percent", Kind::Number},
          {"cost", Kind::Money, true},
          {"at", Kind::Moment}}},
        {"payments",
         {{"payment", Kind::Number},
          {"job", Kind::Number},
          {"amount", Kind::Money},
          {"way", Kind::Words},
          {"corrects", Kind::Number},
          {"at", Kind::Moment},
          {"person", Kind::Words},
          {"station", Kind::Fact}}},
        {"asked_for_none",
         {{"string", Kind::Words}, {"at", Kind::Moment}, {"person", Kind::Words}, {"station", Kind::Fact}}}};
    return kShapes;
}

desk::Cell cellIn(const Statement& statement, const desk::Column& column) {
    if (statement.isNull(column.name)) {
        return std::monostate();
    }
    if (column.kind == Kind::Words || column.kind == Kind::Fact) {
        return statement.text(column.name);
    }
    return statement.integer(column.name);
}
} // namespace

std::vector<desk::LedgerTable> ledgerTables(Connection& connection) {
    std::vector<desk::LedgerTable> tables;
    for (const Shape& shape : shapes()) {
        desk::LedgerTable table{shape.name, shape.columns, {}};
        Statement statement(connection, "export_" + shape.name);
        statement.run();
        while (statement.next()) {
            std::vector<desk::Cell>& row = table.rows.emplace_back();
            for (const desk::Column& column : shape.columns) {
                row.push_back(cellIn(statement, column));
            }
        }
        tables.push_back(std::move(table));
    }
    return tables;
}

} // namespace rw::sql
