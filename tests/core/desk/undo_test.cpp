// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/undo.h"
#include "tests/core/desk/demo_fixture.h"

namespace rw::desk::test {
namespace {

class Undo : public DemoEverywhere {
protected:
    Job onTheMachine() {
        const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
        const Job job = logged(racket, draftFor(racket, "L", "L", "50", "52"), "undone");
        EXPECT_TRUE(take(*job.id));
        return job;
    }
    void cutFrom(std::string_view tag, JobId job, PieceRole role, double length, int attempt = 1) {
        ConfirmCut command = cutting(job, role, metres(length), attempt);
        command.lot = lot(tag).id;
        EXPECT_TRUE(cut(command));
    }
    Job strung() {
        const Job job = onTheMachine();
        cutFrom("L-3", *job.id, PieceRole::Mains, 6.2);
        cutFrom("L-3", *job.id, PieceRole::Crosses, 5.6);
        EXPECT_TRUE(finish(*job.id, {lb("50"), lb("52")}));
        return job;
    }
    Result<Job> takeBack(JobId job, PieceRole role, int attempt = 1) {
        const TakeBackCut command{job, role, attempt, by()};
        return write([&](Transaction& t) { return takeBackCut(t, command); });
    }
    Result<Job> bring(JobId job) {
        const BringBack command{job, by("counter")};
        return write([&](Transaction& t) { return bringBack(t, command); });
    }
    Money paid(JobId job) {
        return look([&](Transaction& t) { return t.jobs().paid(job); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Undo);

TEST_P(Undo, ACutThatWasNotMadeIsOnItsReelAgain) {
    const Job job = onTheMachine();
    const Length before = lot("L-3").length;
    cutFrom("L-3", *job.id, PieceRole::Mains, 6.2);
    const auto back = takeBack(*job.id, PieceRole::Mains);
    ASSERT_TRUE(back);
    EXPECT_EQ(lot("L-3").length, before);
    EXPECT_EQ(pieceOf(*back, PieceRole::Mains)->current().number, 2);
    EXPECT_FALSE(pieceOf(*back, PieceRole::Mains)->isCut());
    EXPECT_EQ(pieceOf(*back, PieceRole::Mains)->planned, pieceOf(job, PieceRole::Mains)->planned);
    ASSERT_TRUE(takeBack(*job.id, PieceRole::Mains)) << "said twice it is said once";
    EXPECT_EQ(lot("L-3").length, before);
    EXPECT_FALSE(lot("L-3").measuredSinceLastCut) << "nobody held it against a tape";
    EXPECT_EQ(refusalOf(takeBack(*job.id, PieceRole::Mains, 7)), Code::StaleAttempt);
    EXPECT_EQ(refusalOf(takeBack(*job.id, PieceRole::Crosses)), Code::NotCut);
    cutFrom("L-3", *job.id, PieceRole::Mains, 6.2, 2);
    EXPECT_EQ(lot("L-3").length, before - metres(6.2));
}

TEST_P(Undo, AFinishedJobLiesOnItsMachineAgain) {
    const Job job = strung();
    const Reopen command{*job.id, by()};
    const auto open = write([&](Transaction& t) { return reopenJob(t, command); });
    ASSERT_TRUE(open);
    EXPECT_EQ(open->state, JobState::OnTheMachine);
    EXPECT_EQ(card(*job.id).machine->name, "Bench A");
    EXPECT_TRUE(write([&](Transaction& t) { return reopenJob(t, command); })) << "said twice it is said once";
    ASSERT_TRUE(finish(*job.id, {lb("49"), lb("52")}));
    EXPECT_EQ(card(*job.id).job.strung->tensions.mains, lb("49"));
}

TEST_P(Undo, AHandOverIsTakenBackWithWhatWasPaidThen) {
    const Job job = strung();
    const HandOver command{*job.id, "her brother", job.total, "cash", by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return handOver(t, command); }));
    const auto back = bring(*job.id);
    ASSERT_TRUE(back);
    EXPECT_EQ(back->state, JobState::Strung);
    EXPECT_FALSE(back->collected);
    EXPECT_EQ(paid(*job.id), pounds(0));
    ASSERT_TRUE(bring(*job.id)) << "said twice it is said once";
    EXPECT_EQ(paid(*job.id), pounds(0));
    ASSERT_TRUE(write([&](Transaction& t) { return handOver(t, command); }));
    EXPECT_EQ(paid(*job.id), job.total) << "and it can be handed over again";
}

TEST_P(Undo, TheLastThingIsTheFinishThenTheLastCut) {
    const auto last = [&](JobId job) { return read([&](Transaction& t) { return lastDone(t, job); }).value(); };
    const Job job = strung();
    ASSERT_TRUE(last(*job.id));
    EXPECT_FALSE(last(*job.id)->cut) << "it was finished";
    const Reopen reopen{*job.id, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return reopenJob(t, reopen); }));
    EXPECT_EQ(last(*job.id)->cut, PieceRole::Crosses);
    ASSERT_TRUE(takeBack(*job.id, PieceRole::Crosses));
    EXPECT_EQ(last(*job.id)->cut, PieceRole::Mains);
    ASSERT_TRUE(takeBack(*job.id, PieceRole::Mains));
    EXPECT_FALSE(last(*job.id));
    const Job waits = logged(racketOf("Lindobi", "Aldermoor 98", "A"),
                             draftFor(racketOf("Lindobi", "Aldermoor 98", "A"), "L", "L", "52", "50"), "waits");
    EXPECT_FALSE(last(*waits.id));
}

TEST_P(Undo, OnlyWhatHappenedIsTakenBack) {
    const Job job = strung();
    EXPECT_EQ(refusalOf(bring(*job.id)), Code::WrongState);
    EXPECT_EQ(refusalOf(takeBack(*job.id, PieceRole::Mains)), Code::WrongState);
}

} // namespace
} // namespace rw::desk::test
