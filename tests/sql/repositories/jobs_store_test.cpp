// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

namespace rw::sql::test {

/// A job as it goes in and comes out.
class JobsStoreTest : public StockedTest {
protected:
    Job fullJob() {
        JobPiece mains = piece(PieceRole::Mains, string("K"), reel("K-2", string("K"), mm(6'400)));
        mains.pinned = true;
        JobPiece crosses = piece(PieceRole::Crosses, string("L"));
        crosses.source = PieceSource::CustomersSet;
        crosses.planned = mm(5'600);
        crosses.expected = mm(5'480);
        crosses.setLength = mm(12'200);
        Job job = this->job("counter-1 7f3a", {mains, crosses});
        job.method = Method::TwoPiece;
        job.route = "";
        job.shortSide = Side::Right;
        job.asked = {lb(5'250), kg(2'350)};
        job.charges = {
            {ChargeKind::Labour, std::nullopt, "", 1, pounds(1'400), 2'000},
            {ChargeKind::HalfBed, string("K"), "", 1, pounds(650), 2'000},
            {ChargeKind::Extra, std::nullopt, "grommet tube", 4, pounds(200), 500, pounds(72)},
            {ChargeKind::Discount, std::nullopt, "team match 🎾", 1, pounds(-225), 2'000},
        };
        job.promised = at(180);
        job.note = "felt a touch stiff";
        return job;
    }
};
ON_BOTH_ENGINES(JobsStoreTest);

void expectSame(const std::vector<Charge>& stored, const std::vector<Charge>& charges) {
    ASSERT_EQ(stored.size(), charges.size());
    for (std::size_t i = 0; i < charges.size(); ++i) {
        EXPECT_EQ(stored[i].kind, charges[i].kind);
        EXPECT_EQ(stored[i].article, charges[i].article);
        EXPECT_EQ(stored[i].label, charges[i].label);
        EXPECT_EQ(stored[i].count, charges[i].count);
        EXPECT_EQ(stored[i].amount, charges[i].amount);
        EXPECT_EQ(stored[i].taxHundredthsPercent, charges[i].taxHundredthsPercent);
        EXPECT_EQ(stored[i].cost, charges[i].cost);
    }
}

TEST_P(JobsStoreTest, ComeBackWholeWithEverythingThereIs) {
    const Job job = fullJob();
    const auto id = jobs().add(job, by(3, "counter"));
    const Job back = stored(id);
    EXPECT_EQ(back.id, id);
    EXPECT_EQ(back.number, 1001);
    EXPECT_EQ(back.requestKey, job.requestKey);
    EXPECT_EQ(back.customer, petra());
    EXPECT_EQ(back.racket, racket());
    EXPECT_EQ(back.method, Method::TwoPiece);
    EXPECT_EQ(back.route, "");
    EXPECT_EQ(back.shortSide, Side::Right);
    EXPECT_FALSE(back.shortSideLength);
    EXPECT_EQ(back.asked, job.asked);
    EXPECT_EQ(back.promised, at(180));
    EXPECT_EQ(back.note, "felt a touch stiff");
    EXPECT_EQ(back.state, JobState::Logged);
    EXPECT_EQ(back.benchStep, BenchStep::LookOver);
    EXPECT_EQ(back.logged, at(3));
    EXPECT_EQ(back.total, pounds(2'025));
    EXPECT_FALSE(back.strung);
    EXPECT_FALSE(back.collected);
    expectSame(back.charges, job.charges);

    ASSERT_THAT(back.pieces, SizeIs(2));
    for (std::size_t i = 0; i < 2; ++i) {
        const JobPiece& piece = back.pieces[i];
        EXPECT_TRUE(piece.id);
        EXPECT_EQ(piece.role, job.pieces[i].role);
        EXPECT_EQ(piece.article, job.pieces[i].article);
        EXPECT_EQ(piece.source, job.pieces[i].source);
        EXPECT_EQ(piece.lot, job.pieces[i].lot);
        EXPECT_EQ(piece.setLength, job.pieces[i].setLength);
        EXPECT_EQ(piece.pinned, job.pieces[i].pinned);
        EXPECT_EQ(piece.planned, job.pieces[i].planned);
        EXPECT_EQ(piece.expected, job.pieces[i].expected);
        ASSERT_THAT(piece.attempts, SizeIs(1));
        EXPECT_TRUE(piece.current().id);
        EXPECT_EQ(piece.current().number, 1);
        EXPECT_FALSE(piece.current().cut);
        EXPECT_FALSE(piece.current().lost);
    }
    const auto events = jobs().events(id);
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].kind, JobEventKind::Logged);
    EXPECT_EQ(events[0].job, id);
    EXPECT_EQ(events[0].by.at, at(3));
    EXPECT_EQ(events[0].by.station, "counter");
}

TEST_P(JobsStoreTest, ComeBackWholeWithNothingThatMayBeMissing) {
    Job job = this->job("2", {piece(PieceRole::Whole, string("L"))});
    job.method = Method::OnePiece;
    job.route = "one-piece, throat start";
    job.shortSideLength = mm(3'000);
    const Job back = stored(jobs().add(job, by(3, "counter")));
    EXPECT_EQ(back.method, Method::OnePiece);
    EXPECT_EQ(back.route, job.route);
    EXPECT_EQ(back.shortSide, Side::Left);
    EXPECT_EQ(back.shortSideLength, mm(3'000));
    EXPECT_FALSE(back.promised);
    EXPECT_EQ(back.note, "");
    EXPECT_THAT(back.charges, IsEmpty());
    EXPECT_EQ(back.total, pounds(0));
    ASSERT_THAT(back.pieces, SizeIs(1));
    EXPECT_FALSE(back.pieces[0].lot);
    EXPECT_FALSE(jobs().get(JobId::of(987'654)));
}

TEST_P(JobsStoreTest, PiecesComeMainsFirstHoweverTheyWereGiven) {
    const Job back = stored(jobs().add(
        job("3", {piece(PieceRole::Crosses, string("L")), piece(PieceRole::Mains, string("K"))}), by(0, "counter")));
    ASSERT_THAT(back.pieces, SizeIs(2));
    EXPECT_EQ(back.pieces[0].role, PieceRole::Mains);
    EXPECT_EQ(back.pieces[1].role, PieceRole::Crosses);
    EXPECT_THAT(guardOf([&] {
                    (void)jobs().add(
                        job("4", {piece(PieceRole::Mains, string("L")), piece(PieceRole::Mains, string("K"))}),
                        by(0, "counter"));
                }),
                HasSubstr("job_piece"));
}

TEST_P(JobsStoreTest, AreNumberedOneAfterTheOther) {
    const auto add = [&](const std::string& key, std::int64_t number) {
        Job job = this->job(key, {piece(PieceRole::Whole, string("L"))});
        job.number = number;
        return jobs().add(job, by(0, "counter"));
    };
    const auto first = add("a", 0);
    const auto second = add("b", 0);
    EXPECT_EQ(stored(first).number, 1001);
    EXPECT_EQ(stored(second).number, 1002);
    EXPECT_EQ(stored(add("c", 2120)).number, 2120);
    EXPECT_EQ(stored(add("d", 0)).number, 2121);
    EXPECT_THAT(guardOf([&] { add("e", 2120); }), HasSubstr("job_number"));
    EXPECT_EQ(jobs().byNumber(1002), second);
    EXPECT_FALSE(jobs().byNumber(1003));
}

TEST_P(JobsStoreTest, ARequestKeyMakesOneJob) {
    const auto id = jobs().add(job("same", {piece(PieceRole::Whole, string("L"))}), by(0, "counter"));
    EXPECT_EQ(jobs().byRequestKey("same"), id);
    EXPECT_FALSE(jobs().byRequestKey("Same"));
    EXPECT_FALSE(jobs().byRequestKey("' OR 1=1 --"));
    EXPECT_THAT(
        guardOf([&] { (void)jobs().add(job("same", {piece(PieceRole::Whole, string("L"))}), by(1, "counter")); }),
        HasSubstr("job_request_key"));
    EXPECT_THAT(guardOf([&] { (void)jobs().add(job("", {piece(PieceRole::Whole, string("L"))}), by(1, "counter")); }),
                HasSubstr("job_request_key"));
}

TEST_P(JobsStoreTest, WordsOfAnyKindAreWords) {
    Job job = this->job("words", {piece(PieceRole::Whole, string("L"))});
    job.note = "שלום 🎾 \"quoted\" '; DELETE FROM job; --\nsecond line \\ %s";
    const auto id = jobs().add(job, by(9, "counter"));
    EXPECT_EQ(stored(id).note, job.note);
    EXPECT_EQ(connection().scalar("SELECT at FROM note"), std::to_string(at(9).time_since_epoch().count()))
        << "a note is as old as what last happened to its job";
    jobs().addNote(id, "and one more");
    EXPECT_EQ(stored(id).note, job.note + "\nand one more");
    EXPECT_EQ(guardOf([&] { jobs().addNote(id, std::string(10'000, 'x')); }), "");
    EXPECT_THAT(guardOf([&] { jobs().addNote(id, std::string(10'001, 'x')); }), HasSubstr("note_words"));
    EXPECT_NE(guardOf([&] { jobs().addNote(JobId::of(987'654), "nobody's"); }), "");
}

TEST_P(JobsStoreTest, ATensionNoMachinePullsIsCorrupt) {
    const auto id = jobs().add(job("1", {piece(PieceRole::Whole, string("L"))}), by(0, "counter"));
    connection().execute("UPDATE job SET crosses_hundredths = 9900, crosses_unit = 'kg'");
    EXPECT_THAT(corruptionIn([&] { (void)jobs().get(id); }),
                testing::AllOf(HasSubstr("job " + std::to_string(id.value())), HasSubstr("crosses_hundredths"),
                               HasSubstr("9900")));
}

/// Who writes has the ledger to itself, so two stations cannot read the same last number.
TEST_P(JobsStoreTest, ASecondStationWaitsForItsNumber) {
    const Job first = job("first", {piece(PieceRole::Whole, string("L"))});
    const auto other = place().connect();
    other->execute(onSqlite() ? "PRAGMA busy_timeout = 1" : "SET lock_timeout TO '1ms'");
    (void)jobs().add(first, by(0, "counter"));
    EXPECT_THROW((void)Work::writing(*other), LedgerBusy);
    commit();

    Job second = first;
    second.requestKey = "second";
    Work work = Work::writing(*other);
    SqlJobs theirs(*other);
    EXPECT_EQ(theirs.get(theirs.add(second, by(1, "counter"))).value().number, 1002);
    work.commit();
}

} // namespace rw::sql::test
