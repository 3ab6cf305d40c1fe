// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/undo.h"
#include "tests/core/desk/demo_fixture.h"

#include <gmock/gmock.h>

// What came off the ends at the finish, and what of all cuts is told of a frame.
namespace rw::desk::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

class TailsAtTheFinish : public DemoEverywhere {
protected:
    void SetUp() override {
        DemoEverywhere::SetUp();
        const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
        m_frame = *racket.frame.id;
        m_job = *logged(racket, draftFor(racket, "K", "L", "50", "52"), "tomas").id;
        EXPECT_TRUE(take(m_job));
        ConfirmCut mains = cutting(m_job, PieceRole::Mains, metres(6.2));
        mains.lot = lot("K-4").id;
        EXPECT_TRUE(cut(mains));
        EXPECT_TRUE(cut(cutting(m_job, PieceRole::Crosses, metres(5.6))));
    }
    Result<Job> finishWith(std::vector<TailsOf> tails) {
        const FinishJob command{m_job, {lb("50"), lb("52")}, *machine("Bench A").id, {}, by(), std::move(tails)};
        return write([&](Transaction& t) { return finishJob(t, command); });
    }
    std::vector<OwnCut> cuts(int jobs = 100, int elsewhere = 0) {
        return look([&](Transaction& t) { return t.ownCuts().cuts(m_frame, Sport::Tennis, jobs, elsewhere); });
    }

    FrameModelId m_frame = FrameModelId::of(1);
    JobId m_job = JobId::of(1);
};
IN_MEMORY_AND_ON_BOTH_ENGINES(TailsAtTheFinish);

constexpr TailsOf tailsOf(PieceRole role, Length length) { return {role, false, Tails::measured(length)}; }

TEST_P(TailsAtTheFinish, AreKeptWithTheCutThatTheyCameOff) {
    const std::size_t before = cuts().size();
    ASSERT_TRUE(finishWith(
        {tailsOf(PieceRole::Mains, metres(0.38)), {PieceRole::Crosses, false, {metres(0.09), metres(0.27)}}}));
    const std::vector<OwnCut> now = cuts();
    ASSERT_THAT(now, SizeIs(before + 2));
    const OwnCut& crosses = now[0];
    const OwnCut& mains = now[1];
    EXPECT_EQ(mains.job, m_job);
    EXPECT_EQ(mains.role, PieceRole::Mains);
    EXPECT_EQ(mains.length, metres(6.2));
    EXPECT_EQ(mains.tails, Tails::measured(metres(0.38)));
    EXPECT_EQ(mains.mains, *string("K").id);
    EXPECT_EQ(mains.crosses, *string("L").id);
    EXPECT_EQ(mains.pulled, (TensionPair{lb("50"), lb("52")}));
    EXPECT_EQ(mains.at, kNow);
    EXPECT_FALSE(mains.cameShort || mains.allThereWas);
    EXPECT_EQ(crosses.role, PieceRole::Crosses);
    EXPECT_EQ(crosses.tails, (Tails{metres(0.09), metres(0.27)}));
    EXPECT_TRUE(ledger().check().empty());
}

TEST_P(TailsAtTheFinish, AreNeverAsked) {
    ASSERT_TRUE(finishWith({}));
    EXPECT_EQ(cuts().front().tails, std::nullopt) << "it was enough, and that is told too";
}

TEST_P(TailsAtTheFinish, ToldAgainTheLaterCount) {
    ASSERT_TRUE(finishWith({tailsOf(PieceRole::Mains, metres(0.38))}));
    const Reopen reopening{m_job, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return reopenJob(t, reopening); }));
    EXPECT_NE(cuts().front().job, m_job) << "what lies on the machine again has not come to its end";
    ASSERT_TRUE(finishWith({tailsOf(PieceRole::Mains, metres(0.48))}));
    EXPECT_EQ(cuts()[1].tails, Tails::measured(metres(0.48)));
}

TEST_P(TailsAtTheFinish, CannotBeMoreThanHalfOfTheCutOrOfAnotherPiece) {
    EXPECT_EQ(refusalOf(finishWith({tailsOf(PieceRole::Mains, metres(3.2))})), Code::OutOfRange);
    EXPECT_EQ(refusalOf(finishWith({tailsOf(PieceRole::Whole, metres(0.3))})), Code::NotFound);
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().get(m_job); })->state, JobState::OnTheMachine);
}

TEST_P(TailsAtTheFinish, OnlyCutsThatCameToTheirEndAreTold) {
    EXPECT_NE(cuts().front().job, m_job) << "it is not strung";
    ASSERT_TRUE(lose(m_job, PieceRole::Crosses, 1, LostReason::Kinked));
    EXPECT_NE(cuts().front().job, m_job) << "a kink says nothing of the need";
    ASSERT_TRUE(cut(cutting(m_job, PieceRole::Crosses, metres(5.5), 2)));
    ASSERT_TRUE(lose(m_job, PieceRole::Crosses, 2, LostReason::CameShort));
    EXPECT_EQ(cuts().front().job, m_job);
    EXPECT_TRUE(cuts().front().cameShort);
    EXPECT_EQ(cuts().front().length, metres(5.5));
    ConfirmCut third = cutting(m_job, PieceRole::Crosses, metres(5.7), 3);
    third.lot = lot("L-3").id; // what is promised to others is there all the same
    ASSERT_TRUE(cut(third));
    const TakeBackCut back{m_job, PieceRole::Crosses, 3, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return takeBackCut(t, back); }));
    EXPECT_TRUE(cuts().front().cameShort) << "a cut that was never made says nothing";
}

TEST_P(TailsAtTheFinish, OtherFramesTellByTheirTailsOnly) {
    ASSERT_TRUE(finishWith({tailsOf(PieceRole::Mains, metres(0.38)), tailsOf(PieceRole::Crosses, metres(0.3))}));
    const FrameModelId other = *racketOf("Brockwell", "Tarn Ridge 100").frame.id;
    const auto elsewhere = [&](Sport sport, int atMost) {
        return look([&](Transaction& t) { return t.ownCuts().cuts(other, sport, 0, atMost); });
    };
    const std::vector<OwnCut> both = elsewhere(Sport::Tennis, 10);
    ASSERT_THAT(both, SizeIs(2)) << "many were strung without a word of their tails";
    EXPECT_EQ(both[0].role, PieceRole::Crosses);
    EXPECT_EQ(both[0].frame, m_frame);
    EXPECT_THAT(elsewhere(Sport::Tennis, 1), SizeIs(1));
    EXPECT_THAT(elsewhere(Sport::Squash, 10), IsEmpty());
    EXPECT_THAT(cuts(1), SizeIs(2)) << "the newest job of the frame";
}

TEST_P(TailsAtTheFinish, AnEndThatWasUsedUpIsTold) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const Job job = logged(racket, draftFor(racket, "K", "L", "50", "52"), "tomas again");
    ASSERT_TRUE(finishWith({}));
    ASSERT_TRUE(take(*job.id));
    ConfirmCut mains = cutting(*job.id, PieceRole::Mains, metres(6.35));
    mains.lot = lot("K-2").id;
    mains.measuredLeft = metres(6.35);
    ASSERT_TRUE(cut(mains));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Crosses, metres(5.6))));
    ASSERT_TRUE(finish(*job.id, job.asked));
    EXPECT_TRUE(cuts()[1].allThereWas);
    EXPECT_FALSE(cuts()[0].allThereWas);
}

} // namespace
} // namespace rw::desk::test
