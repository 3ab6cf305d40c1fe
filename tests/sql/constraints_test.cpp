// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/schema_promise.h"
#include "core/sql/migration.h"
#include "tests/sql/engines.h"
#include "tests/sql/pattern.h"
#include "tests/sql/small_shop.h"

#include <gmock/gmock.h>

#include <map>
#include <set>

namespace rw::sql::test {

namespace {

/// A value that a column must not hold, and the CHECK that says so.
struct Forbidden {
    std::string guard;
    std::string table;
    std::string column;
    std::string value;
};

std::string textOf(int length) { return "'" + std::string(static_cast<std::size_t>(length), 'x') + "'"; }

std::vector<Forbidden> forbidden() {
    return {
        {"ledger_application", "ledger", "application", "'another'"},
        {"ledger_time_zone", "ledger", "time_zone", "''"},
        {"ledger_currency", "ledger", "currency", "'POUND'"},
        {"setting_name", "setting", "name", textOf(81)},
        {"setting_value", "setting", "value", textOf(10001)},
        {"staff_name", "staff", "name", "''"},
        {"machine_name", "machine", "name", textOf(81)},
        {"machine_unit", "machine", "unit", "'N'"},
        {"machine_step", "machine", "step_hundredths", "0"},
        {"machine_reach", "machine", "reach_mm", "-1"},
        {"frame_name", "frame_model", "name", textOf(81)},
        {"frame_sport", "frame_model", "sport", "'padel'"},
        {"frame_hoop_length", "frame_model", "hoop_length_mm", "149.9"},
        {"frame_hoop_width", "frame_model", "hoop_width_mm", "351"},
        {"frame_head_area", "frame_model", "head_area_cm2", "100"},
        {"frame_open_throat", "frame_model", "open_throat", "2"},
        {"frame_widest", "frame_model", "widest_from_throat", "0.2"},
        {"frame_head_exponent", "frame_model", "head_exponent", "1"},
        {"frame_throat_exponent", "frame_model", "throat_exponent", "5"},
        {"frame_wall", "frame_model", "wall_mm", "3"},
        {"frame_outermost_main", "frame_model", "outermost_main_mm", "0"},
        {"frame_last_cross", "frame_model", "last_cross_mm", "0"},
        {"frame_mains", "frame_model", "mains", "5"},
        {"frame_crosses", "frame_model", "crosses", "35"},
        {"frame_mains_span", "frame_model", "mains_span_mm", "0"},
        {"frame_crosses_span", "frame_model", "crosses_span_mm", "-1"},
        {"frame_spread", "frame_model", "spread", "2.1"},
        {"frame_mains_start", "frame_model", "mains_start", "'left'"},
        {"frame_lowest_unit", "frame_model", "lowest_hundredths = 5000, lowest_unit", "'N'"},
        {"frame_highest_unit", "frame_model", "highest_hundredths = 6000, highest_unit", "'N'"},
        {"frame_lowest_with_unit", "frame_model", "lowest_hundredths", "5000"},
        {"frame_highest_with_unit", "frame_model", "highest_unit", "'lb'"},
        {"frame_forced_side", "frame_model", "forced_side", "'both'"},
        {"frame_mounting_mark", "frame_model", "mounting_mark", "''"},
        {"frame_crosses_from_throat", "frame_model", "crosses_from_throat", "-1"},
        {"frame_note", "frame_model", "note", textOf(10001)},
        {"usual_cut_role", "usual_cut", "role", "'half'"},
        {"usual_cut_material", "usual_cut", "material", "'wire'"},
        {"usual_cut_length", "usual_cut", "cut_mm", "0"},
        {"usual_cut_short_side", "usual_cut", "short_side_mm", "0"},
        {"customer_name", "customer", "name", textOf(201)},
        {"contact_kind", "contact", "kind", "'pigeon'"},
        {"contact_text", "contact", "text", "''"},
        {"racket_mark", "racket", "mark", textOf(81)},
        {"string_code", "string_article", "code", "''"},
        {"string_name", "string_article", "name", textOf(81)},
        {"string_sport", "string_article", "sport", "'padel'"},
        {"string_material", "string_article", "material", "'wire'"},
        {"string_diameter", "string_article", "diameter_um", "399"},
        {"string_weight", "string_article", "milligrams_per_metre", "0"},
        {"string_stretch", "string_article", "stretch_percent", "-0.1"},
        {"string_packet", "string_article", "packet_mm", "0"},
        {"price_list_date", "price_list", "valid_from", "'2025-1-1'"},
        {"price_list_currency", "price_list", "currency", "'GB'"},
        {"price_list_tax_rule", "price_list", "tax_rule", "'none'"},
        {"price_line_kind", "price_line", "kind", "'tip'"},
        {"price_line_sport", "price_line", "sport", "'padel'"},
        {"price_line_method", "price_line", "method", "'three-piece'"},
        {"price_line_label", "price_line", "label", textOf(201)},
        {"price_line_tax", "price_line", "tax_hundredths_percent", "10001"},
        {"price_line_cost", "price_line", "cost_minor", "-1"},
        {"lot_tag", "lot", "tag", textOf(21)},
        {"lot_kind", "lot", "kind", "'spool'"},
        {"lot_nominal", "lot", "nominal_mm", "0"},
        {"lot_price", "lot", "price_minor", "-1"},
        {"lot_shipping", "lot", "shipping_minor", "-1"},
        {"lot_currency", "lot", "currency", "''"},
        {"lot_batch", "lot", "batch", textOf(81)},
        {"lot_closed_is_empty", "lot", "closed_at", "5"},
        {"job_method", "job", "method", "'three-piece'"},
        {"job_short_side", "job", "short_side", "'both'"},
        {"job_short_side_length", "job", "short_side_mm", "0"},
        {"job_mains", "job", "mains_hundredths", "179"},
        {"job_mains_unit", "job", "mains_unit", "'N'"},
        {"job_crosses", "job", "crosses_hundredths", "10001"},
        {"job_crosses_unit", "job", "crosses_unit", "''"},
        {"job_piece_role", "job_piece", "role", "'half'"},
        {"job_piece_source", "job_piece", "source", "'found'"},
        {"job_piece_pinned", "job_piece", "pinned", "2"},
        {"job_piece_planned", "job_piece", "planned_mm", "0"},
        {"job_piece_expected", "job_piece", "expected_mm", "-1"},
        {"staff_strings", "staff", "strings", "2"},
        {"staff_retired", "staff", "retired", "-1"},
        {"machine_retired", "machine", "retired", "2"},
        {"string_retired", "string_article", "retired", "2"},
        {"staff_hours_weekday", "staff_hours", "weekday", "8"},
        {"staff_hours_from", "staff_hours", "from_minute", "-1"},
        {"staff_hours_to", "staff_hours", "to_minute", "1441"},
        {"staff_hours_forwards", "staff_hours", "to_minute", "540"},
        {"staff_day_off_date", "staff_day_off", "date", "'2026-5-1'"},
        {"customer_request_key_length", "customer", "request_key", "''"},
        {"racket_request_key_length", "racket", "request_key", textOf(101)},
        {"job_bench_step", "job", "bench_step", "'tea'"},
        {"job_piece_set", "job_piece", "set_mm", "0"},
        {"inspection_came_with", "inspection", "came_with", textOf(10001)},
        {"inspection_remarks", "inspection", "remarks", textOf(10001)},
        {"consent_agreed_by", "consent_words", "agreed_by", textOf(201)},
        {"consent_words_length", "consent_words", "words", textOf(10001)},
        {"job_event_words_length", "job_event_words", "words", textOf(10001)},
        {"movement_words_length", "movement_words", "words", textOf(10001)},
        {"charge_words_length", "charge_words", "words", textOf(10001)},
        {"asked_change_station", "asked_change", "station", "'kitchen'"},
        {"asked_change_seen", "asked_change", "seen_at", "5"},
        {"attempt_lost_reason", "attempt", "lost_at = 5, lost_reason", "'bored'"},
        {"attempt_lost_with_reason", "attempt", "lost_at", "5"},
    };
}

/// Rows that may only be added: a good one, of which a test spoils one column.
const std::map<std::string, std::map<std::string, std::string>> kGoodRows = {
    {"job",
     {{"number", "9"},
      {"request_key", "'key-9'"},
      {"customer_id", "1"},
      {"racket_id", "1"},
      {"method", "'two-piece'"},
      {"short_side", "'left'"},
      {"mains_hundredths", "5200"},
      {"mains_unit", "'lb'"},
      {"crosses_hundredths", "5000"},
      {"crosses_unit", "'lb'"},
      {"logged_at", "1"},
      {"currency", "'GBP'"}}},
    {"movement",
     {{"lot_id", "1"},
      {"change_mm", "-1"},
      {"reason", "'lost'"},
      {"lost_reason", "'kinked'"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'bench'"}}},
    {"job_event", {{"job_id", "1"}, {"kind", "'put-down'"}, {"at", "1"}, {"staff_id", "1"}, {"station", "'bench'"}}},
    {"strung",
     {{"job_event_id", "(SELECT max(id) FROM job_event WHERE job_id = 1)"},
      {"job_id", "1"},
      {"mains_hundredths", "5200"},
      {"mains_unit", "'lb'"},
      {"crosses_hundredths", "5000"},
      {"crosses_unit", "'lb'"},
      {"machine_id", "1"}}},
    {"charge",
     {{"job_id", "1"},
      {"line", "3"},
      {"kind", "'extra'"},
      {"label", "'tube'"},
      {"count", "1"},
      {"amount_minor", "50"},
      {"tax_hundredths_percent", "2000"},
      {"currency", "'GBP'"},
      {"at", "1"},
      {"staff_id", "1"}}},
    {"payment",
     {{"job_id", "1"},
      {"amount_minor", "5"},
      {"currency", "'GBP'"},
      {"way", "'card'"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'counter'"}}},
    {"note", {{"job_id", "1"}, {"words", "'soft please'"}, {"at", "1"}}},
    {"handover", {{"job_event_id", "(SELECT max(id) FROM job_event WHERE job_id = 1)"}, {"job_id", "1"}}},
    {"telling", {{"job_id", "1"}, {"how", "'phone'"}, {"at", "1"}, {"staff_id", "1"}, {"station", "'counter'"}}},
    {"delivery",
     {{"request_key", "'d-2'"},
      {"shipping_minor", "900"},
      {"currency", "'GBP'"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'stockroom'"}}},
    {"asked_for_none",
     {{"request_key", "'a-2'"}, {"article_id", "1"}, {"at", "1"}, {"staff_id", "1"}, {"station", "'counter'"}}},
    {"tails",
     {{"attempt_id", "1"},
      {"part", "'piece'"},
      {"low_mm", "380"},
      {"high_mm", "380"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'bench'"}}},
    {"consent",
     {{"job_id", "1"},
      {"pull_hundredths", "3000"},
      {"pull_unit", "'lb'"},
      {"marked_hundredths", "2600"},
      {"marked_unit", "'lb'"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'counter'"}}},
    {"spool_weight",
     {{"lot_id", "1"},
      {"what", "'empty'"},
      {"weight_mg", "150000"},
      {"step_mg", "1000"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'stockroom'"}}},
    {"stock_take", {{"at", "1"}, {"staff_id", "1"}, {"station", "'stockroom'"}}},
    {"weighing",
     {{"lot_id", "1"},
      {"gross_mg", "236000"},
      {"gross_step_mg", "1000"},
      {"empty_mg", "150000"},
      {"empty_step_mg", "1000"},
      {"new_mg", "490000"},
      {"new_step_mg", "1000"},
      {"metre_ug", "1700000"},
      {"metre_sd_ug", "34000"},
      {"basis", "'new'"},
      {"weighed_mm", "50588"},
      {"weighed_sd_mm", "617"},
      {"book_mm", "50000"},
      {"book_sd_mm", "1000"},
      {"when_new_mm", "200300"},
      {"when_new_sd_mm", "700"},
      {"at", "1"},
      {"staff_id", "1"},
      {"station", "'stockroom'"}}},
};

std::vector<Forbidden> forbiddenInNewRows() {
    return {
        {"job_number", "job", "number", "0"},
        {"job_request_key", "job", "request_key", "''"},
        {"job_currency", "job", "currency", "'GB'"},
        {"movement_lost_reason", "movement", "lost_reason", "'bored'"},
        {"movement_station", "movement", "station", "'kitchen'"},
        {"movement_loss_has_reason", "movement", "lost_reason", "NULL"},
        {"movement_cut_belongs_to_attempt", "movement", "attempt_id", "2"},
        {"movement_direction", "movement", "change_mm", "1"},
        {"job_event_station", "job_event", "station", "''"},
        {"job_event_names_attempt", "job_event", "attempt_id", "1"},
        {"charge_kind", "charge", "kind", "'tip'"},
        {"charge_label", "charge", "label", textOf(201)},
        {"charge_count", "charge", "count", "0"},
        {"charge_tax", "charge", "tax_hundredths_percent", "-1"},
        {"charge_cost", "charge", "cost_minor", "-1"},
        {"payment_request_key_length", "payment", "request_key", "''"},
        {"payment_way", "payment", "way", "''"},
        {"payment_station", "payment", "station", "'kitchen'"},
        {"note_words", "note", "words", textOf(10001)},
        {"handover_taken_by", "handover", "taken_by", textOf(201)},
        {"handover_on_account", "handover", "on_account", "2"},
        {"telling_how", "telling", "how", textOf(41)},
        {"telling_station", "telling", "station", "'kitchen'"},
        {"delivery_request_key_length", "delivery", "request_key", "''"},
        {"delivery_supplier", "delivery", "supplier", textOf(201)},
        {"delivery_shipping", "delivery", "shipping_minor", "-1"},
        {"delivery_currency", "delivery", "currency", "'GB'"},
        {"delivery_station", "delivery", "station", "'kitchen'"},
        {"asked_for_none_request_key_length", "asked_for_none", "request_key", "''"},
        {"asked_for_none_station", "asked_for_none", "station", "'kitchen'"},
        {"tails_part", "tails", "part", "'whole'"},
        {"tails_low", "tails", "low_mm", "-1"},
        {"tails_station", "tails", "station", "'kitchen'"},
        {"tails_in_order", "tails", "high_mm", "379"},
        {"consent_pull", "consent", "pull_hundredths", "179"},
        {"consent_pull_unit", "consent", "pull_unit", "'N'"},
        {"consent_marked", "consent", "marked_hundredths", "0"},
        {"consent_marked_unit", "consent", "marked_unit", "'N'"},
        {"consent_station", "consent", "station", "'kitchen'"},
        {"spool_weight_what", "spool_weight", "what", "'full'"},
        {"spool_weight_weight", "spool_weight", "weight_mg", "-1"},
        {"spool_weight_step", "spool_weight", "step_mg", "0"},
        {"spool_weight_station", "spool_weight", "station", "'kitchen'"},
        {"stock_take_station", "stock_take", "station", "'kitchen'"},
        {"stock_take_ended", "stock_take", "ended_at", "5"},
        {"weighing_basis", "weighing", "basis", "'guess'"},
        {"weighing_station", "weighing", "station", "'kitchen'"},
        {"weighing_weights", "weighing", "metre_ug", "0"},
        {"weighing_empty", "weighing", "empty_mg", "236001"},
        {"weighing_new", "weighing", "new_step_mg", "NULL"},
        {"weighing_lengths", "weighing", "book_sd_mm", "-1"},
        {"weighing_when_new", "weighing", "when_new_mm", "NULL"},
        {"strung_mains", "strung", "mains_hundredths", "179"},
        {"strung_mains_unit", "strung", "mains_unit", "'N'"},
        {"strung_crosses", "strung", "crosses_hundredths", "10001"},
        {"strung_crosses_unit", "strung", "crosses_unit", "''"},
    };
}

/// Tables without an id, in which this test keeps one row.
const std::set<std::string> kTablesOfOneRow = {"ledger",          "setting",        "staff_hours",
                                               "staff_day_off",   "inspection",     "consent_words",
                                               "job_event_words", "movement_words", "charge_words"};

std::string insertOf(const std::string& table, const std::map<std::string, std::string>& row) {
    std::string columns;
    std::string values;
    for (const auto& [column, value] : row) {
        columns.append(columns.empty() ? "" : ", ").append(column);
        values.append(values.empty() ? "" : ", ").append(value);
    }
    return "INSERT INTO " + table + " (" + columns + ") VALUES (" + values + ")";
}

} // namespace

class ConstraintsTest : public OnEngine {
protected:
    void SetUp() override {
        standIn(smallShop().copy(GetParam()));
        m_connection = place().connect();
        const std::string consent = insertOf("consent", kGoodRows.at("consent"));
        write(*m_connection, {
                                 "INSERT INTO setting (name, value) VALUES ('words', 'x')",
                                 "INSERT INTO usual_cut (frame_model_id, role, cut_mm) VALUES (1, 'mains', 6200)",
                                 "INSERT INTO contact (customer_id, kind, text) VALUES (1, 'phone', '0123')",
                                 R"(INSERT INTO price_list (valid_from, currency, tax_rule)
                                 VALUES ('2025-01-01', 'GBP', 'included'))",
                                 R"(INSERT INTO price_line (price_list_id, line, kind, amount_minor,
                                 tax_hundredths_percent) VALUES (1, 1, 'labour', 1400, 2000))",
                                 "INSERT INTO staff_hours (staff_id, weekday, from_minute, to_minute) "
                                 "VALUES (1, 1, 600, 1080)",
                                 "INSERT INTO staff_day_off (staff_id, date) VALUES (1, '2026-05-01')",
                                 "INSERT INTO inspection (job_id, came_with) VALUES (1, 'cover')",
                                 consent,
                                 "INSERT INTO consent_words (consent_id, agreed_by, words) VALUES (1, 'Petra', '')",
                                 "INSERT INTO job_event_words (job_event_id, words) VALUES (1, 'x')",
                                 "INSERT INTO movement_words (movement_id, words) VALUES (1, 'x')",
                                 "INSERT INTO charge_words (charge_id, words) VALUES (1, 'x')",
                                 "INSERT INTO asked_change (job_id, old_mains_hundredths, old_mains_unit, "
                                 "old_crosses_hundredths, old_crosses_unit, mains_hundredths, mains_unit, "
                                 "crosses_hundredths, crosses_unit, at, staff_id, station) "
                                 "VALUES (1, 5200, 'lb', 5000, 'lb', 5000, 'lb', 4800, 'lb', 1, 1, 'counter')",
                             });
    }
    [[nodiscard]] std::string guard(const std::string& sql) { return guardAgainst(*m_connection, sql); }
    /// A row of `strung` or `handover` hangs on an event that says so.
    void happensToJobOne(const std::string& kind) {
        const std::string sql =
            "INSERT INTO job_event (job_id, kind, at, staff_id, station) VALUES (1, '" + kind + "', 40, 1, 'bench')";
        write(*m_connection, {sql});
    }
    void proveNewRowsOf(const std::string& table) {
        EXPECT_EQ(guard(insertOf(table, kGoodRows.at(table))), "") << table;
        for (const auto& entry : forbiddenInNewRows()) {
            if (entry.table == table) {
                auto row = kGoodRows.at(table);
                row[entry.column] = entry.value;
                EXPECT_EQ(guard(insertOf(table, row)), entry.guard)
                    << entry.column << " = " << entry.value.substr(0, 60);
            }
        }
    }

private:
    std::unique_ptr<Connection> m_connection;
};
ON_BOTH_ENGINES(ConstraintsTest);

TEST_P(ConstraintsTest, RefuseAValueThatIsNone) {
    for (const auto& [name, table, column, value] : forbidden()) {
        const std::string where = kTablesOfOneRow.contains(table) ? "" : " WHERE id = 1";
        std::string sql = "UPDATE ";
        sql.append(table).append(" SET ").append(column).append(" = ").append(value).append(where);
        EXPECT_EQ(guard(sql), name) << sql.substr(0, 120);
    }
}

TEST_P(ConstraintsTest, RefuseANewRowWithAValueThatIsNone) {
    for (const auto& [table, row] : kGoodRows) {
        if (table != "strung" && table != "handover") {
            proveNewRowsOf(table);
        }
    }
    happensToJobOne("strung");
    proveNewRowsOf("strung");
    happensToJobOne("collected");
    proveNewRowsOf("handover");
}

/// Those that no single value can break without another guard answering first; each stands in guards_test.
const std::set<std::string> kProvedElsewhere = {"attempt_number",  "job_event_kind",        "job_state",
                                                "ledger_is_one",   "ledger_turn_is_one",    "lot_length_not_negative",
                                                "movement_reason", "weighing_has_its_basis"};

TEST(Constraints, EachIsProved) {
    std::set<std::string> proved = kProvedElsewhere;
    for (const auto& list : {forbidden(), forbiddenInNewRows()}) {
        for (const auto& entry : list) {
            proved.insert(entry.guard);
        }
    }
    std::set<std::string> promised;
    for (const auto& [key, body] : promisedSchema(migrations(Dialect::Postgres))) {
        if (key.first == "constraint" && !key.second.ends_with("_key")) {
            promised.insert(key.second);
        }
    }
    promised.insert("job_request_key"); // a CHECK whose name ends like a key's
    EXPECT_EQ(proved, promised);
}

} // namespace rw::sql::test
