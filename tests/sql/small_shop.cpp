// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/small_shop.h"

#include "core/base/world_error.h"
#include "core/sql/work.h"

namespace rw::sql::test {

void write(Connection& connection, const std::vector<std::string_view>& statements) {
    auto work = Work::writing(connection);
    for (const auto statement : statements) {
        connection.execute(statement);
    }
    work.commit();
}

namespace {

/// "@07" is 7 ms after the year 2026 began.
void writeDated(Connection& connection, const std::vector<std::string_view>& statements) {
    auto work = Work::writing(connection);
    for (const auto statement : statements) {
        std::string dated(statement);
        for (auto at = dated.find('@'); at != std::string::npos; at = dated.find('@')) {
            dated.replace(at, 1, "17672256000");
        }
        connection.execute(dated);
    }
    work.commit();
}

} // namespace

void stockSmallShop(Connection& connection) {
    writeDated(
        connection,
        {
            R"(INSERT INTO ledger (id, application, created_at, time_zone, currency)
                 VALUES (1, 'reelwright', @00, 'UTC', 'GBP'))",
            "INSERT INTO staff (name) VALUES ('Bastian Quill')",
            "INSERT INTO machine (name, unit, step_hundredths, reach_mm) VALUES ('Bench A', 'lb', 50, 300)",
            R"(INSERT INTO frame_model (name, search_key, sport, open_throat, mains, crosses, mounting_mark,
                 crosses_from_throat) VALUES ('Aldermoor 98', 'aldermoor 98', 'tennis', 0, 16, 19, 'logo up', 0))",
            "INSERT INTO customer (name, search_key, created_at) VALUES ('Petra Lindobi', 'petra lindobi', @01)",
            "INSERT INTO customer (name, search_key, created_at) VALUES ('Tomas Ferreday', 'tomas ferreday', @01)",
            "INSERT INTO racket (customer_id, frame_model_id, mark) VALUES (1, 1, 'A')",
            R"(INSERT INTO string_article (code, name, sport, material, diameter_um)
                 VALUES ('K', 'Kestrelline 125', 'tennis', 'polyester', 1250))",
            R"(INSERT INTO lot (tag, article_id, kind, nominal_mm, price_minor, shipping_minor, currency, received_at)
                 VALUES ('K-1', 1, 'reel', 200000, 11000, 450, 'GBP', @01))",
            R"(INSERT INTO lot (tag, article_id, kind, nominal_mm, price_minor, shipping_minor, currency, received_at)
                 VALUES ('K-2', 1, 'remnant', 200, 0, 0, 'GBP', @01))",
            R"(INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station)
                 VALUES (1, 60000, 'received', @01, 1, 'stockroom'), (2, 200, 'received', @01, 1, 'stockroom'))",
            R"(INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station)
                 VALUES (2, -200, 'thrown-away', @02, 1, 'bench'))",
            "UPDATE lot SET closed_at = @02 WHERE id = 2",
        });
    writeDated(
        connection,
        {
            R"(INSERT INTO job (number, request_key, customer_id, racket_id, method, short_side, mains_hundredths,
                 mains_unit, crosses_hundredths, crosses_unit, logged_at, currency)
                 VALUES (2120, 'key-1', 1, 1, 'two-piece', 'left', 5200, 'lb', 5000, 'lb', @10, 'GBP'))",
            R"(INSERT INTO job_piece (job_id, role, article_id, source, lot_id, planned_mm, expected_mm)
                 VALUES (1, 'mains', 1, 'shop-lot', 1, 6200, 5900))",
            R"(INSERT INTO job_piece (job_id, role, article_id, source, lot_id, planned_mm, expected_mm)
                 VALUES (1, 'crosses', 1, 'shop-lot', 1, 5600, 5300))",
            "INSERT INTO attempt (job_piece_id, number, opened_at) VALUES (1, 1, @10)",
            "INSERT INTO attempt (job_piece_id, number, opened_at) VALUES (2, 1, @10)",
            R"(INSERT INTO charge (job_id, line, kind, amount_minor, tax_hundredths_percent, currency, at, staff_id)
                 VALUES (1, 1, 'labour', 1400, 2000, 'GBP', @10, 1), (1, 2, 'full-bed', 1300, 2000, 'GBP', @10, 1))",
            "INSERT INTO job_event (job_id, kind, at, staff_id, station) VALUES (1, 'logged', @10, 1, 'counter')",
            R"(INSERT INTO job_event (job_id, kind, at, staff_id, station, machine_id)
                 VALUES (1, 'taken', @11, 1, 'bench', 1))",
            R"(INSERT INTO movement (lot_id, change_mm, reason, attempt_id, at, staff_id, station)
                 VALUES (1, -6200, 'cut', 1, @12, 1, 'bench'))",
            R"(INSERT INTO job_event (job_id, kind, at, staff_id, station, attempt_id)
                 VALUES (1, 'cut', @12, 1, 'bench', 1))",
            R"(INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station)
                 VALUES (1, 1000, 'GBP', 'cash', @12, 1, 'counter'))",
            "INSERT INTO telling (job_id, how, at, staff_id, station) VALUES (1, 'phone', @12, 1, 'counter')",
        });
    writeDated(
        connection,
        {
            R"(INSERT INTO job (number, request_key, customer_id, racket_id, method, short_side, mains_hundredths,
                 mains_unit, crosses_hundredths, crosses_unit, logged_at, currency)
                 VALUES (2121, 'key-2', 1, 1, 'one-piece', 'left', 5200, 'lb', 5000, 'lb', @20, 'GBP'))",
            R"(INSERT INTO job_piece (job_id, role, article_id, source, lot_id, planned_mm, expected_mm)
                 VALUES (2, 'whole', 1, 'shop-lot', 1, 11200, 10900))",
            "INSERT INTO attempt (job_piece_id, number, opened_at) VALUES (3, 1, @20)",
            "INSERT INTO job_event (job_id, kind, at, staff_id, station) VALUES (2, 'logged', @20, 1, 'counter')",
            R"(INSERT INTO job_event (job_id, kind, at, staff_id, station, machine_id)
                 VALUES (2, 'taken', @21, 1, 'bench', 1))",
            R"(INSERT INTO movement (lot_id, change_mm, reason, attempt_id, at, staff_id, station)
                 VALUES (1, -11200, 'cut', 3, @22, 1, 'bench'))",
            R"(INSERT INTO job_event (job_id, kind, at, staff_id, station, attempt_id)
                 VALUES (2, 'cut', @22, 1, 'bench', 3))",
            R"(INSERT INTO job_event (job_id, kind, at, staff_id, station, machine_id)
                 VALUES (2, 'strung', @23, 1, 'bench', 1))",
            R"(INSERT INTO strung (job_event_id, job_id, mains_hundredths, mains_unit, crosses_hundredths,
                 crosses_unit, machine_id) SELECT id, 2, 2350, 'kg', 2250, 'kg', 1 FROM job_event
                 WHERE job_id = 2 AND kind = 'strung')",
            "INSERT INTO job_event (job_id, kind, at, staff_id, station) VALUES (2, 'collected', @24, 1, 'counter')",
            R"(INSERT INTO handover (job_id, job_event_id) SELECT 2, id FROM job_event
                 WHERE job_id = 2 AND kind = 'collected')",
        });
}

std::string guardAgainst(Connection& connection, std::string_view sql) {
    const auto work = Work::writing(connection);
    try {
        connection.execute(sql);
    } catch (const LedgerGuard& guard) {
        const std::string what = guard.what();
        return what.substr(0, what.find(" ("));
    }
    return "";
}

} // namespace rw::sql::test
