// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/migration.h"

#include "core/base/world_error.h"
#include "core/jobs/job_state.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"
#include "tests/sql/engines.h"
#include "tests/sql/small_shop.h"

#include <gmock/gmock.h>

#include <thread>

namespace rw::sql::test {

namespace {

const Instant kNow(std::chrono::milliseconds(1'700'000'000'000));

/// The number of the step of that name.
int stepCalled(Dialect dialect, std::string_view name) {
    const auto steps = migrations(dialect);
    return std::find_if(steps.begin(), steps.end(), [&](const Migration& step) { return step.name == name; })->version;
}

std::vector<Migration> upTo(Dialect dialect, int version) {
    auto steps = migrations(dialect);
    steps.resize(static_cast<std::size_t>(version));
    return steps;
}

} // namespace

class MigrationTest : public OnEngine {
protected:
    void SetUp() override {
        m_connection = place().connect();
    }
    [[nodiscard]] Connection& connection() { return *m_connection; }
    void migrateTo(int version) { migrate(*m_connection, upTo(GetParam(), version), kNow); }
    [[nodiscard]] std::string value(std::string_view sql) { return m_connection->scalar(sql); }

private:
    std::unique_ptr<Connection> m_connection;
};
ON_BOTH_ENGINES(MigrationTest);

TEST_P(MigrationTest, StepsAreNumberedWithoutAGap) {
    const auto steps = migrations(GetParam());
    ASSERT_EQ(steps.size(), static_cast<std::size_t>(latestVersion()));
    for (std::size_t i = 0; i < steps.size(); ++i) {
        EXPECT_EQ(steps[i].version, static_cast<int>(i) + 1);
    }
}

TEST_P(MigrationTest, AnEmptyDatabaseHasNoVersion) { EXPECT_EQ(schemaVersion(connection()), 0); }

// In: an empty database. Out: every table of the first ledger, and the steps that a job may take.
TEST_P(MigrationTest, FirstLedger) {
    migrateTo(1);
    EXPECT_EQ(schemaVersion(connection()), 1);
    EXPECT_EQ(value("SELECT name FROM schema_version WHERE version = 1"), "first_ledger");
    EXPECT_EQ(value("SELECT applied_at FROM schema_version WHERE version = 1"), "1700000000000");
    for (const std::string table : {"ledger",   "setting",  "staff",  "machine",        "frame_model", "usual_cut",
                                    "customer", "contact",  "racket", "string_article", "price_list",  "price_line",
                                    "lot",      "movement", "job",    "job_piece",      "attempt",     "job_event",
                                    "strung",   "note",     "charge", "payment",        "telling",     "handover"}) {
        EXPECT_EQ(value("SELECT count(*) FROM " + table), "0") << table;
    }
    EXPECT_EQ(value("SELECT count(*) FROM job_transition"), "14");
    if (onSqlite()) {
        EXPECT_EQ(value("PRAGMA user_version"), "1");
    }
}

// In: the first ledger with a small shop in it. Out: the same rows, and what the shelf's views say of them.
TEST_P(MigrationTest, ShelfViews) {
    migrateTo(1);
    stockSmallShop(connection());
    migrateTo(2);
    EXPECT_EQ(schemaVersion(connection()), 2);
    EXPECT_EQ(value("SELECT length_mm FROM lot_book WHERE tag = 'K-1'"), "42600");
    EXPECT_EQ(value("SELECT sum(planned_mm) FROM uncut_piece"), "5600");
    EXPECT_EQ(value("SELECT count(*) FROM movement"), "5");
}

// In: a shop that has cut, strung and handed over. Out: the same rows with the same ids, guarded as before, and room
// for what the four stations keep.
TEST_P(MigrationTest, FourStations) {
    migrateTo(2);
    stockSmallShop(connection());
    const std::string events = value("SELECT sum(id * 7 + job_id * 3 + at) FROM job_event");
    migrateTo(3);
    EXPECT_EQ(schemaVersion(connection()), 3);
    EXPECT_EQ(value("SELECT sum(id * 7 + job_id * 3 + at) FROM job_event"), events);
    EXPECT_EQ(value("SELECT count(*) FROM strung JOIN job_event ON job_event.id = strung.job_event_id"), "1");
    EXPECT_EQ(value("SELECT count(*) FROM handover JOIN job_event ON job_event.id = handover.job_event_id"), "1");
    EXPECT_EQ(value("SELECT length_mm FROM lot_book WHERE tag = 'K-1'"), "42600");
    EXPECT_EQ(guardAgainst(connection(), "UPDATE job_event SET kind = 'lost' WHERE id = 1"), "job_event_append_only");
    EXPECT_EQ(guardAgainst(connection(), "DELETE FROM job_event"), "job_event_append_only");
    EXPECT_EQ(guardAgainst(connection(), "INSERT INTO job_event (job_id, kind, at, staff_id, station) "
                                         "VALUES (1, 'collected', 30, 1, 'counter')"),
              "job_event_fits_state");
    write(connection(), {"INSERT INTO job_event (job_id, kind, at, staff_id, station) "
                         "VALUES (2, 'brought-back', 30, 1, 'counter')"});
    EXPECT_EQ(value("SELECT state FROM job WHERE id = 2"), "strung");
    write(connection(), {"INSERT INTO job_event (job_id, kind, at, staff_id, station) "
                         "VALUES (2, 'collected', 31, 1, 'counter')",
                         "INSERT INTO handover (job_id, job_event_id) SELECT 2, max(id) FROM job_event"});
    EXPECT_EQ(value("SELECT count(*) FROM handover WHERE job_id = 2"), "2");
}

// In: a shop that has cut, strung and handed over. Out: the same strings, which come on reels only until somebody says
// what a packet of them holds.
TEST_P(MigrationTest, Packets) {
    migrateTo(3);
    stockSmallShop(connection());
    migrateTo(4);
    EXPECT_EQ(schemaVersion(connection()), 4);
    EXPECT_EQ(value("SELECT count(*) FROM string_article WHERE packet_mm IS NULL"), "1");
    EXPECT_EQ(guardAgainst(connection(), "UPDATE string_article SET packet_mm = 0"), "string_packet");
    write(connection(), {"UPDATE string_article SET packet_mm = 12000"});
    EXPECT_EQ(value("SELECT packet_mm FROM string_article"), "12000");
}

// In: a shop that has taken money. Out: the same payments and charges, whose keys and costs nobody knows, and room for
// those of the next.
TEST_P(MigrationTest, PaymentsAndCosts) {
    migrateTo(4);
    stockSmallShop(connection());
    const std::string before = value("SELECT sum(id * 7 + amount_minor) FROM payment");
    migrateTo(5);
    EXPECT_EQ(value("SELECT sum(id * 7 + amount_minor) FROM payment"), before);
    EXPECT_EQ(value("SELECT count(*) FROM payment WHERE request_key IS NOT NULL"), "0");
    EXPECT_EQ(value("SELECT count(*) FROM charge WHERE cost_minor IS NOT NULL"), "0");
    EXPECT_EQ(guardAgainst(connection(), "UPDATE payment SET request_key = 'p-1'"), "payment_append_only");
    EXPECT_EQ(guardAgainst(connection(), "UPDATE charge SET cost_minor = 1"), "charge_append_only");
    const std::string twice = "INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station, "
                              "request_key) VALUES (1, 500, 'GBP', 'card', 30, 1, 'books', 'p-1')";
    write(connection(), {twice});
    EXPECT_NE(guardAgainst(connection(), twice), "") << "a key is taken once";
}

// In: a shop with a note, a racket handed over and rows with keys. Out: the same rows, none of which goes because
// another one has its key, or because somebody thinks better of it.
TEST_P(MigrationTest, KeptKeys) {
    migrateTo(5);
    stockSmallShop(connection());
    write(connection(), {"INSERT INTO note (job_id, words, at) VALUES (1, 'soft please', 1)",
                         "UPDATE note SET words = 'softer please'"});
    migrateTo(6);
    EXPECT_EQ(schemaVersion(connection()), 6);
    EXPECT_EQ(value("SELECT words FROM note"), "softer please");
    EXPECT_EQ(value("SELECT count(*) FROM handover"), "1");
    EXPECT_EQ(guardAgainst(connection(), "UPDATE note SET words = ''"), "note_append_only");
    EXPECT_EQ(guardAgainst(connection(), "DELETE FROM note"), "note_kept");
    EXPECT_EQ(guardAgainst(connection(), "DELETE FROM handover"), "handover_kept");
    EXPECT_EQ(guardAgainst(connection(), "UPDATE lot SET tag = 'K-1' WHERE id = 2"), "lot_tag_key");
    if (onSqlite()) {
        connection().execute("PRAGMA recursive_triggers = 0");
        EXPECT_EQ(guardAgainst(connection(), "INSERT OR REPLACE INTO string_article (code, name, sport, material, "
                                             "diameter_um) VALUES ('K', 'Other', 'tennis', 'nylon', 1300)"),
                  "string_article_code_key");
    }
}

// In: a shop with strings. Out: the same shop, in which somebody can be written down who asked for one in vain.
TEST_P(MigrationTest, AskedForNone) {
    migrateTo(7);
    stockSmallShop(connection());
    migrateTo(8);
    EXPECT_EQ(schemaVersion(connection()), 8);
    EXPECT_EQ(value("SELECT count(*) FROM asked_for_none"), "0");
    const std::string asked = "INSERT INTO asked_for_none (request_key, article_id, at, staff_id, station) "
                              "VALUES ('a-1', 1, 30, 1, 'counter')";
    write(connection(), {asked});
    EXPECT_EQ(value("SELECT max(id) FROM asked_for_none"), "1");
    EXPECT_NE(guardAgainst(connection(), asked), "") << "a key is taken once";
    EXPECT_EQ(guardAgainst(connection(), "DELETE FROM asked_for_none"), "asked_for_none_append_only");
}

// In: a shop whose reels were never weighed. Out: the same rows, and room for weights that nothing takes away.
TEST_P(MigrationTest, WeighIn) {
    migrateTo(8);
    stockSmallShop(connection());
    const std::string before = value("SELECT sum(id * 7 + change_mm) FROM movement");
    migrateTo(9);
    EXPECT_EQ(schemaVersion(connection()), 9);
    EXPECT_EQ(value("SELECT sum(id * 7 + change_mm) FROM movement"), before);
    EXPECT_EQ(value("SELECT count(*) FROM weighing_book"), "0");
    write(connection(), {"INSERT INTO spool_weight (lot_id, what, weight_mg, step_mg, at, staff_id, station) "
                         "VALUES (1, 'empty', 150000, 1000, 1, 1, 'stockroom')"});
    EXPECT_EQ(guardAgainst(connection(), "DELETE FROM spool_weight"), "spool_weight_append_only");
}

// In: a shop that has cut. Out: the same cuts, of which no tails are known, and room for those of the next.
TEST_P(MigrationTest, TailsOfACut) {
    const int tails = stepCalled(GetParam(), "tails");
    migrateTo(tails - 1);
    stockSmallShop(connection());
    const std::string before = value("SELECT sum(id * 7 + change_mm) FROM movement");
    migrateTo(tails);
    EXPECT_EQ(value("SELECT sum(id * 7 + change_mm) FROM movement"), before);
    EXPECT_EQ(value("SELECT count(*) FROM tails"), "0");
    write(connection(), {"INSERT INTO tails (attempt_id, part, low_mm, high_mm, at, staff_id, station) "
                         "VALUES (1, 'piece', 380, 380, 30, 1, 'bench')"});
    EXPECT_EQ(value("SELECT low_mm FROM tails WHERE attempt_id = 1"), "380");
}

TEST_P(MigrationTest, TheLedgerAndTheRulesKnowTheSameSteps) {
    migrateTo(latestVersion());
    const std::vector<std::string> states = {"",          "logged",  "on-the-machine", "strung",
                                             "collected", "waiting", "withdrawn"};
    const std::vector<std::string> kinds = {"logged",   "taken",     "put-down",     "cut",     "lost",    "strung",
                                            "reopened", "collected", "brought-back", "waiting", "resumed", "withdrawn"};
    for (const auto& state : states) {
        for (const auto& kind : kinds) {
            const auto byRule = stateAfter(jobStateFromText(state), *jobEventKindFromText(kind));
            std::string sql = "SELECT to_state FROM job_transition WHERE from_state = '";
            sql.append(state).append("' AND kind = '").append(kind).append("'");
            const auto byLedger = value(sql);
            EXPECT_EQ(byRule ? std::string(jobStateText(*byRule)) : "", byLedger) << state << " --" << kind;
        }
    }
}

TEST_P(MigrationTest, EachKindOfEventLeadsToOneState) {
    migrateTo(latestVersion());
    EXPECT_EQ(value("SELECT count(*) FROM (SELECT kind FROM job_transition GROUP BY kind "
                    "HAVING min(to_state) <> max(to_state)) AS forked"),
              "0")
        << "the check of a job's events stands on this";
}

TEST_P(MigrationTest, AStepThatFailsLeavesNothingBehind) {
    migrateTo(1);
    const std::vector<Migration> steps = {
        migrations(GetParam())[0],
        {2, "broken", {"CREATE TABLE half (id INTEGER PRIMARY KEY)", "INSERT INTO half (id) VALUES (1)", "NONSENSE"}}};
    EXPECT_THROW(migrate(connection(), steps, kNow), WorldError);
    EXPECT_EQ(schemaVersion(connection()), 1);
    EXPECT_THROW(connection().execute("SELECT id FROM half"), LedgerCorrupt);
    migrateTo(2);
    EXPECT_EQ(schemaVersion(connection()), 2);
}

// In: a ledger with a customer. Out: what happened before has no number, and what happens from then on has one each.
TEST_P(MigrationTest, CustomerChanges) {
    migrateTo(6);
    stockSmallShop(connection());
    migrateTo(7);
    EXPECT_EQ(value("SELECT count(*) FROM customer_change"), "0");
    connection().execute("UPDATE customer SET name = 'P. Lindobi', row_version = row_version + 1");
    EXPECT_EQ(value("SELECT count(*) FROM customer_change"), value("SELECT count(*) FROM customer"));
    connection().execute("INSERT INTO customer (name, search_key, created_at) VALUES ('New', 'new', 0)");
    EXPECT_EQ(value("SELECT customer_id FROM customer_change ORDER BY id DESC LIMIT 1"),
              value("SELECT max(id) FROM customer"));
}

TEST_P(MigrationTest, ToldOnceBeforeAnythingChangesAndNeverForAnEmptyDatabase) {
    std::vector<int> told;
    const auto tell = [&](int version) {
        told.push_back(version);
        EXPECT_EQ(schemaVersion(connection()), 1);
    };
    migrate(connection(), upTo(GetParam(), 1), kNow, tell);
    EXPECT_THAT(told, testing::IsEmpty());
    auto steps = upTo(GetParam(), 2);
    steps.push_back({3, "third", {"CREATE TABLE third (id INTEGER PRIMARY KEY)"}});
    migrate(connection(), steps, kNow, tell);
    EXPECT_THAT(told, testing::ElementsAre(1));
    EXPECT_EQ(schemaVersion(connection()), 3);
}

TEST_P(MigrationTest, TwoAtOnceTakeEachStepOnce) {
    std::vector<std::string> errors(2);
    {
        std::vector<std::jthread> stations;
        stations.reserve(errors.size());
        for (auto& error : errors) {
            stations.emplace_back([&] {
                try {
                    const auto own = place().connect();
                    migrate(*own, migrations(GetParam()), kNow);
                } catch (const std::exception& thrown) {
                    error = thrown.what();
                }
            });
        }
    }
    EXPECT_THAT(errors, testing::Each(""));
    EXPECT_EQ(schemaVersion(connection()), latestVersion());
    EXPECT_EQ(value("SELECT count(*) FROM schema_version"), std::to_string(latestVersion()));
}

} // namespace rw::sql::test
