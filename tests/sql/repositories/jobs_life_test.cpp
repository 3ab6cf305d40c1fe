// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::HasSubstr;
using testing::SizeIs;

namespace rw::sql::test {

/// What happens to a job after it was logged.
class JobsLifeTest : public StockedTest {
protected:
    AttemptId currentAttempt(JobId job, std::size_t piece = 0) {
        return stored(job).pieces.at(piece).current().id.value();
    }
    JobId oneWhole(const std::string& key, std::optional<LotId> lot = std::nullopt) {
        return jobs().add(job(key, {piece(PieceRole::Whole, string("K"), lot)}), by(0, "counter"));
    }
    JobEventId happened(JobId job, JobEventKind kind, int minutes) {
        return jobs().record({.id = std::nullopt,
                              .job = job,
                              .kind = kind,
                              .by = by(minutes),
                              .machine = machine(),
                              .attempt = std::nullopt});
    }
};
ON_BOTH_ENGINES(JobsLifeTest);

TEST_P(JobsLifeTest, TheStateFollowsFromTheEvents) {
    const auto id = oneWhole("1");
    const auto version = stored(id).version;
    EXPECT_THAT(guardOf([&] { happened(id, JobEventKind::Strung, 1); }), HasSubstr("job_event_fits_state"));
    const auto taken = happened(id, JobEventKind::Taken, 2);
    EXPECT_EQ(stored(id).state, JobState::OnTheMachine);
    EXPECT_GT(stored(id).version, version);
    record(id, JobEventKind::PutDown, 3);
    EXPECT_EQ(stored(id).state, JobState::Logged);
    record(id, JobEventKind::Waiting, 4);
    EXPECT_EQ(stored(id).state, JobState::Waiting);

    const auto events = jobs().events(id);
    ASSERT_THAT(events, SizeIs(4));
    EXPECT_EQ(events[1].id, taken);
    EXPECT_EQ(events[1].kind, JobEventKind::Taken);
    EXPECT_EQ(events[1].machine, machine());
    EXPECT_EQ(events[1].by.at, at(2));
    EXPECT_FALSE(events[2].machine);
    EXPECT_EQ(events[3].kind, JobEventKind::Waiting);
}

TEST_P(JobsLifeTest, TheStepAtTheBenchIsKeptAndCountsAsAChange) {
    const auto id = oneWhole("1");
    record(id, JobEventKind::Taken, 1);
    const auto version = stored(id).version;
    jobs().setBenchStep(id, BenchStep::Crosses);
    EXPECT_EQ(stored(id).benchStep, BenchStep::Crosses);
    EXPECT_GT(stored(id).version, version);
    record(id, JobEventKind::PutDown, 2);
    EXPECT_EQ(stored(id).benchStep, BenchStep::Crosses);
    EXPECT_THAT(guardOf([&] { jobs().setBenchStep(JobId::of(999'999), BenchStep::Mains); }), HasSubstr("no job"));
}

TEST_P(JobsLifeTest, ACutThatIsCorrectedByAMovementIsTakenBack) {
    const auto k2 = reel("K-2", string("K"), mm(20'000));
    const auto id = oneWhole("1", k2);
    record(id, JobEventKind::Taken, 1);
    const auto attempt = currentAttempt(id);
    const auto booked = cut(attempt, k2, mm(11'200), 5);
    record(id, JobEventKind::Cut, 5, attempt);
    EXPECT_FALSE(stored(id).pieces[0].current().cut->takenBack);
    lots().move({.id = std::nullopt,
                 .lot = k2,
                 .reason = MovementReason::Measured,
                 .change = mm(11'200),
                 .attempt = std::nullopt,
                 .lostReason = std::nullopt,
                 .corrects = booked,
                 .by = by(6)});
    EXPECT_TRUE(stored(id).pieces[0].current().cut->takenBack);
}

TEST_P(JobsLifeTest, ACutBelongsToItsAttempt) {
    const auto k2 = reel("K-2", string("K"), mm(20'000));
    const auto id = oneWhole("1", k2);
    record(id, JobEventKind::Taken, 1);
    const auto attempt = currentAttempt(id);
    cut(attempt, k2, mm(11'200), 5);
    record(id, JobEventKind::Cut, 5, attempt);

    const Job job = stored(id);
    ASSERT_TRUE(job.pieces[0].isCut());
    const DoneCut& done = job.pieces[0].current().cut.value();
    EXPECT_EQ(done.lot, k2);
    EXPECT_EQ(done.lotTag, "K-2");
    EXPECT_EQ(done.length, mm(11'200));
    EXPECT_EQ(done.at, at(5));
    EXPECT_FALSE(done.allThereWas);
    EXPECT_EQ(jobs().events(id).back().attempt, attempt);
    EXPECT_EQ(jobs().ofAttempt(attempt), id);
    EXPECT_FALSE(jobs().ofAttempt(AttemptId::of(987'654)));
}

TEST_P(JobsLifeTest, ACutThatEmptiesALotWasAllThereWas) {
    const auto k2 = reel("K-2", string("K"), mm(6'400));
    const auto id = oneWhole("1", k2);
    (void)lots().move({.id = std::nullopt,
                       .lot = k2,
                       .reason = MovementReason::Measured,
                       .change = mm(-50),
                       .attempt = std::nullopt,
                       .lostReason = std::nullopt,
                       .corrects = std::nullopt,
                       .by = by(4)});
    cut(currentAttempt(id), k2, mm(6'350), 5);
    lots().close(k2, at(5));
    EXPECT_TRUE(stored(id).pieces[0].current().cut.value().allThereWas);
}

TEST_P(JobsLifeTest, ACutOfTheCustomersOwnSetIsKnownByItsEvent) {
    JobPiece set = piece(PieceRole::Whole, string("K"));
    set.source = PieceSource::CustomersSet;
    const auto id = jobs().add(job("1", {set}), by(0, "counter"));
    record(id, JobEventKind::Taken, 1);
    EXPECT_FALSE(stored(id).pieces[0].isCut());
    const auto attempt = currentAttempt(id);
    record(id, JobEventKind::Cut, 6, attempt);
    const Job job = stored(id);
    ASSERT_TRUE(job.pieces[0].isCut());
    const DoneCut& done = job.pieces[0].current().cut.value();
    EXPECT_FALSE(done.lot);
    EXPECT_EQ(done.lotTag, "");
    EXPECT_EQ(done.length, mm(6'200));
    EXPECT_EQ(done.at, at(6));

    EXPECT_EQ(jobs().loseAttempt(attempt, LostReason::Snapped, at(7)), 2);
    EXPECT_FALSE(stored(id).pieces[0].isCut());
    EXPECT_TRUE(stored(id).pieces[0].attempts[0].cut);
}

TEST_P(JobsLifeTest, ALostLengthClosesItsAttemptAndOpensTheNext) {
    const auto k2 = reel("K-2", string("K"), mm(30'000));
    const auto id =
        jobs().add(job("1", {piece(PieceRole::Mains, string("K"), k2), piece(PieceRole::Crosses, string("K"), k2)}),
                   by(0, "counter"));
    const auto mains = currentAttempt(id, 0);
    const auto crosses = currentAttempt(id, 1);
    EXPECT_NE(guardOf([&] { (void)jobs().loseAttempt(crosses, LostReason::Kinked, at(2)); }), "") << "nothing was cut";
    cut(mains, k2, mm(6'200), 3);
    cut(crosses, k2, mm(5'600), 4);
    EXPECT_EQ(jobs().loseAttempt(crosses, LostReason::CameShort, at(5)), 2);
    EXPECT_THAT(guardOf([&] { (void)jobs().loseAttempt(crosses, LostReason::CameShort, at(6)); }),
                HasSubstr("no open attempt"));
    EXPECT_NE(guardOf([&] { cut(crosses, k2, mm(5'600), 6); }), "");
    cut(currentAttempt(id, 1), k2, mm(5'750), 7);
    EXPECT_EQ(jobs().loseAttempt(currentAttempt(id, 1), LostReason::MisWoven, at(8)), 3);

    const Job job = stored(id);
    EXPECT_TRUE(job.pieces[0].isCut());
    EXPECT_THAT(job.pieces[0].attempts, SizeIs(1));
    EXPECT_FALSE(job.pieces[1].isCut());
    ASSERT_THAT(job.pieces[1].attempts, SizeIs(3));
    const auto& attempts = job.pieces[1].attempts;
    EXPECT_EQ(attempts[0].number, 1);
    EXPECT_EQ(attempts[0].lost, LostReason::CameShort);
    EXPECT_EQ(attempts[0].cut.value().length, mm(5'600));
    EXPECT_EQ(attempts[1].lost, LostReason::MisWoven);
    EXPECT_EQ(attempts[1].cut.value().length, mm(5'750));
    EXPECT_EQ(attempts[2].number, 3);
    EXPECT_FALSE(attempts[2].lost);
    EXPECT_FALSE(attempts[2].cut);
    EXPECT_EQ(lots().get(k2).value().length, mm(30'000 - 6'200 - 5'600 - 5'750));
}

TEST_P(JobsLifeTest, APlanIsChangedUntilItIsCut) {
    const auto k2 = reel("K-2", string("K"), mm(20'000));
    const auto id = oneWhole("1");
    const auto piece = stored(id).pieces[0].id.value();
    jobs().plan(piece, k2, mm(11'250), true);
    EXPECT_EQ(stored(id).pieces[0].lot, k2);
    EXPECT_EQ(stored(id).pieces[0].planned, mm(11'250));
    EXPECT_TRUE(stored(id).pieces[0].pinned);
    jobs().plan(piece, std::nullopt, mm(11'200), false);
    EXPECT_FALSE(stored(id).pieces[0].lot);
    EXPECT_FALSE(stored(id).pieces[0].pinned);
    EXPECT_THAT(guardOf([&] { jobs().plan(JobPieceId::of(987'654), k2, mm(1), false); }), HasSubstr("no job piece"));
    EXPECT_NE(guardOf([&] { jobs().plan(piece, k2, mm(0), false); }), "");
}

TEST_P(JobsLifeTest, WhatWasStrungStandsBesideWhatWasAsked) {
    const auto id = oneWhole("1");
    record(id, JobEventKind::Taken, 1);
    const auto first = happened(id, JobEventKind::Strung, 20);
    jobs().setStrung(first, id, {kg(2'350), kg(2'250)}, machine());
    jobs().addNote(id, "mains crept at 7R");

    const Job strung = stored(id);
    EXPECT_EQ(strung.state, JobState::Strung);
    EXPECT_EQ(strung.asked, (TensionPair{lb(5'200), lb(5'000)}));
    EXPECT_EQ(strung.strung.value().tensions, (TensionPair{kg(2'350), kg(2'250)}));
    EXPECT_EQ(strung.strung.value().machine, machine());
    EXPECT_EQ(strung.strung.value().by.at, at(20));
    EXPECT_EQ(strung.strung.value().by.station, "bench");
    EXPECT_EQ(strung.note, "mains crept at 7R");

    record(id, JobEventKind::Reopened, 25);
    EXPECT_FALSE(stored(id).strung) << "on the machine again: nothing is strung yet";
    const auto second = happened(id, JobEventKind::Strung, 40);
    jobs().setStrung(second, id, {kg(2'400), kg(2'250)}, machine());
    EXPECT_EQ(stored(id).strung.value().tensions.mains, kg(2'400));
    EXPECT_EQ(stored(id).strung.value().by.at, at(40));

    const auto other = oneWhole("2");
    EXPECT_NE(guardOf([&] { jobs().setStrung(second, other, {kg(2'400), kg(2'250)}, machine()); }), "");
}

TEST_P(JobsLifeTest, IsPaidInPartsAndHandedOverOnce) {
    Job job = this->job("1", {piece(PieceRole::Whole, string("K"))});
    job.charges = {{ChargeKind::Labour, std::nullopt, "", 1, pounds(3'000), 0}};
    const auto id = jobs().add(job, by(0, "counter"));
    const auto paid = [&](Money amount, const char* way, int minutes) {
        return Payment{.id = std::nullopt, .amount = amount, .way = way, .by = by(minutes, "counter"), .corrects = {}};
    };
    EXPECT_EQ(jobs().paid(id), pounds(0));
    jobs().pay(id, paid(pounds(1'000), "cash", 1));
    jobs().pay(id, paid(pounds(2'500), "card", 2));
    EXPECT_EQ(jobs().paid(id), pounds(3'500)) << "a credit is shown, not refused";
    EXPECT_NE(guardOf([&] { jobs().pay(id, paid(Money::fromMinor(1, Currency::fromCode("EUR").value()), "cash", 3)); }),
              "");
    const auto payments = jobs().payments(id);
    ASSERT_EQ(payments.size(), 2U);
    EXPECT_EQ(payments[1].way, "card");
    auto correction = paid(-pounds(2'500), "card", 3);
    correction.corrects = payments[1].id;
    jobs().pay(id, correction);
    EXPECT_EQ(jobs().payments(id).back().corrects, payments[1].id);
    EXPECT_FALSE(jobs().paymentByRequestKey("till 1"));
    auto once = paid(pounds(250), "cash", 3);
    once.requestKey = "till 1";
    jobs().pay(id, once);
    const auto found = jobs().paymentByRequestKey("till 1").value();
    EXPECT_EQ(found.job, id);
    EXPECT_EQ(found.payment.amount, pounds(250));
    EXPECT_EQ(found.payment.requestKey, "till 1");
    EXPECT_NE(guardOf([&] { jobs().pay(id, once); }), "") << "a key is taken once";
    EXPECT_EQ(jobs().paid(id), pounds(1'250));
    EXPECT_NE(guardOf([&] { (void)jobs().paid(JobId::of(987'654)); }), "");

    record(id, JobEventKind::Taken, 4);
    record(id, JobEventKind::Strung, 20);
    EXPECT_FALSE(stored(id).collected);
    const auto collected = happened(id, JobEventKind::Collected, 60);
    EXPECT_FALSE(jobs().handover(id));
    jobs().handOver(id, collected, {"her brother, O'Hara", true});
    EXPECT_EQ(stored(id).collected, at(60));
    EXPECT_EQ(stored(id).state, JobState::Collected);
    EXPECT_NE(guardOf([&] { jobs().handOver(id, collected, {}); }), "");
    EXPECT_EQ(jobs().handover(id), (Handover{"her brother, O'Hara", true}));
    record(id, JobEventKind::BroughtBack, 70);
    jobs().handOver(id, happened(id, JobEventKind::Collected, 80), {});
    EXPECT_EQ(jobs().handover(id), Handover()) << "the last time counts";
}

TEST_P(JobsLifeTest, HowItCameInIsKeptBesideIt) {
    Job wanted = job("1", {piece(PieceRole::Whole, string("K"))});
    wanted.mustBy = at(500);
    const auto id = jobs().add(wanted, by(0, "counter"));
    EXPECT_EQ(stored(id).mustBy, at(500));
    EXPECT_EQ(jobs().inspection(id), Inspection());
    jobs().inspect(id, {"cover", "bumper worn at 2 o'clock"});
    EXPECT_EQ(jobs().inspection(id), (Inspection{"cover", "bumper worn at 2 o'clock"}));
    const auto plain = oneWhole("2");
    jobs().inspect(plain, {});
    EXPECT_EQ(jobs().inspection(plain), Inspection());
    EXPECT_FALSE(stored(plain).mustBy);
}

} // namespace rw::sql::test
