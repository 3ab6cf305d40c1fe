// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/demo_fixture.h"

// The job at the machine: each step once, each refusal before anything is written.
namespace rw::desk::test {
namespace {

class Bench : public DemoEverywhere {
protected:
    void SetUp() override {
        DemoEverywhere::SetUp();
        const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
        job = *logged(racket, draftFor(racket, "K", "L", "50", "52"), "tomas").id;
    }
    std::optional<Code> refused(const ConfirmCut& command) {
        const std::size_t facts = factsOf(job);
        const auto done = cut(command);
        EXPECT_EQ(factsOf(job), facts) << "a refusal leaves nothing behind";
        return refusalOf(done);
    }

    JobId job = JobId::of(1);
    const TensionPair asked{lb("50"), lb("52")};
};

IN_MEMORY_AND_IN_A_FILE(Bench); // stocking the shop takes PostgreSQL seconds; the scenarios run there

TEST_P(Bench, DialStepsLieEitherSideOrMeetOnTheValue) {
    const auto between = dialSetting(lb("52"), TensionUnit::Kilogram, 50);
    EXPECT_EQ(between.below.text(), "23.5 kg");
    EXPECT_EQ(between.above.text(), "24 kg");
    const auto onStep = dialSetting(lb("52.5"), TensionUnit::Pound, 50);
    EXPECT_EQ(onStep.below.text(), "52.5 lb");
    EXPECT_EQ(onStep.above.text(), "52.5 lb");
    const auto off = dialSetting(lb("52.3"), TensionUnit::Pound, 50);
    EXPECT_EQ(off.below.text(), "52 lb");
    EXPECT_EQ(off.above.text(), "52.5 lb");
    const auto least = dialSetting(lb("4"), TensionUnit::Kilogram, 50); // 1.814 kg; no machine is set below 1.8
    EXPECT_EQ(least.below.text(), "2 kg");
    EXPECT_EQ(least.above.text(), "2 kg");
}

TEST_P(Bench, TheQueueIsByPromise) {
    const auto queue = read([](Transaction& t) { return benchQueue(t); });
    ASSERT_EQ(queue->size(), 10U);
    EXPECT_EQ(queue->front().number, 2120);
    EXPECT_TRUE(std::ranges::is_sorted(*queue, {}, &JobLine::promised));
}

TEST_P(Bench, TakenTwiceIsTakenOnceButNotFromAnotherMachine) {
    ASSERT_TRUE(take(job, "Bench A"));
    const std::size_t facts = factsOf(job);
    const auto again = take(job, "Bench A");
    EXPECT_EQ(again->state, JobState::OnTheMachine);
    EXPECT_EQ(factsOf(job), facts);
    const auto elsewhere = take(job, "Bench B");
    ASSERT_EQ(refusalOf(elsewhere), Code::WrongState);
    EXPECT_EQ(elsewhere.error().text("state"), "on-the-machine");
    EXPECT_EQ(card(job).machine->name, "Bench A");

    const PutDown down{job, by()};
    EXPECT_EQ(write([&](Transaction& t) { return putDownJob(t, down); })->state, JobState::Logged);
    EXPECT_EQ(write([&](Transaction& t) { return putDownJob(t, down); })->state, JobState::Logged);
    EXPECT_EQ(factsOf(job), facts + 1);
    EXPECT_TRUE(take(job, "Bench B"));
}

TEST_P(Bench, UnknownJobsMachinesAndPiecesAreSaid) {
    EXPECT_EQ(refusalOf(take(JobId::of(999'999))), Code::NotFound);
    const TakeJob noMachine{job, MachineId::of(999'999), by()};
    const auto nowhere = write([&](Transaction& t) { return takeJob(t, noMachine); });
    ASSERT_EQ(refusalOf(nowhere), Code::NotFound);
    EXPECT_EQ(nowhere.error().text("what"), "machine");
    EXPECT_EQ(refused(cutting(job, PieceRole::Whole, metres(5))), Code::NotFound);
    EXPECT_EQ(read([](Transaction& t) { return jobCard(t, JobId::of(999'999), std::nullopt); }).error().code(),
              Code::NotFound);
}

TEST_P(Bench, ACutBelongsToAJobOnTheMachine) {
    EXPECT_EQ(refused(cutting(job, PieceRole::Mains, metres(6.2))), Code::WrongState);
}

TEST_P(Bench, ConfirmingTwiceChargesOnce) {
    ASSERT_TRUE(take(job));
    const ConfirmCut command = cutting(job, PieceRole::Mains, metres(6.2));
    ASSERT_TRUE(cut(command));
    const std::size_t before = factsOf(job);
    const auto again = cut(command);
    ASSERT_TRUE(again.has_value());
    EXPECT_TRUE(again->already);
    EXPECT_EQ(again->lot->tag, "K-2");
    EXPECT_EQ(factsOf(job), before);
    // also after the job went on
    ASSERT_TRUE(cut(cutting(job, PieceRole::Crosses, metres(5.6))));
    ASSERT_TRUE(finish(job, asked));
    EXPECT_TRUE(cut(command)->already);

    ConfirmCut longer = command;
    longer.length = metres(6.25);
    const auto other = cut(longer);
    ASSERT_EQ(refusalOf(other), Code::AlreadyCut);
    EXPECT_EQ(other.error().number("lengthMm"), 6200);
    EXPECT_EQ(other.error().text("lot"), "K-2");
    ConfirmCut elsewhere = command;
    elsewhere.lot = lot("K-4").id;
    EXPECT_EQ(refused(elsewhere), Code::AlreadyCut);
}

TEST_P(Bench, ALengthMustBeOne) {
    ASSERT_TRUE(take(job));
    EXPECT_EQ(refused(cutting(job, PieceRole::Mains, metres(0))), Code::OutOfRange);
    EXPECT_EQ(refused(cutting(job, PieceRole::Mains, metres(0) - metres(1))), Code::OutOfRange);
    ConfirmCut command = cutting(job, PieceRole::Mains, metres(6.2));
    command.measuredLeft = metres(0) - metres(1);
    EXPECT_EQ(refused(command), Code::OutOfRange);
    command.measuredLeft = metres(1001);
    EXPECT_EQ(refused(command), Code::OutOfRange);
}

TEST_P(Bench, TheBookIsMeasuredBeforeItIsExceeded) {
    ASSERT_TRUE(take(job));
    ConfirmCut command = cutting(job, PieceRole::Mains, metres(6.5));
    const auto first = cut(command);
    ASSERT_EQ(refusalOf(first), Code::MeasureFirst);
    EXPECT_EQ(first.error().text("lot"), "K-2");
    EXPECT_EQ(first.error().number("lengthMm"), 6400);
    EXPECT_EQ(first.error().number("wantedMm"), 6500);
    command.measuredLeft = metres(6.45);
    EXPECT_EQ(refused(command), Code::NotEnoughString);
    EXPECT_EQ(lot("K-2").length, metres(6.4)) << "the correction went with the refusal";
    command.measuredLeft = metres(6.6);
    const auto done = cut(command);
    ASSERT_TRUE(done.has_value());
    EXPECT_EQ(done->corrected, metres(0.2));
    EXPECT_EQ(lot("K-2").length, metres(0.1));
    EXPECT_TRUE(lot("K-2").isOpen());
}

TEST_P(Bench, AnotherLotServesWhenStringAndOwnerFit) {
    ASSERT_TRUE(take(job));
    ConfirmCut command = cutting(job, PieceRole::Mains, metres(6.2));
    command.lot = lot("L-3").id;
    EXPECT_EQ(refused(command), Code::WrongLot);
    command.lot = LotId::of(999'999);
    EXPECT_EQ(refused(command), Code::NotFound);
    const auto stranger = receive(delivery("K", "Petra 1", metres(22), personCalled("Lindobi").customer.id));
    command.lot = stranger->id;
    EXPECT_EQ(refused(command), Code::WrongLot);
    ASSERT_TRUE(correct("K-2", metres(0)));
    command.lot = lot("K-2").id;
    EXPECT_EQ(refused(command), Code::LotClosed);
    command.lot = lot("K-4").id;
    const auto done = cut(command);
    ASSERT_TRUE(done.has_value());
    EXPECT_EQ(done->lot->length, metres(193.8));
    EXPECT_FALSE(done->lot->sealed);
}

TEST_P(Bench, WhoPaysForTheShopsStringKeepsTheirOwn) {
    ASSERT_TRUE(receive(delivery("L", "Petra 1", metres(22), personCalled("Lindobi").customer.id)));
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const Job paysForString = logged(racket, draftFor(racket, "L", "L", "52", "50"), "shop's string");
    ASSERT_TRUE(take(*paysForString.id));
    ConfirmCut command = cutting(*paysForString.id, PieceRole::Whole, metres(10.8));
    command.lot = lot("Petra 1").id;
    EXPECT_EQ(refused(command), Code::WrongLot);
    EXPECT_EQ(lot("Petra 1").length, metres(22));

    IntakeDraft draft = draftFor(racketOf("Lindobi", "Aldermoor 98", "B"), "L", "L", "52", "50");
    draft.mains.source = PieceSource::CustomersLot;
    const Job own = logged(racketOf("Lindobi", "Aldermoor 98", "B"), draft, "own reel");
    ASSERT_TRUE(take(*own.id));
    EXPECT_EQ(cut(cutting(*own.id, PieceRole::Whole, metres(10.8)))->lot->length, metres(11.2));
}

TEST_P(Bench, APlanThatALotCannotHoldAnyMoreMovesUnlessItIsPinned) {
    // K-2 was planned for the mains; somebody finds less on it
    ASSERT_TRUE(correct("K-2", metres(6.0)));
    EXPECT_EQ(card(job).pieces[0].lot->tag, "K-4") << "K-7 is spoken for";
    // L-3: three jobs wait for 32.4 m, and these crosses; the latest promises give way
    ASSERT_TRUE(correct("L-3", metres(11)));
    const LotId l3 = *lot("L-3").id;
    int placed = 0;
    for (const PlannedCut& planned : look([](Transaction& t) { return t.lots().plannedCuts(); })) {
        placed += planned.lot == l3 ? 1 : 0;
    }
    EXPECT_EQ(placed, 1);

    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "K", "K", "52", "50");
    draft.mains.lot = lot("K-4").id;
    const Job pinned = logged(racket, draft, "pinned");
    ASSERT_TRUE(correct("K-4", metres(5)));
    EXPECT_EQ(card(*pinned.id).pieces[0].lot->tag, "K-4");
    EXPECT_EQ(card(*pinned.id).pieces[0].fit, Fit::DoesNotFit);
}

TEST_P(Bench, ACutFromALotThatOthersWaitForMovesThem) {
    // K-7 holds 60 m and five jobs wait for 56 m of it; these mains come off it all the same
    letGoOf("K-7");
    ASSERT_TRUE(take(job));
    ConfirmCut command = cutting(job, PieceRole::Mains, metres(6.2));
    command.lot = lot("K-7").id;
    ASSERT_TRUE(cut(command));
    const LotId k7 = *lot("K-7").id;
    const LotId k4 = *lot("K-4").id;
    Length onK7 = metres(0);
    Length onK4 = metres(0);
    for (const PlannedCut& planned : look([](Transaction& t) { return t.lots().plannedCuts(); })) {
        onK7 += planned.lot == k7 ? planned.length : metres(0);
        onK4 += planned.lot == k4 ? planned.length : metres(0);
    }
    EXPECT_EQ(onK7 + onK4, metres(56)) << "nobody is left without";
    EXPECT_LE(onK7, metres(53.8));
    EXPECT_GT(onK4, metres(0));
}

TEST_P(Bench, ACutFromALotThatOthersInsistOnMovesNobody) {
    ASSERT_TRUE(take(job));
    ConfirmCut command = cutting(job, PieceRole::Mains, metres(6.2));
    command.lot = lot("K-7").id;
    ASSERT_TRUE(cut(command));
    const Lot k7 = lot("K-7");
    for (const WaitingCut& waiting : look([&](Transaction& t) { return t.lots().waitingCuts(k7.article); })) {
        EXPECT_EQ(waiting.lot, k7.id);
        EXPECT_TRUE(waiting.pinned);
    }
}

TEST_P(Bench, ALengthIsLostOnceAndOnlyWhenItWasCut) {
    EXPECT_EQ(refusalOf(lose(job, PieceRole::Mains, 1, LostReason::Kinked)), Code::NotCut);
    ASSERT_TRUE(take(job));
    ASSERT_TRUE(cut(cutting(job, PieceRole::Mains, metres(6.2))));
    const auto lost = lose(job, PieceRole::Mains, 1, LostReason::Kinked);
    ASSERT_TRUE(lost.has_value());
    EXPECT_EQ(lost->pieces[0].planned, metres(6.2)) << "a kink says nothing about the length";
    EXPECT_EQ(lost->pieces[0].attempts.size(), 2U);
    const auto again = lose(job, PieceRole::Mains, 1, LostReason::Kinked);
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->pieces[0].attempts.size(), 2U);
    EXPECT_EQ(refusalOf(lose(job, PieceRole::Mains, 1, LostReason::Snapped)), Code::StaleAttempt);
    EXPECT_EQ(refusalOf(lose(job, PieceRole::Mains, 3, LostReason::Kinked)), Code::StaleAttempt);
    EXPECT_EQ(refused(cutting(job, PieceRole::Mains, metres(6.2), 1)), Code::StaleAttempt);
    EXPECT_EQ(card(job).pieces[0].lot->tag, "K-4") << "what is left on K-2 is too short";
    EXPECT_EQ(refusalOf(lose(job, PieceRole::Mains, 2, LostReason::Kinked)), Code::NotCut);
    ASSERT_TRUE(cut(cutting(job, PieceRole::Mains, metres(6.2), 2)));
    ASSERT_TRUE(cut(cutting(job, PieceRole::Crosses, metres(5.6))));
    ASSERT_TRUE(finish(job, asked));
    EXPECT_EQ(refusalOf(lose(job, PieceRole::Crosses, 1, LostReason::Kinked)), Code::WrongState);
}

TEST_P(Bench, FinishingWantsEveryPieceCutAndHappensOnce) {
    EXPECT_EQ(refusalOf(finish(job, asked)), Code::WrongState);
    ASSERT_TRUE(take(job));
    ASSERT_TRUE(cut(cutting(job, PieceRole::Mains, metres(6.2))));
    const auto early = finish(job, asked);
    ASSERT_EQ(refusalOf(early), Code::NotCut);
    EXPECT_EQ(early.error().text("piece"), "crosses");
    ASSERT_TRUE(cut(cutting(job, PieceRole::Crosses, metres(5.6))));
    ASSERT_TRUE(finish(job, asked, "Bench A", "hard weave"));
    const auto again = finish(job, asked, "Bench A", "hard weave");
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->note, "hard weave");
    EXPECT_EQ(refusalOf(finish(job, {lb("49"), lb("52")})), Code::WrongState);
    EXPECT_EQ(card(job).stringer, "Bastian Quill");
    EXPECT_EQ(card(job).machine->name, "Bench A");
}

TEST_P(Bench, ACustomersOwnSetIsCutWithoutALot) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.mains.source = PieceSource::CustomersSet;
    const Job own = logged(racket, draft, "own set");
    ASSERT_TRUE(take(*own.id));
    EXPECT_EQ(card(*own.id).pieces[0].fit, Fit::Fits);
    const std::size_t before = factsOf(job);
    const ConfirmCut command = cutting(*own.id, PieceRole::Whole, metres(11));
    const auto done = cut(command);
    ASSERT_TRUE(done.has_value());
    EXPECT_FALSE(done->lot.has_value());
    EXPECT_TRUE(done->job.pieces[0].isCut());
    EXPECT_TRUE(cut(command)->already);
    EXPECT_EQ(factsOf(job), before);
    EXPECT_TRUE(finish(*own.id, own.asked));
}

TEST_P(Bench, APieceWithoutALotAsksForOne) {
    ASSERT_TRUE(correct("L-3", metres(0)));
    ASSERT_TRUE(take(job));
    EXPECT_FALSE(card(job).pieces[1].lot.has_value());
    EXPECT_EQ(refused(cutting(job, PieceRole::Crosses, metres(5.6))), Code::NoLot);
}

} // namespace
} // namespace rw::desk::test
