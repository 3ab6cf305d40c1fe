// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/pattern.h"
#include "tests/sql/small_shop.h"

#include <gtest/gtest.h>

// What a scale has shown stays, whatever is tried on a ledger.
namespace rw::sql::test {

/// The small shop with K-1 weighed and booked, in a stock-take.
class WeighGuardsTest : public OnEngine {
protected:
    void SetUp() override {
        standIn(smallShop().copy(GetParam()));
        m_connection = place().connect();
        write(
            *m_connection,
            {"INSERT INTO spool_weight (lot_id, what, weight_mg, step_mg, at, staff_id, station) "
             "VALUES (1, 'empty', 150000, 1000, 1, 1, 'stockroom')",
             "INSERT INTO stock_take (at, staff_id, station) VALUES (1, 1, 'stockroom')",
             "INSERT INTO weighing (lot_id, stock_take_id, gross_mg, gross_step_mg, empty_mg, empty_step_mg, metre_ug, "
             "metre_sd_ug, basis, weighed_mm, weighed_sd_mm, book_mm, book_sd_mm, at, staff_id, station) "
             "VALUES (1, 1, 220000, 1000, 150000, 1000, 1700000, 34000, 'metre', 41177, 1200, 42600, 900, 30, 1, "
             "'stockroom')",
             "INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
             "VALUES (1, -1423, 'weighed', 31, 1, 'stockroom')",
             "INSERT INTO weighed_movement (movement_id, weighing_id) SELECT max(id), 1 FROM movement"});
    }
    [[nodiscard]] Connection& connection() { return *m_connection; }
    [[nodiscard]] std::string guard(std::string_view sql) { return guardAgainst(*m_connection, sql); }

private:
    std::unique_ptr<Connection> m_connection;
};
ON_BOTH_ENGINES(WeighGuardsTest);

TEST_P(WeighGuardsTest, WhatWasWeighedStaysWeighed) {
    for (const std::string table : {"spool_weight", "weighing", "weighed_movement"}) {
        const std::string column = table == "weighed_movement" ? "weighing_id" : "at";
        EXPECT_EQ(guard("UPDATE " + table + " SET " + column + " = 1"), table + "_append_only");
        EXPECT_EQ(guard("DELETE FROM " + table), table + "_append_only");
        if (onSqlite()) {
            connection().execute("PRAGMA recursive_triggers = 0");
            EXPECT_EQ(guard("INSERT OR REPLACE INTO " + table + " SELECT * FROM " + table), table + "_append_only");
        } else {
            EXPECT_EQ(guard("TRUNCATE " + table + " CASCADE"), table + "_append_only");
        }
    }
    EXPECT_EQ(guard("INSERT INTO weighed_movement (movement_id, weighing_id) VALUES (1, 1)"),
              "weighed_movement_of_its_lot");
    EXPECT_EQ(guard("INSERT INTO weighing (lot_id, gross_mg, gross_step_mg, empty_mg, empty_step_mg, metre_ug, "
                    "metre_sd_ug, basis, weighed_mm, weighed_sd_mm, book_mm, book_sd_mm, at, staff_id, station) "
                    "VALUES (1, 2, 1, 1, 1, 1, 0, 'new', 1, 1, 1, 1, 1, 1, 'stockroom')"),
              "weighing_has_its_basis");
}

TEST_P(WeighGuardsTest, OneStockTakeGoesOnAtATimeAndEndsOnce) {
    const std::string another = "INSERT INTO stock_take (at, staff_id, station) VALUES (2, 1, 'stockroom')";
    EXPECT_EQ(guard(another), "stock_take_one_at_a_time");
    EXPECT_EQ(guard("UPDATE stock_take SET at = 2"), "stock_take_ends_once");
    EXPECT_EQ(guard("DELETE FROM stock_take"), "stock_take_kept");
    if (onSqlite()) {
        connection().execute("PRAGMA recursive_triggers = 0");
        EXPECT_EQ(guard("INSERT OR REPLACE INTO stock_take SELECT * FROM stock_take"), "stock_take_kept");
    } else {
        EXPECT_EQ(guard("TRUNCATE stock_take CASCADE"), "stock_take_kept");
    }
    write(connection(), {"UPDATE stock_take SET ended_at = 40, ended_by_staff_id = 1"});
    EXPECT_EQ(guard("UPDATE stock_take SET ended_at = 41"), "stock_take_ends_once");
    EXPECT_EQ(guard(another), "");
}

} // namespace rw::sql::test
