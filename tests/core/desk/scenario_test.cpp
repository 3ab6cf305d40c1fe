// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/running_short.h"
#include "tests/core/desk/demo_fixture.h"

#include <gmock/gmock.h>

// The days of Harbour Lane Strings, as the use cases tell them.
namespace rw::desk::test {
namespace {

using Scenario = DemoEverywhere;
IN_MEMORY_AND_ON_BOTH_ENGINES(Scenario);

TEST_P(Scenario, SameAsLastTimeTwoPoundsLooser) {
    const PersonFound petra = personCalled("0417");
    EXPECT_EQ(petra.customer.name, "Petra Lindobi");
    const RacketSummary a = racketOf("0417", "Aldermoor 98", "A");
    const RacketSummary b = racketOf("0417", "Aldermoor 98", "B");
    ASSERT_TRUE(a.lastJob && b.lastJob);
    EXPECT_EQ(a.lastJob->asked, (TensionPair{lb("54"), lb("52")}));
    EXPECT_EQ(a.lastJob->strung->tensions, a.lastJob->asked);
    EXPECT_EQ(a.lastJob->strung->machine, *machine("Bench A").id);
    EXPECT_EQ(a.lastJob->note, "felt a touch stiff");
    const CivilDate strung(std::chrono::floor<std::chrono::days>(a.lastJob->strung->by.at));
    EXPECT_EQ(strung, std::chrono::year(2026) / 1 / 20);
    EXPECT_EQ(b.lastJob->asked, (TensionPair{lb("56"), lb("54")}));

    const Holding before = [&] {
        const auto strings = read([](Transaction& t) { return shelf(t); });
        return std::ranges::find(*strings, "L", [](const ShelfString& s) { return s.article.code; })->holding;
    }();
    EXPECT_EQ(before.left, metres(48.7));
    EXPECT_EQ(before.promised, metres(32.4));

    const IntakeDraft draft = draftFor(a, "L", "L", "52", "50");
    const auto shown = preview(draft);
    ASSERT_TRUE(shown.has_value());
    ASSERT_EQ(shown->pieces.size(), 1U);
    const PieceProposal& piece = shown->pieces.front();
    EXPECT_EQ(piece.role, PieceRole::Whole);
    EXPECT_EQ(piece.cut, metres(10.8));
    EXPECT_EQ(piece.cutFrom, CutFrom::LastTime);
    EXPECT_EQ(piece.lot->tag, "L-3");
    EXPECT_EQ(piece.holding.free(), metres(16.3));
    EXPECT_EQ(piece.freeAfter, metres(5.5));
    EXPECT_EQ(piece.leavesOnLot, metres(5.5));
    EXPECT_EQ(shown->quote.total, pounds(3000));
    EXPECT_EQ(shown->plan.route, "plain-1");
    EXPECT_EQ(shown->shortSide->measure, metres(3.0));
    EXPECT_EQ(shown->shortSide->topCrosses, 1);
    EXPECT_EQ(shown->shortSide->from, SideFrom::LastTime);
    EXPECT_FALSE(shown->aboveMarked);

    const Job job = logged(a, draft, "petra a");
    const JobCard onB = card(*job.id, machine("Bench B").id);
    EXPECT_NEAR(onB.mains->exact, 23.59, 0.005);
    EXPECT_EQ(onB.mains->below.text(), "23.5 kg");
    EXPECT_EQ(onB.mains->above.text(), "24 kg");
    EXPECT_NEAR(onB.mains->below.in(TensionUnit::Pound), 51.8, 0.05);
    EXPECT_NEAR(onB.mains->above.in(TensionUnit::Pound), 52.9, 0.05);

    ASSERT_TRUE(take(*job.id, "Bench B"));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(10.8))));
    const TensionPair set{*Tension::tryParse("23.5", TensionUnit::Kilogram),
                          *Tension::tryParse("22.5", TensionUnit::Kilogram)};
    ASSERT_TRUE(finish(*job.id, set, "Bench B"));
    const auto history = read([&](Transaction& t) { return historyOfRacket(t, *a.racket.id); });
    EXPECT_EQ(history->front().job.asked, (TensionPair{lb("52"), lb("50")}));
    EXPECT_EQ(history->front().job.strung->tensions, set);
    EXPECT_EQ(history->front().machine, "Bench B");
    EXPECT_EQ(lot("L-3").length, metres(37.9));
}

TEST_P(Scenario, HybridWithMainsFromAReelEnd) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const IntakeDraft draft = draftFor(racket, "K", "L", "50", "52");
    const auto shown = preview(draft);
    ASSERT_TRUE(shown.has_value());
    ASSERT_EQ(shown->pieces.size(), 2U);
    EXPECT_EQ(shown->plan.method, Method::TwoPiece);
    EXPECT_EQ(shown->pieces[0].cut, metres(6.2));
    EXPECT_EQ(shown->pieces[0].cutFrom, CutFrom::UsualCut);
    EXPECT_EQ(shown->pieces[0].lot->tag, "K-2");
    EXPECT_EQ(shown->pieces[0].fit, Fit::FitsIfBookIsRight);
    EXPECT_EQ(shown->pieces[0].leavesOnLot, metres(0.2));
    EXPECT_EQ(shown->pieces[1].cut, metres(5.6));
    EXPECT_EQ(shown->pieces[1].lot->tag, "L-3");
    EXPECT_EQ(shown->quote.total, pounds(2850));
    EXPECT_FALSE(shown->shortSide.has_value());

    const Job job = logged(racket, draft, "tomas");
    EXPECT_EQ(job.asked, (TensionPair{lb("50"), lb("52")}));
    ASSERT_TRUE(take(*job.id));
    EXPECT_EQ(card(*job.id).pieces[0].fit, Fit::FitsIfBookIsRight);

    ConfirmCut mains = cutting(*job.id, PieceRole::Mains, metres(6.35));
    mains.measuredLeft = metres(6.35);
    const auto done = cut(mains);
    ASSERT_TRUE(done.has_value());
    EXPECT_EQ(done->corrected, metres(0) - metres(0.05));
    EXPECT_FALSE(done->lot->isOpen());
    EXPECT_EQ(lot("K-2").length, metres(0));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Crosses, metres(5.6))));
    EXPECT_EQ(lot("L-3").length, metres(43.1));
    ASSERT_TRUE(finish(*job.id, job.asked));

    // All there was says nothing about what the frame needs; what was enough of the other does.
    const auto next = preview(draft);
    EXPECT_EQ(next->pieces[0].cut, metres(6.2));
    EXPECT_EQ(next->pieces[0].cutFrom, CutFrom::UsualCut);
    EXPECT_EQ(next->pieces[0].lot->tag, "K-4");
    EXPECT_EQ(next->pieces[1].cutFrom, CutFrom::LastTime);
}

TEST_P(Scenario, SquashInOnePieceAndAFrameThatForcesItsSide) {
    const auto strings = read([](Transaction& t) { return shelfAhead(t, kNow); });
    const auto tarnweave = std::ranges::find(*strings, "T", [](const ShelfString& s) { return s.article.code; });
    EXPECT_EQ(tarnweave->holding.left, metres(27.6));
    EXPECT_EQ(tarnweave->perJob, metres(9.3));
    EXPECT_EQ(tarnweave->wholeJobsFree, 2);
    EXPECT_EQ(tarnweave->lots.front().whole.jobs, 2);
    EXPECT_EQ(tarnweave->lots.front().whole.nextShortBy, metres(0.3));
    EXPECT_TRUE(tarnweave->runningShort()) << "two jobs do not last until the next parcel";

    const RacketSummary a = racketOf("Penhallow", "Corran Drop 500", "A");
    const RacketSummary b = racketOf("Penhallow", "Corran Drop 500", "B");
    IntakeDraft draft = draftFor(a, "T", "T", "26", "26");
    draft.shortSide = Side::Right;
    const Job first = logged(a, draft, "dario a");
    const JobCard cardA = card(*first.id);
    EXPECT_EQ(cardA.pieces.front().piece.planned, metres(9.3));
    EXPECT_EQ(cardA.shortSide->measure, metres(2.9));
    EXPECT_NEAR(cardA.shortSide->headLengths, 8, 0.25); // said in halves: 8
    EXPECT_EQ(cardA.shortSide->topCrosses, 2);
    EXPECT_EQ(cardA.shortSide->side, Side::Right);
    EXPECT_EQ(cardA.shortSide->mountingMark, "butt-cap logo up");
    EXPECT_EQ(cardA.shortSide->from, SideFrom::Chosen);

    const Job second = logged(b, draftFor(b, "T", "T", "26", "26"), "dario b");
    const JobCard cardB = card(*second.id);
    EXPECT_EQ(cardB.shortSide->side, Side::Right);
    EXPECT_EQ(cardB.shortSide->from, SideFrom::Twin);
    EXPECT_EQ(cardB.shortSide->because, "A");
    EXPECT_FALSE(cardB.shortSide->againstChoice);
    EXPECT_EQ(card(*first.id).shortSide->from, SideFrom::Chosen) << "a later twin is no reason";

    IntakeDraft tarn = draftFor(racketOf("Brockwell", "Tarn Ridge 100"), "K", "K", "54", "52");
    tarn.method = Method::OnePiece;
    const auto shown = preview(tarn);
    ASSERT_TRUE(shown.has_value());
    EXPECT_EQ(shown->pieces.front().cut, metres(11.7));
    EXPECT_EQ(shown->shortSide->side, Side::Right);
    EXPECT_EQ(shown->shortSide->from, SideFrom::Frame);
    EXPECT_EQ(shown->shortSide->because, "groove in the strip");
    EXPECT_EQ(shown->shortSide->mountingMark, "butt-cap logo up");
    EXPECT_FALSE(shown->shortSide->againstChoice);
    tarn.shortSide = Side::Left;
    const auto insisted = preview(tarn);
    EXPECT_EQ(insisted->shortSide->side, Side::Right);
    EXPECT_TRUE(insisted->shortSide->againstChoice);
}

TEST_P(Scenario, AboveTheMarkedMaximum) {
    const RacketSummary racket = racketOf("Hallerby", "Pellow Feather");
    const auto shown = preview(draftFor(racket, "W", "W", "28", "30"));
    ASSERT_TRUE(shown.has_value());
    EXPECT_TRUE(shown->aboveMarked);
    EXPECT_EQ(shown->highestMarked, lb("26"));
    EXPECT_FALSE(preview(draftFor(racket, "W", "W", "24", "26"))->aboveMarked);
}

TEST_P(Scenario, ComingUpShort) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const IntakeDraft draft = draftFor(racket, "K", "L", "50", "52");
    const Job job = logged(racket, draft, "tomas");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Mains, metres(6.2))));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Crosses, metres(5.6))));
    const auto lost = lose(*job.id, PieceRole::Crosses, 1, LostReason::CameShort);
    ASSERT_TRUE(lost.has_value());
    EXPECT_EQ(lost->pieces[1].current().number, 2);
    EXPECT_EQ(lost->pieces[1].planned, metres(5.75)) << "a fiftieth more, on a step of the tape";
    EXPECT_EQ(card(*job.id).pieces[1].lot->tag, "L-3");
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Crosses, metres(5.75), 2)));
    EXPECT_EQ(lot("L-3").length, metres(48.7) - metres(5.6) - metres(5.75));
    const auto strung = finish(*job.id, job.asked);
    ASSERT_TRUE(strung.has_value());
    EXPECT_EQ(strung->total, pounds(2850)) << "the customer pays once";

    EXPECT_EQ(preview(draft)->pieces[1].cut, metres(5.75)) << "as last time, when it was enough";
    const RacketSummary other = racketOf("Arberley", "Aldermoor 98");
    IntakeDraft others = draftFor(other, "L", "L", "52", "50");
    others.method = Method::TwoPiece;
    const auto next = preview(others);
    EXPECT_EQ(next->pieces[1].cutFrom, CutFrom::LastTime) << "his own crosses were enough";
    const RacketSummary fresh = racketOf("Lindobi", "Aldermoor 98", "A");
    others = draftFor(fresh, "L", "L", "52", "50");
    others.method = Method::TwoPiece;
    const auto longer = preview(others);
    EXPECT_EQ(longer->pieces[1].cut, metres(5.75)) << "what held on this frame, whoever's it is";
    EXPECT_EQ(longer->pieces[1].cameShortAt, metres(5.6));
    EXPECT_EQ(longer->pieces[0].cut, metres(6.2));
}

TEST_P(Scenario, WhatThePowerCutFinds) {
    const auto id = look([](Transaction& t) { return t.jobs().byNumber(2120); });
    ASSERT_TRUE(id.has_value());
    EXPECT_EQ(lot("K-7").length, metres(60.0));
    const JobCard before = card(*id);
    EXPECT_EQ(before.pieces.front().lot->tag, "K-7");
    EXPECT_EQ(before.pieces.front().piece.planned, metres(11.2));
    ASSERT_TRUE(take(*id));
    const ConfirmCut command = cutting(*id, PieceRole::Whole, metres(11.2));
    ASSERT_TRUE(cut(command));
    EXPECT_EQ(lot("K-7").length, metres(48.8));
    const auto again = cut(command);
    ASSERT_TRUE(again.has_value());
    EXPECT_TRUE(again->already);
    EXPECT_EQ(lot("K-7").length, metres(48.8));
    EXPECT_TRUE(ledger().check().empty());
}

} // namespace
} // namespace rw::desk::test
