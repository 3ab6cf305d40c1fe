// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/large_shop/large_shop.h"

#include "core/customers/search_key.h"
#include "core/sql/work.h"
#include "tests/bench/large_shop/names.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <vector>

namespace rw::large {

namespace {
using sql::Connection;
using sql::Dialect;
using Values = std::map<std::string, std::string>;

constexpr std::int64_t kJobsOfALot = 17;   // of 200 m, 11 m each
constexpr std::int64_t kRacketsOfFour = 5; // one customer in four has two
constexpr std::size_t kFirstNames = 900;
constexpr std::size_t kLastNames = 20'000;
constexpr std::array kTables = {"customer", "contact",   "racket", "lot",    "job",     "job_piece", "attempt",
                                "movement", "job_event", "strung", "charge", "payment", "handover"};

/// The guards of the tables: they say what a station may do, row by row, and this is no station.
class GuardsAside {
public:
    explicit GuardsAside(Connection& connection)
        : m_connection(connection) {
        if (connection.dialect() == Dialect::Postgres) {
            connection.execute("SET session_replication_role = replica");
            return;
        }
        m_triggers = connection.rows("SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name");
        for (const auto& trigger : m_triggers) {
            connection.execute("DROP TRIGGER " + trigger[0]);
        }
    }
    void putBack() {
        if (m_connection.dialect() == Dialect::Postgres) {
            m_connection.execute("SET session_replication_role = origin");
        }
        for (const auto& trigger : m_triggers) {
            m_connection.execute(trigger[1]);
        }
    }

private:
    Connection& m_connection;
    std::vector<std::vector<std::string>> m_triggers;
};

/// A whole number from 0 to below `below` that looks like chance and depends on `i` and `salt` alone (multiplicative
/// hashing, Knuth, The Art of Computer Programming 3, 6.4).
std::string dice(const std::string& i, int salt, const std::string& below) {
    return "((" + i + " * 2654435761 + " + std::to_string(salt * 97'003) + ") % 4294967296 / 65536 * " + below +
           " / 65536)";
}

/// The same, but small ones come oftener: a few names are common.
std::string skewed(const std::string& i, int salt, const std::string& below) {
    return "(" + dice(i, salt, below) + " * " + dice(i, salt + 1, below) + " / " + below + ")";
}

class Past {
public:
    Past(Connection& connection, const Size& size)
        : m_connection(connection)
        , m_size(size) {
        set("customers", size.customers);
        set("jobs", size.jobs);
        set("rackets", size.customers * kRacketsOfFour / 4);
        set("per_lot", kJobsOfALot);
        set("last_names", static_cast<std::int64_t>(kLastNames));
        for (const char* table : kTables) {
            if (std::string(table) != "strung" && std::string(table) != "handover") {
                set(std::string(table) + "_base", number("SELECT coalesce(max(id), 0) FROM " + std::string(table)));
            }
        }
        set("first_number", number("SELECT max(number) FROM job"));
        // Ten years, up to two months before the shop's first job.
        set("end", number("SELECT min(logged_at) FROM job") - 60LL * 86'400'000);
        set("gap", 10LL * 365 * 86'400'000 / std::max<std::int64_t>(size.jobs, 1));
        set("staff", number("SELECT min(id) FROM staff"));
        set("machine", number("SELECT min(id) FROM machine"));
        m_values["route"] = connection.scalar(
            "SELECT route FROM job WHERE method = 'one-piece' GROUP BY route ORDER BY count(*) DESC, route LIMIT 1");
    }

    void write() {
        numbers();
        names();
        people();
        lots();
        jobs();
        events();
        money();
        goOnCounting();
    }

private:
    void set(const std::string& name, std::int64_t value) { m_values[name] = std::to_string(value); }
    std::int64_t number(const std::string& sql) { return std::stoll("0" + m_connection.scalar(sql)); }

    /// The statement with every {name} replaced.
    void run(std::string text) {
        for (const auto& [name, value] : m_values) {
            const std::string key = "{" + name + "}";
            for (std::size_t at = text.find(key); at != std::string::npos; at = text.find(key, at)) {
                text.replace(at, key.size(), value);
            }
        }
        m_connection.execute(text);
    }
    /// Rows with ids that are given, from `table`'s base on.
    void fill(const std::string& table, const std::string& columns, const std::string& select) {
        const std::string own = m_connection.dialect() == Dialect::Postgres ? " OVERRIDING SYSTEM VALUE " : " ";
        run("INSERT INTO " + table + " (" + columns + ")" + own + select);
    }

    void numbers() {
        m_connection.execute("CREATE TEMPORARY TABLE counted (i BIGINT PRIMARY KEY)");
        run("INSERT INTO counted (i) WITH RECURSIVE up (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM up WHERE i < " +
            std::to_string(std::max(m_size.jobs, m_size.customers * kRacketsOfFour / 4)) + ") SELECT i FROM up");
    }

    void names() {
        keep("first_name", inventedNames(kFirstNames, 1));
        keep("last_name", inventedNames(kLastNames, 2));
        m_connection.execute("CREATE TEMPORARY TABLE used_frame (i BIGINT PRIMARY KEY, id BIGINT)");
        // Frames that the route fits: the shop has strung them by it.
        run("INSERT INTO used_frame (i, id) SELECT row_number() OVER (ORDER BY frame_model_id) - 1, frame_model_id "
            "FROM (SELECT DISTINCT racket.frame_model_id FROM racket JOIN job ON job.racket_id = racket.id "
            "WHERE job.method = 'one-piece' AND job.route = '{route}') AS strung_so");
        m_connection.execute("CREATE TEMPORARY TABLE used_string (i BIGINT PRIMARY KEY, id BIGINT)");
        m_connection.execute("INSERT INTO used_string (i, id) SELECT row_number() OVER (ORDER BY id) - 1, id "
                             "FROM string_article WHERE sport = 'tennis'");
        set("frames", number("SELECT count(*) FROM used_frame"));
        set("strings", number("SELECT count(*) FROM used_string"));
    }
    void keep(const std::string& table, const std::vector<std::string>& words) {
        constexpr std::size_t kAtOnce = 500;
        m_connection.execute("CREATE TEMPORARY TABLE " + table + " (i BIGINT PRIMARY KEY, name TEXT, key TEXT)");
        for (std::size_t from = 0; from < words.size(); from += kAtOnce) {
            std::string rows;
            for (std::size_t i = from; i < std::min(words.size(), from + kAtOnce); ++i) {
                rows += (rows.empty() ? "(" : ", (") + std::to_string(i) + ", '" + words[i] + "', '" +
                        searchKey(words[i]) + "')";
            }
            m_connection.execute("INSERT INTO " + table + " (i, name, key) VALUES " + rows);
        }
    }

    void people() {
        const std::string first = skewed("counted.i", 3, std::to_string(kFirstNames));
        const std::string last = skewed("counted.i", 5, "{last_names}");
        fill("customer", "id, name, search_key, created_at",
             "SELECT {customer_base} + counted.i, first_name.name || ' ' || last_name.name, first_name.key || ' ' || "
             "last_name.key, {end} FROM counted JOIN first_name ON first_name.i = " +
                 first + " JOIN last_name ON last_name.i = " + last +
                 " WHERE counted.i <= {customers} ORDER BY counted.i");
        const std::string digits = "'07' || (100000000 + (i * 48271 + 12345) % 899999981)";
        fill("contact", "id, customer_id, kind, text, digits",
             "SELECT {contact_base} + i, {customer_base} + i, 'phone', " + digits + ", " + digits +
                 " FROM counted WHERE i <= {customers} ORDER BY i");
        // The second racket of a customer bears another mark than the first.
        fill("racket", "id, customer_id, frame_model_id, mark",
             "SELECT {racket_base} + counted.i, {customer_base} + 1 + (counted.i - 1) % {customers}, used_frame.id, "
             "CASE WHEN counted.i <= {customers} THEN 'A' ELSE 'B' END "
             "FROM counted JOIN used_frame ON used_frame.i = " +
                 dice("counted.i", 7, "{frames}") + " WHERE counted.i <= {rackets} ORDER BY counted.i");
    }

    void lots() {
        fill("lot",
             "id, tag, article_id, kind, nominal_mm, length_mm, price_minor, shipping_minor, currency, received_at, "
             "closed_at",
             "SELECT {lot_base} + counted.i, 'P-' || counted.i, used_string.id, 'reel', 200000, 0, 9000, 0, 'GBP', "
             "{end} - ({jobs} - (counted.i - 1) * {per_lot}) * {gap}, {end} "
             "FROM counted JOIN used_string ON used_string.i = " +
                 dice("counted.i", 9, "{strings}") +
                 " WHERE counted.i <= ({jobs} + {per_lot} - 1) / {per_lot} ORDER BY counted.i");
    }

    void jobs() {
        fill("job",
             "id, number, request_key, customer_id, racket_id, method, route, short_side, mains_hundredths, "
             "mains_unit, crosses_hundredths, crosses_unit, promised_at, logged_at, state, total_minor, currency",
             "SELECT {job_base} + i, {first_number} + i, 'past ' || i, {customer_base} + 1 + ((i - 1) % {rackets}) % "
             "{customers}, {racket_base} + 1 + (i - 1) % {rackets}, 'one-piece', '{route}', 'left', 4800 + 100 * " +
                 dice("i", 11, "10") + ", 'lb', 4700 + 100 * " + dice("i", 12, "10") +
                 ", 'lb', {end} - ({jobs} - i) * {gap} + 86400000, {end} - ({jobs} - i) * {gap}, 'collected', 3000, "
                 "'GBP' FROM counted WHERE i <= {jobs} ORDER BY i");
        fill("job_piece", "id, job_id, role, article_id, source, lot_id, planned_mm, expected_mm",
             "SELECT {job_piece_base} + i, {job_base} + i, 'whole', lot.article_id, 'shop-lot', lot.id, 11000, 10800 "
             "FROM counted JOIN lot ON lot.id = {lot_base} + 1 + (i - 1) / {per_lot} WHERE i <= {jobs} ORDER BY i");
        fill("attempt", "id, job_piece_id, number, opened_at",
             "SELECT {attempt_base} + i, {job_piece_base} + i, 1, {end} - ({jobs} - i) * {gap} "
             "FROM counted WHERE i <= {jobs} ORDER BY i");
        // Each lot: received, cut, and what was left thrown away.
        fill("movement", "id, lot_id, change_mm, reason, at, staff_id, station",
             "SELECT {movement_base} + i, {lot_base} + i, 200000, 'received', {end} - ({jobs} - (i - 1) * {per_lot}) * "
             "{gap}, {staff}, 'stockroom' FROM counted WHERE i <= ({jobs} + {per_lot} - 1) / {per_lot} ORDER BY i");
        set("cut_base", number("SELECT max(id) FROM movement"));
        fill("movement", "id, lot_id, change_mm, reason, attempt_id, at, staff_id, station",
             "SELECT {cut_base} + i, {lot_base} + 1 + (i - 1) / {per_lot}, -11000, 'cut', {attempt_base} + i, {end} - "
             "({jobs} - i) * {gap} + 3600000, {staff}, 'bench' FROM counted WHERE i <= {jobs} ORDER BY i");
        set("thrown_base", number("SELECT max(id) FROM movement"));
        fill("movement", "id, lot_id, change_mm, reason, at, staff_id, station",
             "SELECT {thrown_base} + lot_id - {lot_base}, lot_id, -sum(change_mm), 'thrown-away', {end}, {staff}, "
             "'bench' FROM movement WHERE lot_id > {lot_base} GROUP BY lot_id ORDER BY lot_id");
    }

    void events() {
        const std::array<std::array<const char*, 4>, 5> steps = {{{"logged", "counter", "NULL", "NULL"},
                                                                  {"taken", "bench", "{machine}", "NULL"},
                                                                  {"cut", "bench", "NULL", "{attempt_base} + i"},
                                                                  {"strung", "bench", "{machine}", "NULL"},
                                                                  {"collected", "counter", "NULL", "NULL"}}};
        for (std::size_t step = 0; step < steps.size(); ++step) {
            const auto& [kind, station, machine, attempt] = steps.at(step);
            fill("job_event", "id, job_id, kind, at, staff_id, station, machine_id, attempt_id",
                 "SELECT {job_event_base} + " + std::to_string(step) + " * {jobs} + i, {job_base} + i, '" + kind +
                     "', {end} - ({jobs} - i) * {gap} + " + std::to_string(step) + " * 1800000, {staff}, '" + station +
                     "', " + machine + ", " + attempt + " FROM counted WHERE i <= {jobs} ORDER BY i");
        }
        run("INSERT INTO strung (job_event_id, job_id, mains_hundredths, mains_unit, crosses_hundredths, crosses_unit, "
            "machine_id) SELECT {job_event_base} + 3 * {jobs} + i, job.id, mains_hundredths, mains_unit, "
            "crosses_hundredths, crosses_unit, {machine} FROM counted JOIN job ON job.id = {job_base} + i "
            "WHERE i <= {jobs} ORDER BY i");
        run("INSERT INTO handover (job_id, job_event_id) SELECT {job_base} + i, {job_event_base} + 4 * {jobs} + i FROM "
            "counted WHERE i <= {jobs} ORDER BY i");
    }

    void money() {
        fill("charge", "id, job_id, line, kind, amount_minor, tax_hundredths_percent, currency, at, staff_id",
             "SELECT {charge_base} + i, {job_base} + i, 1, 'labour', 3000, 0, 'GBP', {end} - ({jobs} - i) * {gap}, "
             "{staff} FROM counted WHERE i <= {jobs} ORDER BY i");
        fill("payment", "id, job_id, amount_minor, currency, way, at, staff_id, station",
             "SELECT {payment_base} + i, {job_base} + i, 3000, 'GBP', 'card', {end} - ({jobs} - i) * {gap} + 7200000, "
             "{staff}, 'counter' FROM counted WHERE i <= {jobs} ORDER BY i");
    }

    void goOnCounting() {
        for (const char* table : kTables) {
            const std::string name = table;
            if (m_connection.dialect() == Dialect::Postgres && name != "strung" && name != "handover") {
                m_connection.execute("SELECT setval(pg_get_serial_sequence('" + name +
                                     "', 'id'), (SELECT max(id) FROM " + name + "))");
            }
        }
    }

    Connection& m_connection;
    Size m_size;
    Values m_values;
};
} // namespace

void fillWithThePast(sql::Connection& connection, const Size& size) {
    {
        auto work = sql::Work::changingSchema(connection);
        GuardsAside guards(connection);
        Past(connection, size).write();
        guards.putBack();
        work.commit();
    }
    connection.execute("ANALYZE");
}

} // namespace rw::large
