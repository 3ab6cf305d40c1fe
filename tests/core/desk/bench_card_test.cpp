// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/undo.h"
#include "tests/core/desk/demo_fixture.h"

// What the card tells beside racket and string: what was agreed, what changed, how far it is, who has it.
namespace rw::desk::test {
namespace {

class BenchCard : public DemoEverywhere {
protected:
    Job feather(std::string_view mains, std::string_view crosses, std::string_view key = "feather") {
        const RacketSummary racket = racketOf("Hallerby", "Pellow Feather");
        return logged(racket, draftFor(racket, "W", "W", mains, crosses), key);
    }
    Result<Job> move(JobId job, BenchStep seen, BenchStep wanted) {
        const MoveStep command{job, seen, wanted, by()};
        return write([&](Transaction& t) { return moveStep(t, command); });
    }
    Result<Job> change(JobId job, const TensionPair& seen, const TensionPair& wanted) {
        const ChangeAsked command{job, seen, wanted, by("counter")};
        return write([&](Transaction& t) { return changeAsked(t, command); });
    }
    void cutBoth(JobId job) {
        ASSERT_TRUE(cut(cutting(job, PieceRole::Mains, metres(5.5))));
        ASSERT_TRUE(cut(cutting(job, PieceRole::Crosses, metres(4.4))));
    }
    By ines(Instant at) {
        return {*look([](Transaction& t) { return t.shop().staff(); })[2].id, "bench", at};
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(BenchCard);

TEST_P(BenchCard, WithoutAYesItIsNotAgreedAndNothingIsBlocked) {
    const Job job = feather("28", "30");
    ASSERT_TRUE(card(*job.id).above);
    EXPECT_EQ(card(*job.id).above->above, (AboveMarked{lb("30"), lb("26")}));
    EXPECT_FALSE(card(*job.id).above->consent);
    ASSERT_TRUE(take(*job.id));
    cutBoth(*job.id);
    ASSERT_TRUE(finish(*job.id, job.asked)) << "the stringer decides";
    EXPECT_TRUE(card(*job.id).above);
    EXPECT_FALSE(card(*feather("24", "26", "within").id).above);
}

TEST_P(BenchCard, AYesIsToldWithWhoAgreedAndWhoToldThem) {
    const Job job = feather("28", "30");
    const Agree command{*job.id, "Jun's coach", "", by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return agreeAboveMarked(t, command); }));
    const auto above = card(*job.id).above;
    ASSERT_TRUE(above && above->consent);
    EXPECT_EQ(above->consent->agreedBy, "Jun's coach");
    EXPECT_EQ(above->toldBy, "Bastian Quill");
    ASSERT_TRUE(change(*job.id, job.asked, {lb("28"), lb("31")}));
    EXPECT_FALSE(card(*job.id).above->consent) << "a pound more is not agreed to";
    EXPECT_FALSE(card(*feather("28", "30", "the next").id).above->consent) << "a yes is of one job";
}

TEST_P(BenchCard, AChangeWaitsForANodAndSoDoesFinishing) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(take(*job.id));
    cutBoth(*job.id);
    EXPECT_FALSE(card(*job.id).change);
    ASSERT_TRUE(change(*job.id, job.asked, {lb("23"), lb("24")}));
    ASSERT_TRUE(change(*job.id, {lb("23"), lb("24")}, {lb("22"), lb("24")}));
    const JobCard shown = card(*job.id);
    ASSERT_TRUE(shown.change);
    EXPECT_EQ(shown.change->before, job.asked) << "what the bench believed, whatever was said in between";
    EXPECT_EQ(shown.change->by, "Bastian Quill");
    EXPECT_EQ(shown.job.asked, (TensionPair{lb("22"), lb("24")}));

    const auto early = finish(*job.id, job.asked);
    ASSERT_EQ(refusalOf(early), Code::ChangedMeanwhile);
    EXPECT_EQ(early.error().text("mine"), "24 lb / 25 lb");
    EXPECT_EQ(early.error().text("theirs"), "22 lb / 24 lb");
    EXPECT_EQ(early.error().number("nod"), job.number);
    const Nod nod{*job.id, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return nodToChanges(t, nod); }));
    EXPECT_FALSE(card(*job.id).change);
    EXPECT_TRUE(finish(*job.id, {lb("22"), lb("24")}));
}

TEST_P(BenchCard, AStepStaysWithTheJobWhoeverTakesItUp) {
    const Job job = feather("24", "25");
    EXPECT_EQ(job.benchStep, BenchStep::LookOver);
    EXPECT_EQ(refusalOf(move(*job.id, BenchStep::LookOver, BenchStep::Mains)), Code::WrongState);
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(move(*job.id, BenchStep::LookOver, BenchStep::Mains));
    EXPECT_EQ(move(*job.id, BenchStep::Mains, BenchStep::Crosses)->benchStep, BenchStep::Crosses);
    const PutDown down{*job.id, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return putDownJob(t, down); }));
    EXPECT_EQ(card(*job.id).job.benchStep, BenchStep::Crosses);
    const TakeJob up{*job.id, *machine("Bench B").id, ines(kNow + std::chrono::minutes(20))};
    EXPECT_EQ(write([&](Transaction& t) { return takeJob(t, up); })->benchStep, BenchStep::Crosses);
    EXPECT_EQ(move(*job.id, BenchStep::Crosses, BenchStep::Mains)->benchStep, BenchStep::Mains) << "and back";
    cutBoth(*job.id);
    ASSERT_TRUE(finish(*job.id, job.asked, "Bench B"));
    EXPECT_EQ(card(*job.id).job.benchStep, BenchStep::Finish);
}

TEST_P(BenchCard, OfTwoStationsThatMoveItTheSecondSeesBoth) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(move(*job.id, BenchStep::LookOver, BenchStep::Mains));
    EXPECT_TRUE(move(*job.id, BenchStep::LookOver, BenchStep::Mains)) << "both wanted the same";
    const auto second = move(*job.id, BenchStep::LookOver, BenchStep::Crosses);
    ASSERT_EQ(refusalOf(second), Code::ChangedMeanwhile);
    EXPECT_EQ(second.error().text("what"), "step");
    EXPECT_EQ(second.error().text("mine"), "crosses");
    EXPECT_EQ(second.error().text("theirs"), "mains");
}

TEST_P(BenchCard, TwoStationsThatChangeDifferentFactsBothSucceed) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(change(*job.id, job.asked, {lb("23"), lb("24")}));     // the counter, on the phone
    ASSERT_TRUE(move(*job.id, BenchStep::LookOver, BenchStep::Mains)); // the bench, which has not seen it
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Mains, metres(5.5)))); // and another one there
    const Job both = card(*job.id).job;
    EXPECT_EQ(both.asked, (TensionPair{lb("23"), lb("24")}));
    EXPECT_EQ(both.benchStep, BenchStep::Mains);
    EXPECT_TRUE(both.pieces.front().isCut());
}

TEST_P(BenchCard, WhoHasItAndWhoHadIt) {
    const Job job = feather("24", "25");
    EXPECT_FALSE(card(*job.id).hands);
    ASSERT_TRUE(take(*job.id));
    const auto lying = card(*job.id).hands;
    ASSERT_TRUE(lying);
    EXPECT_EQ(lying->name, "Bastian Quill");
    EXPECT_EQ(lying->machine, "Bench A");
    EXPECT_EQ(lying->since, kNow);
    EXPECT_TRUE(lying->lies);
    const Instant later = kNow + std::chrono::minutes(30);
    const PutDown down{*job.id, ines(later)};
    ASSERT_TRUE(write([&](Transaction& t) { return putDownJob(t, down); }));
    const auto had = card(*job.id).hands;
    ASSERT_TRUE(had);
    EXPECT_EQ(had->name, "Bastian Quill") << "who had it, whoever put it down";
    EXPECT_EQ(had->since, later);
    EXPECT_FALSE(had->lies);
    ASSERT_TRUE(take(*job.id));
    cutBoth(*job.id);
    ASSERT_TRUE(finish(*job.id, job.asked));
    EXPECT_FALSE(card(*job.id).hands);
}

TEST_P(BenchCard, ACutThatWasNeverMadeIsNoLostLength) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(take(*job.id));
    cutBoth(*job.id);
    const TakeBackCut command{*job.id, PieceRole::Mains, 1, by()};
    const auto back = write([&](Transaction& t) { return takeBackCut(t, command); });
    ASSERT_TRUE(back);
    EXPECT_TRUE(back->pieces[0].attempts[0].cut->takenBack);
    EXPECT_FALSE(back->pieces[1].current().cut->takenBack);
}

TEST_P(BenchCard, HowLongTheCustomersOwnSetIsStaysWithThePiece) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.mains.source = PieceSource::CustomersSet;
    draft.mains.setLength = metres(12.2);
    const Job own = logged(racket, draft, "own set");
    EXPECT_EQ(card(*own.id).pieces.front().piece.setLength, metres(12.2));
    EXPECT_EQ(logged(racket, draft, "own set").id, own.id) << "the same wish again";
    EXPECT_EQ(card(*own.id).pieces.front().fit, Fit::Fits);
    LogJob other = logging(racket, draft, "own set");
    other.draft.mains.setLength = metres(12);
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return logJob(t, other); })), Code::ChangedMeanwhile);
    other.requestKey = "none at all";
    other.draft.mains.setLength = metres(0);
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return logJob(t, other); })), Code::OutOfRange);
}

TEST_P(BenchCard, ACustomersSetThatIsTooShortForWhatIsPlannedIsSaid) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.method = Method::TwoPiece;
    draft.mains.source = PieceSource::CustomersSet;
    draft.mains.setLength = metres(9);
    const Job own = logged(racket, draft, "short set");
    const JobCard shown = card(*own.id);
    ASSERT_EQ(shown.pieces.size(), 2U);
    const Length planned = own.pieces[0].planned + own.pieces[1].planned;
    for (const CardPiece& piece : shown.pieces) {
        EXPECT_EQ(piece.fit, Fit::DoesNotFit);
        EXPECT_EQ(piece.leavesOnLot, metres(9) - planned) << "both come from the one set";
    }
}

} // namespace
} // namespace rw::desk::test
