// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that lead to the wrong rows: each by itself is what its table may hold.
#include "tests/sql/checked_shop.h"
#include "tests/sql/damage.h"

#include <gmock/gmock.h>

namespace rw::sql::test {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

class CheckRowsTest : public OnCheckedShop {};
ON_BOTH_ENGINES(CheckRowsTest);

TEST_P(CheckRowsTest, ALotThatCameTwiceOrNever) {
    EXPECT_THAT(findingsAfter({"UPDATE movement SET reason = 'measured' WHERE id = 1"}),
                ElementsAre("a lot came once: lot K-1: came 0 times"));
    EXPECT_THAT(findingsAfter({"UPDATE movement SET reason = 'received' WHERE id = 1",
                               "INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
                               "VALUES (1, 100, 'received', 1767225600030, 1, 'stockroom')",
                               "UPDATE lot SET length_mm = length_mm + 100 WHERE id = 1"}),
                ElementsAre("a lot came once: lot K-1: came 2 times"));
}

TEST_P(CheckRowsTest, ACutAndAPlanOffAnotherString) {
    damage(connection(), {"INSERT INTO string_article (code, name, sport, material, diameter_um) "
                          "VALUES ('N', 'Nimbus 130', 'tennis', 'nylon', 1300)"});
    EXPECT_THAT(findingsAfter({"UPDATE job_piece SET article_id = 2 WHERE id = 1"}),
                ElementsAre("a job is cut off the string that it is to have: job 2120, mains: is to be N, cut off lot "
                            "K-1, which is K",
                            "a piece is planned off a lot that it may have: job 2120, mains: planned off lot K-1, "
                            "which is another string"));
    EXPECT_THAT(findingsAfter({"UPDATE job_piece SET article_id = 1 WHERE id = 1",
                               "UPDATE job_piece SET article_id = 2 WHERE id = 2"}),
                ElementsAre("a piece is planned off a lot that it may have: job 2120, crosses: planned off lot K-1, "
                            "which is another string"));
}

TEST_P(CheckRowsTest, APieceOffAStrangersLot) {
    EXPECT_THAT(findingsAfter({"UPDATE lot SET owner_customer_id = 1 WHERE id = 1",
                               "UPDATE job_piece SET source = 'customers-lot' WHERE id IN (1, 2, 3)"}),
                IsEmpty());
    EXPECT_THAT(findingsAfter({"UPDATE job_piece SET source = 'shop-lot' WHERE id = 2"}),
                ElementsAre("a piece is planned off a lot that it may have: job 2120, crosses: planned off lot K-1, "
                            "which is the customer's own"));
    EXPECT_THAT(findingsAfter({"UPDATE job_piece SET source = 'customers-lot' WHERE id = 2",
                               "UPDATE lot SET owner_customer_id = 2 WHERE id = 1"}),
                Contains("a piece is planned off a lot that it may have: job 2120, crosses: planned off lot K-1, "
                         "which is somebody else's"));
}

TEST_P(CheckRowsTest, ACustomersLotThatIsCutWithoutOne) {
    EXPECT_THAT(findingsAfter({"DELETE FROM movement WHERE attempt_id = 1",
                               "UPDATE lot SET length_mm = length_mm + 6200 WHERE id = 1",
                               "UPDATE job_piece SET source = 'customers-lot', lot_id = NULL WHERE id = 1"}),
                ElementsAre("a cut is a movement and an event: job 2120, mains, attempt 1: a cut is told of, but no "
                            "string was taken"));
}

TEST_P(CheckRowsTest, AMovementThatCorrectsWhatItMayNot) {
    const std::string rule = "a correction takes one movement of its lot back: movement 6 of lot K-1: corrects ";
    damage(connection(), {"INSERT INTO movement (lot_id, change_mm, reason, corrects_id, at, staff_id, station) "
                          "VALUES (1, 6200, 'measured', 4, 1767225600030, 1, 'bench')",
                          "INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
                          "VALUES (1, -6200, 'measured', 1767225600031, 1, 'bench')"});
    ASSERT_THAT(findings(), IsEmpty());
    EXPECT_THAT(findingsAfter({"UPDATE movement SET corrects_id = 2 WHERE id = 6"}),
                ElementsAre(rule + "a movement of another lot"));
    EXPECT_THAT(findingsAfter({"UPDATE movement SET corrects_id = 6 WHERE id = 6"}), ElementsAre(rule + "itself"));
    EXPECT_THAT(findingsAfter({"UPDATE movement SET corrects_id = 7 WHERE id = 6"}),
                ElementsAre(rule + "what came after it"));
    const std::string next = "a correction takes one movement of its lot back: movement 7 of lot K-1: corrects ";
    EXPECT_THAT(findingsAfter({"UPDATE movement SET corrects_id = 4 WHERE id = 6",
                               "UPDATE movement SET corrects_id = 6 WHERE id = 7"}),
                ElementsAre(next + "a correction"));
    EXPECT_THAT(findingsAfter({"UPDATE movement SET corrects_id = 4 WHERE id = 7"}),
                ElementsAre(next + "what had been corrected"));
}

TEST_P(CheckRowsTest, AWeighInThatItsWeightsDoNotBearOut) {
    const std::string rule = "what was weighed in has its weights: movement 6 of lot K-1: ";
    const std::string weighing =
        "INSERT INTO weighing (lot_id, gross_mg, gross_step_mg, empty_mg, empty_step_mg, metre_ug, metre_sd_ug, basis, "
        "weighed_mm, weighed_sd_mm, book_mm, book_sd_mm, at, staff_id, station) VALUES (1, 220000, 1000, 150000, 1000, "
        "1700000, 34000, 'metre', 41177, 1200, 42600, 900, 1767225600030, 1, 'stockroom')";
    const std::string movement = "INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
                                 "VALUES (1, -1423, 'weighed', 1767225600031, 1, 'stockroom')";
    damage(connection(), {weighing, movement, "UPDATE lot SET length_mm = 41177 WHERE id = 1"});
    EXPECT_THAT(findings(), ElementsAre(rule + "booked by no weighing"));
    damage(connection(), {"INSERT INTO weighed_movement (movement_id, weighing_id) VALUES (6, 1)"});
    EXPECT_THAT(findings(), IsEmpty());
    EXPECT_THAT(findingsAfter({"UPDATE weighing SET weighed_mm = 41000"}),
                ElementsAre(rule + "-1423 mm, and -1600 mm by weighing 1"));
    EXPECT_THAT(findingsAfter({"UPDATE weighing SET weighed_mm = 41177, lot_id = 2"}),
                ElementsAre(rule + "booked by weighing 1 of another lot"));
    EXPECT_THAT(
        findingsAfter({"UPDATE weighing SET lot_id = 1", "UPDATE movement SET reason = 'measured' WHERE id = 6"}),
        ElementsAre(rule + "measured, by weighing 1"));
    EXPECT_THAT(findingsAfter({"UPDATE weighing SET at = 5", "UPDATE movement SET reason = 'weighed' WHERE id = 6"}),
                ElementsAre("what happened, happened in these centuries: weighing 1: at 5 ms"));
}

TEST_P(CheckRowsTest, TwoStockTakesAtOnce) {
    damage(connection(), {"INSERT INTO stock_take (at, staff_id, station) VALUES (1767225600030, 1, 'stockroom')",
                          "INSERT INTO stock_take (at, staff_id, station) VALUES (1767225600031, 1, 'stockroom')"});
    EXPECT_THAT(findings(), ElementsAre("one stock-take goes on at a time: stock-take 2: goes on beside 1"));
}

TEST_P(CheckRowsTest, MoneyThatCorrectsAnotherJobs) {
    damage(connection(),
           {"INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station, corrects_id)"
            " VALUES (1, -1000, 'GBP', 'cash', 1767225600030, 1, 'counter', 1)"});
    ASSERT_THAT(findings(), IsEmpty());
    EXPECT_THAT(findingsAfter({"UPDATE payment SET job_id = 2 WHERE id = 2"}),
                ElementsAre("money is corrected in its own job: job 2121, payment 2: corrects what belongs to another "
                            "job"));
    EXPECT_THAT(findingsAfter({"UPDATE payment SET job_id = 1, corrects_id = 2 WHERE id = 2",
                               "UPDATE charge SET corrects_id = 2 WHERE id = 1"}),
                ElementsAre("money is corrected in its own job: job 2120, charge 1: corrects what did not come before "
                            "it",
                            "money is corrected in its own job: job 2120, payment 2: corrects what did not come before "
                            "it"));
}

TEST_P(CheckRowsTest, AnEventOfAnotherJobsAttempt) {
    EXPECT_THAT(findingsAfter({"UPDATE job_event SET job_id = 1 WHERE job_id = 2 AND kind = 'cut'"}),
                Contains("an event's attempt is one of its job: job 2120, event 6: cut, of an attempt of job 2121"));
}

TEST_P(CheckRowsTest, AStringingThatHangsOnTheWrongEvent) {
    EXPECT_THAT(findingsAfter({"UPDATE strung SET job_event_id = 8"}),
                Contains("what is written down was strung: job 2121, event 8: written down as strung, by an event that "
                         "is collected"));
    EXPECT_THAT(findingsAfter({"UPDATE strung SET job_event_id = 7, job_id = 1"}),
                Contains("what is written down was strung: job 2120, event 7: written down as strung, by an event that "
                         "is another job's"));
}

TEST_P(CheckRowsTest, ARacketThatNobodyTook) {
    const std::string rule = "who took a racket is written down with the event: job ";
    EXPECT_THAT(findingsAfter({"UPDATE handover SET job_event_id = 7"}),
                ElementsAre(rule + "2121, event 7: handed over, by an event that is strung",
                            rule + "2121, event 8: collected, and nothing says by whom"));
    EXPECT_THAT(findingsAfter({"UPDATE handover SET job_event_id = 8, job_id = 1"}),
                ElementsAre(rule + "2120, event 8: handed over, by an event of another job"));
    EXPECT_THAT(findingsAfter({"DELETE FROM handover"}),
                ElementsAre(rule + "2121, event 8: collected, and nothing says by whom"));
}

TEST_P(CheckRowsTest, AJobWithSomebodyElsesRacket) {
    EXPECT_THAT(findingsAfter({"UPDATE racket SET customer_id = 2 WHERE id = 1"}),
                ElementsAre("a job's racket is its customer's: job 2120: for customer 1, with racket 1 of customer 2",
                            "a job's racket is its customer's: job 2121: for customer 1, with racket 1 of customer 2"));
}

TEST_P(CheckRowsTest, SomebodyWhoWasRemovedAndHasStillSomethingHere) {
    EXPECT_THAT(findingsAfter({"UPDATE customer SET removed_at = 1767225600030 WHERE id = 2"}), IsEmpty());
    EXPECT_THAT(findingsAfter({"INSERT INTO lot (tag, article_id, kind, owner_customer_id, nominal_mm, length_mm, "
                               "price_minor, shipping_minor, currency, received_at) VALUES ('K-3', 1, 'reel', 2, 5000, "
                               "5000, 0, 0, 'GBP', 1767225600001)",
                               "INSERT INTO movement (lot_id, change_mm, reason, at, staff_id, station) "
                               "VALUES (3, 5000, 'received', 1767225600001, 1, 'stockroom')"}),
                ElementsAre("who was removed has nothing here: customer 2: removed, and lot K-3 is open"));
    EXPECT_THAT(findingsAfter({"UPDATE customer SET removed_at = NULL WHERE id = 2",
                               "UPDATE customer SET removed_at = 1767225600030 WHERE id = 1"}),
                ElementsAre("who was removed has nothing here: customer 1: removed, and job 2120 is on-the-machine"));
}

TEST_P(CheckRowsTest, AMomentThatNoClockShows) {
    const std::string rule = "what happened, happened in these centuries: ";
    EXPECT_THAT(
        findingsAfter({"UPDATE movement SET at = 631151999999 WHERE id = 1",
                       "UPDATE movement SET at = 631152000000 WHERE id = 2",
                       "UPDATE job_event SET at = 7258118400000 WHERE id = 1",
                       "UPDATE payment SET at = 7258118399999 WHERE id = 1", "UPDATE charge SET at = -5 WHERE id = 1",
                       "INSERT INTO asked_for_none (request_key, article_id, at, staff_id, station) "
                       "VALUES ('a-1', 1, 7, 1, 'counter')"}),
        ElementsAre(rule + "asked for, had none 1: at 7 ms", rule + "charge 1: at -5 ms",
                    rule + "event 1: at 7258118400000 ms", rule + "movement 1: at 631151999999 ms"));
}

TEST_P(CheckRowsTest, StepsThatTheProgramDoesNotKnow) {
    const auto found = findingsAfter(
        {"UPDATE job_transition SET to_state = 'collected' WHERE from_state = 'logged' AND kind = 'waiting'",
         "DELETE FROM job_transition WHERE from_state = 'strung' AND kind = 'reopened'",
         "INSERT INTO job_transition (from_state, kind, to_state) VALUES ('logged', 'collected', 'collected')"});
    const std::string rule = "a job takes the steps that the program knows: ";
    EXPECT_THAT(found,
                ElementsAre(rule + R"("logged", waiting: leads to "collected", not to "waiting")",
                            rule + R"("strung", reopened: is missing)", rule + R"("logged", collected: is no step)"));
}

TEST_P(CheckRowsTest, AStepOfTheSchemaThatNobodyTellsOf) {
    EXPECT_THAT(findingsAfter({"DELETE FROM schema_version WHERE version = 2",
                               "UPDATE schema_version SET name = 'mine' WHERE version = 3"}),
                ElementsAre("each step of the schema is told of: step 2 is not told of",
                            "each step of the schema is told of: step 3 is called mine, not four_stations"));
}

TEST_P(CheckRowsTest, AStepOfTheSchemaThatNobodyKnows) {
    EXPECT_THAT(findingsAfter({"INSERT INTO schema_version (version, name, applied_at) VALUES (0, 'mine', 1)"}),
                ElementsAre("each step of the schema is told of: step 0 is not known"));
}

TEST_P(CheckRowsTest, ACurrencyAndATimeZoneThatAreNone) {
    EXPECT_THAT(findingsAfter({"UPDATE ledger SET currency = 'QQQ'",
                               "INSERT INTO setting (name, value) VALUES ('time-zone', 'Europe/Nowhere')"}),
                ElementsAre("the shop's currency and time zone are known: the currency is QQQ",
                            "the shop's currency and time zone are known: the time zone is Europe/Nowhere"));
    EXPECT_THAT(findingsAfter({"UPDATE ledger SET currency = 'EUR'", "UPDATE setting SET value = 'Europe/Vienna'"}),
                IsEmpty());
}

TEST_P(CheckRowsTest, TailsOfNothingOrOfMoreThanThereWas) {
    const std::string head = "INSERT INTO tails (attempt_id, part, low_mm, high_mm, at, staff_id, station) VALUES ";
    const std::string more = head + "(1, 'piece', 6200, 6200, 1767225600030, 1, 'bench')";
    const std::string none = head + "(2, 'piece', 300, 300, 1767225600030, 1, 'bench')";
    EXPECT_THAT(findingsAfter({more, none}),
                ElementsAre("tails are shorter than the cut that they came off: job 2120, mains, attempt 1: tails of "
                            "6200 mm off a cut of 6200 mm",
                            "tails are shorter than the cut that they came off: job 2120, crosses, attempt 1: tails "
                            "are told of, and it was never cut"));
}

} // namespace rw::sql::test
