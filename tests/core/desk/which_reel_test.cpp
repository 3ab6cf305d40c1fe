// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"
#include "core/desk/queue_plans.h"
#include "core/desk/remnant_value_of.h"
#include "tests/core/desk/demo_fixture.h"

#include <gmock/gmock.h>

// Which reel a piece comes off: at the counter, in the queue, at the machine.
namespace rw::desk::test {
namespace {

using Kind = stock::QueueReason::Kind;

class WhichReel : public DemoEverywhere {
protected:
    std::vector<double> takesOff(std::string_view code) {
        const StringArticleId article = *string(code).id;
        std::vector<double> takes;
        for (const Length take : look([&](Transaction& t) { return t.lots().lastTakesOff(article, 200); })) {
            takes.push_back(take.metres());
        }
        return takes;
    }
    std::string tagOf(const std::optional<LotId>& id) {
        return id ? look([&](Transaction& t) { return t.lots().get(*id)->tag; }) : std::string();
    }
    std::string plannedOff(JobId job, PieceRole role = PieceRole::Whole) {
        const Job now = *look([&](Transaction& t) { return t.jobs().get(job); });
        return tagOf(std::ranges::find(now.pieces, role, &JobPiece::role)->lot);
    }
    std::string plannedOff(std::int64_t number, PieceRole role = PieceRole::Whole) {
        return plannedOff(*look([&](Transaction& t) { return t.jobs().byNumber(number); }), role);
    }
    JobId jobNumbered(std::int64_t number) {
        return *look([&](Transaction& t) { return t.jobs().byNumber(number); });
    }
    std::optional<std::string> lastCutOn(std::string_view bench) {
        const MachineId id = *machine(bench).id;
        const auto found = look([&](Transaction& t) { return t.lots().lastCutOn(id); });
        return found ? std::optional(tagOf(found)) : std::nullopt;
    }
    /// A squash racket strung with T, which takes 9.3 m.
    Job squash(std::string_view person, std::string_view mark, std::string_view key) {
        const RacketSummary racket = racketOf(person, "Corran Drop 500", mark);
        return logged(racket, draftFor(racket, "T", "T", "26", "26"), key);
    }
    /// Strings a racket off a reel at a bench, so that the reel lies there.
    void string(std::string_view reel, const RacketSummary& racket, IntakeDraft draft, std::string_view bench) {
        draft.mains.lot = lot(reel).id;
        const Job job = logged(racket, draft, "strung off " + std::string(reel));
        ASSERT_TRUE(take(*job.id, bench));
        for (const JobPiece& piece : job.pieces) {
            ASSERT_TRUE(cut(cutting(*job.id, piece.role, piece.planned)));
        }
        ASSERT_TRUE(finish(*job.id, job.asked, bench));
    }
    using DemoShop::string;
};
IN_MEMORY_AND_ON_BOTH_ENGINES(WhichReel);

// Derived from the jobs of the demo shop: what each took off one lot, the oldest first.
TEST_P(WhichReel, WhatAJobTakesOffOneLotIsWhatWillBeWanted) {
    EXPECT_THAT(takesOff("K"),
                testing::ElementsAre(11.2, 6.2, 11.8, 11.2, 11.2, 11.8, 11.2, 6.2, 11.8, 11.2, 11.2, 11.2));
    EXPECT_EQ(takesOff("T").size(), 7U) << "the length that came short is none";
    const auto squash = look([](Transaction& t) { return t.lots().lastTakesOff(Sport::Squash, 3); });
    EXPECT_EQ(squash, std::vector(3, metres(9.3)));
    EXPECT_EQ(look([](Transaction& t) { return t.lots().lastTakesOff(Sport::Tennis, 200).size(); }),
              takesOff("K").size() + takesOff("L").size());
}

TEST_P(WhichReel, TheQueueOfAStringIsInTheOrderOfPromises) {
    const StringArticleId l = *string("L").id;
    const auto waiting = look([&](Transaction& t) { return t.lots().waitingCuts(l); });
    ASSERT_EQ(waiting.size(), 3U);
    EXPECT_EQ(waiting[0].jobNumber, 2122);
    EXPECT_TRUE(waiting[0].begun) << "it lies on Bench A";
    EXPECT_EQ(waiting[1].jobNumber, 2123);
    EXPECT_FALSE(waiting[1].begun || waiting[1].pinned);
    EXPECT_EQ(waiting[2].length, metres(10.8));
    EXPECT_EQ(waiting[2].role, PieceRole::Whole);
    EXPECT_EQ(tagOf(waiting[2].lot), "L-3");
    const StringArticleId k = *string("K").id;
    EXPECT_TRUE(look([&](Transaction& t) { return t.lots().waitingCuts(k); }).front().pinned);
}

TEST_P(WhichReel, ANewReelIsOpenedRatherThanABadEndMade) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    const auto only = preview(draft)->pieces.front();
    EXPECT_EQ(only.lot->tag, "L-3");
    EXPECT_EQ(only.why.left->kind, Kind::LeavesBadEnd) << "5.5 m, where jobs take 10.8 m";
    EXPECT_FALSE(only.why.opens);

    ASSERT_TRUE(receive(delivery("L", "L-9", metres(200))));
    const auto offered = preview(draft)->pieces.front();
    EXPECT_EQ(offered.lot->tag, "L-9");
    EXPECT_TRUE(offered.why.opens);
    ASSERT_TRUE(offered.why.spared);
    EXPECT_EQ(offered.why.spared->tag, "L-3");
    EXPECT_GT(offered.why.spared->lostMm, stock::kWorthOpeningMm);
    EXPECT_EQ(offered.why.left->kind, Kind::LeavesPlenty);
    EXPECT_EQ(plannedOff(*logged(racket, draft, "petra").id), "L-9");
    EXPECT_EQ(plannedOff(2122), "L-3") << "the bench has it";
}

TEST_P(WhichReel, WhoHasNoStringGetsWhatComesInOrBecomesFree) {
    const Job first = squash("Penhallow", "A", "dario a");
    ASSERT_EQ(plannedOff(*squash("Penhallow", "B", "dario b").id), "T-1");
    const Job third = squash("Hollickstone", "", "bram");
    EXPECT_EQ(plannedOff(*third.id), "") << "9.0 m are left of T-1";
    const JobStep step{*first.id, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return withdrawJob(t, step); }));
    EXPECT_EQ(plannedOff(*third.id), "T-1");
    ASSERT_TRUE(write([&](Transaction& t) { return resumeJob(t, step); }));
    EXPECT_EQ(plannedOff(*first.id), "") << "its string went to somebody else";
    ASSERT_TRUE(receive(delivery("T", "T-2", metres(100))));
    EXPECT_EQ(plannedOff(*first.id), "T-2");
    EXPECT_TRUE(ledger().check().empty());
}

TEST_P(WhichReel, WhenThereIsNotEnoughTheEarlierPromiseKeepsItsString) {
    // three jobs wait for 10.8 m each of L-3, and one of them lies on a machine
    ASSERT_TRUE(correct("L-3", metres(22)));
    EXPECT_EQ(plannedOff(2122), "L-3");
    EXPECT_EQ(plannedOff(2123), "L-3");
    EXPECT_EQ(plannedOff(2126), "");
}

TEST_P(WhichReel, TheOneThatLiesOnTheMachineIsTakenBeforeOneThatIsAsGood) {
    ASSERT_TRUE(receive(delivery("W", "W-9", metres(200))));
    const RacketSummary wen = racketOf("Ashgrave", "Pellow Feather", "A");
    string("W-9", wen, draftFor(wen, "W", "W", "24", "26"), "Bench B");
    EXPECT_EQ(lastCutOn("Bench B"), "W-9");
    EXPECT_EQ(lastCutOn("Bench A"), "L-3");
    ASSERT_EQ(plannedOff(2124, PieceRole::Mains), "W-1");
    ASSERT_EQ(plannedOff(2124, PieceRole::Crosses), "W-1");
    ASSERT_TRUE(take(jobNumbered(2124), "Bench B"));
    EXPECT_EQ(plannedOff(2124, PieceRole::Mains), "W-9");
    EXPECT_EQ(plannedOff(2124, PieceRole::Crosses), "W-9") << "both off one reel";
    const JobCard there = card(jobNumbered(2124));
    EXPECT_TRUE(there.pieces[0].why.onTheMachine);
    EXPECT_FALSE(there.pieces[0].why.left) << "the crosses leave something else";
    EXPECT_EQ(there.pieces[1].why.left->kind, Kind::LeavesPlenty);
}

TEST_P(WhichReel, OnAnotherMachineTheReelStaysAsPlanned) {
    ASSERT_TRUE(receive(delivery("W", "W-9", metres(200))));
    const RacketSummary wen = racketOf("Ashgrave", "Pellow Feather", "A");
    string("W-9", wen, draftFor(wen, "W", "W", "24", "26"), "Bench B");
    ASSERT_TRUE(take(jobNumbered(2124), "Bench A"));
    EXPECT_EQ(plannedOff(2124, PieceRole::Mains), "W-1");
    EXPECT_FALSE(card(jobNumbered(2124)).pieces[0].why.onTheMachine);
}

TEST_P(WhichReel, TheOneOnTheMachineIsNotTakenWhenItLosesMore) {
    ASSERT_TRUE(receive(delivery("L", "L-9", metres(200))));
    ASSERT_TRUE(correct("L-3", metres(37.9)));
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const Job petra = logged(racket, draftFor(racket, "L", "L", "52", "50"), "petra");
    ASSERT_EQ(plannedOff(*petra.id), "L-9");
    ASSERT_TRUE(take(jobNumbered(2123), "Bench B"));
    ConfirmCut command = cutting(jobNumbered(2123), PieceRole::Whole, metres(10.8));
    command.lot = lot("L-3").id;
    ASSERT_TRUE(cut(command));
    ASSERT_EQ(lastCutOn("Bench B"), "L-3");
    ASSERT_EQ(plannedOff(2126), "L-9") << "so that L-3 has room: 16.3 m";
    const PutDown down{jobNumbered(2123), by()};
    ASSERT_TRUE(write([&](Transaction& t) { return putDownJob(t, down); }));
    ASSERT_TRUE(take(*petra.id, "Bench B"));
    EXPECT_EQ(plannedOff(*petra.id), "L-9") << "off L-3 it would leave a bad end";
}

TEST_P(WhichReel, WhatIsPinnedStaysWhateverIsBetter) {
    ASSERT_TRUE(receive(delivery("L", "L-9", metres(200))));
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.mains.lot = lot("L-3").id;
    const Job pinned = logged(racket, draft, "pinned");
    ASSERT_TRUE(correct("L-3", metres(48)));
    EXPECT_EQ(plannedOff(*pinned.id), "L-3");
    ASSERT_TRUE(take(*pinned.id, "Bench B"));
    EXPECT_EQ(plannedOff(*pinned.id), "L-3");
}

TEST_P(WhichReel, ThePlanOfTheWholeQueueIsToldWithItsReasons) {
    const auto plans = read([](Transaction& t) { return queuePlans(t, kNow, std::chrono::milliseconds(500)); });
    ASSERT_TRUE(plans);
    std::vector<std::string> codes;
    for (const QueuePlanOfString& plan : *plans) {
        codes.push_back(plan.article.code);
        EXPECT_TRUE(plan.proven) << plan.article.code;
        EXPECT_TRUE(plan.overfull.empty());
    }
    EXPECT_THAT(codes, testing::ElementsAre("K", "L", "W"));
    const QueuePlanOfString& k = plans->front();
    ASSERT_EQ(k.cuts.size(), 5U);
    ASSERT_EQ(k.reasons.size(), 1U);
    EXPECT_EQ(k.reasons[0].kind, Kind::LeavesScrap);
    EXPECT_EQ(k.reasons[0].leaves, metres(4));
    EXPECT_EQ(k.lots.at(*k.reasons[0].lot).tag, "K-7");

    ASSERT_TRUE(correct("K-7", metres(50)));
    const auto after = read([](Transaction& t) { return queuePlans(t, kNow, std::chrono::milliseconds(500)); });
    ASSERT_EQ(after->front().overfull.size(), 1U);
    EXPECT_EQ(after->front().overfull[0].tag, "K-7");
    EXPECT_EQ(after->front().overfull[0].by, metres(6));
}

TEST_P(WhichReel, WhatIsUsableLeavesOutWhatWillBeScrap) {
    const auto strings = read([](Transaction& t) { return shelf(t); });
    const auto of = [&](std::string_view code) {
        return *std::ranges::find(*strings, code, [](const ShelfString& s) { return s.article.code; });
    };
    const ShelfString t = of("T");
    const StringArticle article = t.article;
    const double lost = look([&](Transaction& l) { return remnantValueOf(l, article)->likelyLost(metres(27.6)); });
    EXPECT_NEAR(static_cast<double>(t.usable.millimetres()), 27'600 - lost, 1);
    EXPECT_LT(of("K").usable, of("K").holding.free()) << "4 m on K-7 are no string";
}

} // namespace
} // namespace rw::desk::test
