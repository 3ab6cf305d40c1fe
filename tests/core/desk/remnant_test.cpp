// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/set_end_aside.h"
#include "tests/core/desk/demo_fixture.h"

// An end that is too short for what was planned on it.
namespace rw::desk::test {
namespace {

class Remnant : public DemoEverywhere {
protected:
    void SetUp() override {
        DemoEverywhere::SetUp();
        const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
        job = *logged(racket, draftFor(racket, "K", "L", "50", "52"), "tomas").id;
    }
    Result<EndSetAside> setAside(std::string_view tag, Length measured, PieceRole role = PieceRole::Mains,
                                 int attempt = 1) {
        const SetEndAside command{job, role, attempt, *lot(tag).id, measured, metres(6.2), by()};
        return write([&](Transaction& t) { return setEndAside(t, command); });
    }
    JobId job = JobId::of(1);
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Remnant);

TEST_P(Remnant, AnEndThatIsTooShortIsKeptAndThePieceComesOffAnotherReel) {
    ASSERT_TRUE(take(job));
    ASSERT_EQ(card(job).pieces[0].lot->tag, "K-2");
    const auto aside = setAside("K-2", metres(6.05));
    ASSERT_TRUE(aside);
    EXPECT_EQ(aside->end.kind, LotKind::Remnant);
    EXPECT_EQ(aside->end.length, metres(6.05));
    EXPECT_TRUE(aside->end.isOpen());
    EXPECT_EQ(aside->next->tag, "K-4");
    EXPECT_EQ(card(job).pieces[0].lot->tag, "K-4");
    EXPECT_EQ(card(job).pieces[0].piece.planned, metres(6.2));
    const std::size_t facts = factsOf(job);
    ASSERT_TRUE(setAside("K-2", metres(6.05))) << "said twice it is said once";
    EXPECT_EQ(factsOf(job), facts);
    ASSERT_TRUE(cut(cutting(job, PieceRole::Mains, metres(6.2))));
    EXPECT_EQ(lot("K-4").length, metres(193.8));
    EXPECT_EQ(lot("K-2").length, metres(6.05));
}

TEST_P(Remnant, APieceThatSomebodyPinnedThereLeavesItToo) {
    const RacketSummary racket = racketOf("Arberley", "Aldermoor 98");
    IntakeDraft draft = draftFor(racket, "K", "L", "51", "53");
    draft.mains.lot = lot("K-2").id;
    job = *logged(racket, draft, "pinned").id;
    ASSERT_TRUE(take(job));
    ASSERT_TRUE(setAside("K-2", metres(6.05)));
    EXPECT_EQ(card(job).pieces[0].lot->tag, "K-4");
    EXPECT_FALSE(card(job).pieces[0].piece.pinned);
}

TEST_P(Remnant, AnEndWithNothingOnItIsClosed) {
    ASSERT_TRUE(take(job));
    const auto aside = setAside("K-2", metres(0));
    ASSERT_TRUE(aside);
    EXPECT_FALSE(aside->end.isOpen());
    EXPECT_EQ(aside->next->tag, "K-4");
}

TEST_P(Remnant, OnlyAnEndThatIsTooShortForThisPieceIsSetAside) {
    EXPECT_EQ(refusalOf(setAside("K-2", metres(6.05))), Code::WrongState);
    ASSERT_TRUE(take(job));
    const std::size_t facts = factsOf(job);
    EXPECT_EQ(refusalOf(setAside("K-2", metres(6.2))), Code::ImpossibleValue);
    EXPECT_EQ(refusalOf(setAside("L-3", metres(6))), Code::WrongLot);
    EXPECT_EQ(refusalOf(setAside("K-2", metres(0) - metres(1))), Code::OutOfRange);
    EXPECT_EQ(refusalOf(setAside("K-2", metres(6), PieceRole::Mains, 2)), Code::StaleAttempt);
    EXPECT_EQ(factsOf(job), facts);
    EXPECT_EQ(lot("K-2").kind, LotKind::Reel) << "a refusal leaves nothing behind";
    ASSERT_TRUE(cut(cutting(job, PieceRole::Mains, metres(6.2))));
    EXPECT_EQ(refusalOf(setAside("K-2", metres(0.1))), Code::AlreadyCut);
}

TEST_P(Remnant, ItIsOfferedAsSomebodysCrosses) {
    ASSERT_TRUE(take(job));
    ASSERT_TRUE(setAside("K-2", metres(6.05)));
    const RacketSummary racket = racketOf("Arberley", "Aldermoor 98");
    const auto shown = preview(draftFor(racket, "L", "K", "51", "53"));
    ASSERT_TRUE(shown.has_value());
    ASSERT_EQ(shown->pieces.size(), 2U);
    EXPECT_EQ(shown->pieces[1].cut, metres(5.6));
    EXPECT_EQ(shown->pieces[1].lot->tag, "K-2");
    EXPECT_EQ(shown->pieces[1].leavesOnLot, metres(0.45));
}

} // namespace
} // namespace rw::desk::test
