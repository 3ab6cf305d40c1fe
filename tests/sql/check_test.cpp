// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/engine_check.h"
#include "core/sql/check/ledger_check.h"
#include "core/sql/check/schema_promise.h"
#include "core/sql/migration.h"
#include "core/sql/resource_text.h"
#include "tests/sql/checked_shop.h"
#include "tests/sql/damage.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/small_shop.h"

#include <gmock/gmock.h>

#include <fstream>

namespace rw::sql::test {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;
using testing::UnorderedElementsAre;

class CheckTest : public OnCheckedShop {};
ON_BOTH_ENGINES(CheckTest);

TEST_P(CheckTest, FindsNothingInAWholeLedger) { EXPECT_THAT(findings(), IsEmpty()); }

TEST_P(CheckTest, ALotsLength) {
    EXPECT_THAT(findingsAfter({"UPDATE lot SET length_mm = 42650 WHERE id = 1"}),
                ElementsAre("a lot's length is the sum of its movements: lot K-1: 42650 mm in the book, 42600 mm by "
                            "its movements"));
}

TEST_P(CheckTest, AMovementThatWasAltered) {
    EXPECT_THAT(findingsAfter({"UPDATE movement SET change_mm = -6100 WHERE attempt_id = 1"}),
                ElementsAre("a lot's length is the sum of its movements: lot K-1: 42600 mm in the book, 42700 mm by "
                            "its movements"));
}

TEST_P(CheckTest, ALotThatWasBelowZeroMeanwhile) {
    EXPECT_THAT(findingsAfter({"INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
                               "VALUES (1, -50000, 'thrown-away', 1767225600030, 1, 'bench')",
                               "INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
                               "VALUES (1, 50000, 'measured', 1767225600030, 1, 'bench')"}),
                ElementsAre("no lot goes below zero: lot K-1: -7400 mm after movement 6"));
}

TEST_P(CheckTest, AClosedLotWithSomethingOnIt) {
    if (!onSqlite()) {
        connection().execute("ALTER TABLE lot DROP CONSTRAINT lot_closed_is_empty");
    }
    EXPECT_THAT(findingsAfter({"UPDATE lot SET closed_at = 5 WHERE id = 1"}),
                Contains("a closed lot is empty: lot K-1: closed with 42600 mm on it"));
}

TEST_P(CheckTest, AShippingThatIsNotOnTheLots) {
    EXPECT_THAT(findingsAfter({"INSERT INTO delivery (request_key, shipping_minor, currency, at, staff_id, station) "
                               "VALUES ('a parcel', 900, 'GBP', 1767225600010, 1, 'stockroom')",
                               "UPDATE lot SET delivery_id = 1, shipping_minor = 450 WHERE id IN (1, 2)"}),
                IsEmpty());
    EXPECT_THAT(findingsAfter({"UPDATE lot SET shipping_minor = 400 WHERE id = 2"}),
                ElementsAre("the lots of a delivery share its shipping: delivery 1: 900 for its shipping, 850 on its "
                            "lots"));
}

TEST_P(CheckTest, SomebodyElsesString) {
    EXPECT_THAT(findingsAfter({"UPDATE lot SET owner_customer_id = 2 WHERE id = 1"}),
                ElementsAre("nobody's job is cut off another customer's string: job 2120, mains: cut off lot K-1, "
                            "which is somebody else's",
                            "nobody's job is cut off another customer's string: job 2121, whole: cut off lot K-1, "
                            "which is somebody else's",
                            "a piece is planned off a lot that it may have: job 2120, mains: planned off lot K-1, "
                            "which is somebody else's",
                            "a piece is planned off a lot that it may have: job 2120, crosses: planned off lot K-1, "
                            "which is somebody else's",
                            "a piece is planned off a lot that it may have: job 2121, whole: planned off lot K-1, "
                            "which is somebody else's"));
}

TEST_P(CheckTest, AMovementWithoutItsReason) {
    if (!onSqlite()) {
        connection().execute("ALTER TABLE movement DROP CONSTRAINT movement_direction");
    }
    EXPECT_THAT(findingsAfter({"UPDATE movement SET reason = 'returned' WHERE id = 1"}),
                Contains("every movement has its reason: movement 1 of lot K-1: returned, 60000 mm"));
}

TEST_P(CheckTest, AnAttemptChargedTwice) {
    EXPECT_THAT(findingsAfter({"DROP INDEX movement_one_cut_per_attempt",
                               "INSERT INTO movement (lot_id, change_mm, reason, attempt_id, at, staff_id, station) "
                               "VALUES (1, -6200, 'cut', 1, 1767225600012, 1, 'bench')"}),
                UnorderedElementsAre("tables and guards are as they were made: index movement_one_cut_per_attempt is "
                                     "missing",
                                     "a lot's length is the sum of its movements: lot K-1: 42600 mm in the book, "
                                     "36400 mm by its movements",
                                     "an attempt is charged once: job 2120, mains, attempt 1: cut 2 times"));
}

TEST_P(CheckTest, ACutOfWhichNothingIsTold) {
    EXPECT_THAT(findingsAfter({"DELETE FROM job_event WHERE attempt_id = 1"}),
                ElementsAre("a cut is a movement and an event: job 2120, mains, attempt 1: string was taken, but no "
                            "cut is told of"));
}

TEST_P(CheckTest, ACutForWhichNoStringWasTaken) {
    EXPECT_THAT(findingsAfter({"DELETE FROM movement WHERE attempt_id = 1",
                               "UPDATE lot SET length_mm = length_mm + 6200 WHERE id = 1"}),
                ElementsAre("a cut is a movement and an event: job 2120, mains, attempt 1: a cut is told of, but no "
                            "string was taken"));
    EXPECT_THAT(findingsAfter({"UPDATE job_piece SET source = 'customers-set', lot_id = NULL WHERE id = 1"}), IsEmpty())
        << "a customer's own set is no lot";
}

TEST_P(CheckTest, AttemptsOutOfOrder) {
    EXPECT_THAT(findingsAfter({"UPDATE attempt SET number = 3 WHERE id = 1"}),
                ElementsAre("attempts follow one another and the last is open: job 2120, mains: 1 attempts, the last "
                            "is number 3, 1 open"));
}

TEST_P(CheckTest, ALengthLostThatWasNeverCut) {
    EXPECT_THAT(findingsAfter({"UPDATE attempt SET lost_at = 30, lost_reason = 'kinked' WHERE id = 2"}),
                Contains("what was lost had been cut: job 2120, crosses, attempt 1: lost, and never cut"));
}

TEST_P(CheckTest, AJobWithoutItsPieces) {
    EXPECT_THAT(findingsAfter({"DELETE FROM attempt WHERE id = 2", "UPDATE job SET method = 'two-piece' WHERE id = 2"}),
                ElementsAre("a job has the pieces of its method: job 2120: two-piece, with 2 pieces, 0 of them whole, "
                            "1 without an attempt",
                            "a job has the pieces of its method: job 2121: two-piece, with 1 pieces, 1 of them whole, "
                            "0 without an attempt"));
}

TEST_P(CheckTest, AnEventThatCouldNotBe) {
    const auto found = findingsAfter({"UPDATE job_event SET kind = 'put-down' WHERE job_id = 1 AND kind = 'taken'"});
    ASSERT_EQ(found.size(), 2U);
    EXPECT_THAT(found[0], StartsWith("each event was possible when it happened: job 2120, event "));
    EXPECT_THAT(found[0], testing::EndsWith(": put-down after logged"));
    EXPECT_THAT(found[1], testing::EndsWith(": cut after put-down"));
}

TEST_P(CheckTest, AJobsState) {
    EXPECT_THAT(findingsAfter({"UPDATE job SET state = 'waiting' WHERE id = 1"}),
                ElementsAre("a job's state follows from its events: job 2120: \"waiting\" in the book, "
                            "\"on-the-machine\" by its events"));
}

TEST_P(CheckTest, AJobThatNothingIsToldOf) {
    EXPECT_THAT(findingsAfter({"DELETE FROM job_event WHERE job_id = 1"}),
                Contains("a job's state follows from its events: job 2120: \"on-the-machine\" in the book, \"\" by its "
                         "events"));
}

TEST_P(CheckTest, ARacketStrungWithoutACut) {
    EXPECT_THAT(findingsAfter({"DELETE FROM job_event WHERE job_id = 2 AND kind = 'cut'"}),
                Contains("a racket that is strung was cut for: job 2121, whole: collected, and not cut"));
}

TEST_P(CheckTest, ARacketStrungNobodyKnowsHow) {
    const auto found = findingsAfter({"DELETE FROM strung"});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_THAT(found[0], StartsWith("what was strung is written down: job 2121, event "));
}

TEST_P(CheckTest, AJobsTotal) {
    EXPECT_THAT(
        findingsAfter({"UPDATE charge SET amount_minor = 1 WHERE line = 1"}),
        ElementsAre("a job's total is the sum of its charges: job 2120: 2700 in the book, 1301 by its charges"));
}

TEST_P(CheckTest, AJobsCurrency) {
    EXPECT_THAT(findingsAfter({"UPDATE payment SET currency = 'EUR'"}),
                ElementsAre("a job's money is of one currency: job 2120: GBP, with money in EUR"));
}

TEST_P(CheckTest, ALedgerThatDoesNotSayWhatItIs) {
    EXPECT_THAT(findingsAfter({"DELETE FROM ledger"}),
                ElementsAre("a ledger says once what it is: the ledger says 0 times what it is"));
}

TEST_P(CheckTest, AReferenceToNobody) {
    const auto found = findingsAfter({"UPDATE movement SET staff_id = 77 WHERE id = 1"});
    EXPECT_THAT(found,
                ElementsAre(onSqlite() ? "every reference leads somewhere: movement 1: its staff is not there"
                                       : "every reference leads somewhere: movement.staff_id: for 1 rows the staff is "
                                         "not there"));
}

TEST_P(CheckTest, AColumnThatHoldsWhatItIsNotFor) {
    if (onSqlite()) {
        EXPECT_THAT(findingsAfter({"UPDATE lot SET price_minor = 'cheap' WHERE id = 1"}),
                    Contains("columns hold what they are for: lot.price_minor: 1 rows are no BIGINT"));
        return;
    }
    const auto found =
        findingsAfter({"ALTER TABLE lot DROP CONSTRAINT lot_price", "UPDATE lot SET price_minor = -5 WHERE id = 1",
                       "ALTER TABLE lot ADD CONSTRAINT lot_price CHECK (price_minor >= 0) NOT VALID"});
    EXPECT_THAT(found, ElementsAre("tables and guards are as they were made: constraint lot_price is switched off",
                                   "columns hold what they are for: lot: 1 rows break lot_price"));
}

TEST_P(CheckTest, AGuardThatIsGone) {
    if (onSqlite()) {
        connection().execute("DROP TRIGGER movement_append_only_update");
        connection().execute("DROP TRIGGER lot_starts_empty");
        connection().execute("CREATE TRIGGER lot_starts_empty BEFORE INSERT ON lot BEGIN SELECT 1; END");
        connection().execute("CREATE TRIGGER mine AFTER INSERT ON lot BEGIN SELECT 1; END");
        EXPECT_THAT(
            findings(),
            ElementsAre("tables and guards are as they were made: trigger lot_starts_empty was changed",
                        "tables and guards are as they were made: trigger movement_append_only_update is missing",
                        "tables and guards are as they were made: trigger mine does not belong to it"));
        return;
    }
    connection().execute("DROP TRIGGER movement_append_only ON movement");
    connection().execute("ALTER TABLE charge DISABLE TRIGGER charge_append_only");
    connection().execute("ALTER TABLE payment DISABLE TRIGGER ALL");
    connection().execute("CREATE OR REPLACE FUNCTION guard_refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
                         "RETURN NEW; END $$");
    connection().execute("ALTER TABLE lot DROP CONSTRAINT lot_length_not_negative");
    EXPECT_THAT(findings(),
                UnorderedElementsAre(
                    "tables and guards are as they were made: trigger movement_append_only is missing",
                    "tables and guards are as they were made: trigger charge_append_only is switched off",
                    "tables and guards are as they were made: trigger payment_append_only is switched off",
                    "tables and guards are as they were made: trigger payment_allowed is switched off",
                    "tables and guards are as they were made: reference payment_job_id_fkey is switched off",
                    "tables and guards are as they were made: reference payment_staff_id_fkey is switched off",
                    "tables and guards are as they were made: reference payment_corrects_id_fkey is switched off",
                    "tables and guards are as they were made: function guard_refuse was changed",
                    "tables and guards are as they were made: constraint lot_length_not_negative is missing"));
}

TEST_P(CheckTest, ASettingThatDidNotTake) {
    if (onSqlite()) {
        connection().execute("PRAGMA recursive_triggers = 0");
        connection().execute("PRAGMA user_version = 1");
        EXPECT_THAT(findings(), ElementsAre("the engine is set as it must be: recursive_triggers is 0, not 1",
                                            "the engine is set as it must be: user_version is 1, not " +
                                                std::to_string(latestVersion())));
        return;
    }
    connection().execute("SET session_replication_role = replica");
    EXPECT_THAT(findings(),
                ElementsAre("the engine is set as it must be: session_replication_role is replica, not origin"));
}

TEST_P(CheckTest, EveryRuleHasAQueryAndEveryQueryARule) {
    // A query of the check that nobody asks proves nothing.
    int queries = 0;
    for (const auto& name : queryNames(GetParam())) {
        queries += name.starts_with("check_") ? 1 : 0;
    }
    EXPECT_EQ(queries, ruleCount());
}

TEST(CheckSqlite, AFileThatCannotBeReadThroughIsAFinding) {
    const auto place = makePlace(Dialect::Sqlite);
    (void)mustOpen(place->address());
    std::string root;
    {
        const auto connection = place->connect();
        damage(*connection, {"DELETE FROM ledger"});
        stockSmallShop(*connection);
        root = connection->scalar("SELECT rootpage FROM sqlite_schema WHERE name = 'movement'");
    }
    {
        std::fstream file(place->address(), std::ios::in | std::ios::out | std::ios::binary);
        file.seekp((std::stoll(root) - 1) * 4096);
        file << std::string(200, '\x55');
    }
    std::vector<std::string> rules;
    for (const auto& finding : checkLedger(*place->connect())) {
        rules.push_back(finding.rule);
    }
    EXPECT_THAT(rules, Contains("the ledger can be read through"));
    EXPECT_THAT(rules, Contains("a lot's length is the sum of its movements"));
}

TEST(SchemaPromise, FollowsWhatIsMadeAndDropped) {
    const std::vector<Migration> steps = {
        {1,
         "one",
         {"CREATE TABLE a (id INTEGER CONSTRAINT a_id CHECK (id > 0), CONSTRAINT a_two UNIQUE (id))",
          "CREATE UNIQUE INDEX IF NOT EXISTS i ON a (id)", "CREATE VIEW v AS SELECT 1",
          "CREATE FUNCTION f() RETURNS trigger LANGUAGE plpgsql AS $$ one $$",
          "CREATE TRIGGER t BEFORE INSERT ON a EXECUTE FUNCTION f()"}},
        {2,
         "two",
         {"CREATE OR REPLACE FUNCTION f() RETURNS trigger LANGUAGE plpgsql AS $body$ two $body$", "DROP TRIGGER t ON a",
          "ALTER TABLE a DROP CONSTRAINT a_two", "ALTER TABLE a ADD CONSTRAINT a_three CHECK (id < 9)",
          "DROP VIEW IF EXISTS v"}}};
    const SchemaPromise expected = {{{"constraint", "a_id"}, "on"},
                                    {{"constraint", "a_three"}, "on"},
                                    {{"function", "f"}, " two "},
                                    {{"index", "i"}, "on"},
                                    {{"table", "a"}, "on"}};
    EXPECT_EQ(promisedSchema(steps), expected);
}

} // namespace rw::sql::test
