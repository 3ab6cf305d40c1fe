// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// Waiting, going on, withdrawing: on every kind of ledger, because the ledger holds the same table of steps.
namespace rw::desk::test {
namespace {

class JobCourse : public DemoEverywhere {
protected:
    Job petras() {
        const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
        return logged(racket, draftFor(racket, "L", "L", "52", "50"), "hers");
    }
    Result<Job> wait(const Job& job, std::string whatFor) {
        const LetWait command{*job.id, std::move(whatFor), by("counter")};
        return write([&](Transaction& t) { return letJobWait(t, command); });
    }
    Result<Job> resume(const Job& job) {
        const JobStep command{*job.id, by("counter")};
        return write([&](Transaction& t) { return resumeJob(t, command); });
    }
    Result<Job> withdraw(const Job& job) {
        const JobStep command{*job.id, by("counter")};
        return write([&](Transaction& t) { return withdrawJob(t, command); });
    }
    Length freeOfL() {
        const auto strings = read([](Transaction& t) { return shelf(t); });
        for (const ShelfString& string : *strings) {
            if (string.article.code == "L") {
                return string.holding.free();
            }
        }
        throw std::invalid_argument("no such string in the demo shop");
    }
    bool isToBeStrung(const Job& job) {
        return std::ranges::count(*read([](Transaction& t) { return toBeStrung(t); }), *job.id, &JobLine::id) == 1;
    }
    std::size_t eventsOf(const Job& job) {
        return look([&](Transaction& t) { return t.jobs().events(*job.id); }).size();
    }
};

TEST_P(JobCourse, AJobWaitsForWhatIsSaidAndGoesOn) {
    const Job job = petras();
    const Length free = freeOfL();
    EXPECT_EQ(refusalOf(wait(job, "  ")), Code::Missing);
    EXPECT_EQ(refusalOf(wait(job, std::string(2001, 'w'))), Code::TooLong);
    const auto waiting = wait(job, " a call about the grommets ");
    ASSERT_TRUE(waiting.has_value());
    EXPECT_EQ(waiting->state, JobState::Waiting);
    EXPECT_EQ(waiting->note, "a call about the grommets");
    EXPECT_EQ(freeOfL(), free) << "its string stays promised";
    EXPECT_TRUE(isToBeStrung(job));
    const auto queue = read([](Transaction& t) { return benchQueue(t); });
    EXPECT_EQ(std::ranges::count(*queue, *job.id, &JobLine::id), 0) << "the bench has nothing to do with it now";

    const auto again = wait(job, "a call about the grommets");
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->note, "a call about the grommets") << "said twice it is said once";
    EXPECT_EQ(eventsOf(job), 2U);
    EXPECT_EQ(resume(job)->state, JobState::Logged);
    EXPECT_TRUE(resume(job));
    EXPECT_EQ(eventsOf(job), 3U);
}

TEST_P(JobCourse, AJobOnAMachineWaitsTooAndAStrungOneDoesNot) {
    const Job job = petras();
    ASSERT_TRUE(take(*job.id));
    EXPECT_EQ(wait(job, "a longer reel")->state, JobState::Waiting);
    const JobId strung = read([](Transaction& t) { return onTheRack(t); })->front().id;
    const Job done = look([&](Transaction& t) { return *t.jobs().get(strung); });
    EXPECT_EQ(refusalOf(wait(done, "anything")), Code::WrongState);
    EXPECT_EQ(refusalOf(withdraw(done)), Code::WrongState);
    EXPECT_EQ(refusalOf(resume(done)), Code::WrongState);
}

TEST_P(JobCourse, AWithdrawnJobSetsItsStringFree) {
    const Length before = freeOfL();
    const Job job = petras();
    EXPECT_EQ(freeOfL(), before - job.pieces.front().planned);
    const auto gone = withdraw(job);
    ASSERT_TRUE(gone.has_value());
    EXPECT_EQ(gone->state, JobState::Withdrawn);
    EXPECT_EQ(freeOfL(), before);
    EXPECT_FALSE(isToBeStrung(job));
    EXPECT_TRUE(withdraw(job));
    EXPECT_EQ(eventsOf(job), 2U) << "done twice it is done once";
    EXPECT_EQ(resume(job)->state, JobState::Logged) << "they changed their mind";
    EXPECT_LT(freeOfL(), before) << "its string is promised again";
}

TEST_P(JobCourse, AJobThatGoesOnAfterAllIsPromisedStringThatIsThere) {
    const Job job = petras();
    const RacketSummary twin = racketOf("Lindobi", "Aldermoor 98", "B");
    IntakeDraft pinned = draftFor(twin, "L", "L", "52", "50");
    pinned.mains.lot = lot("L-3").id;
    const Job chosen = logged(twin, pinned, "pinned");
    ASSERT_EQ(job.pieces.front().lot, lot("L-3").id);
    ASSERT_TRUE(withdraw(job));
    ASSERT_TRUE(withdraw(chosen));
    const auto reel = receive(delivery("L", "L-9", metres(200)));
    ASSERT_TRUE(reel.has_value());
    ASSERT_FALSE(correct("L-3", metres(0))->isOpen());
    const auto again = resume(job);
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->pieces.front().lot, reel->id);
    EXPECT_EQ(again->pieces.front().planned, job.pieces.front().planned);
    EXPECT_EQ(resume(chosen)->pieces.front().lot, lot("L-3").id) << "what somebody pinned is never moved";
}

TEST_P(JobCourse, AReasonIsKeptThoughTheNoteEndsWithTheSameWord) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    LogJob command = logging(racket, draftFor(racket, "L", "L", "52", "50"), "hers");
    command.note = "call before stringing";
    const auto job = write([&](Transaction& t) { return logJob(t, command); });
    ASSERT_TRUE(job.has_value());
    EXPECT_EQ(wait(*job, "stringing")->note, "call before stringing\nstringing");
    EXPECT_EQ(wait(*job, "stringing")->note, "call before stringing\nstringing") << "said twice it is said once";
    EXPECT_EQ(wait(*job, "ring")->note, "call before stringing\nstringing\nring");
    ASSERT_TRUE(resume(*job));
    EXPECT_EQ(wait(*job, "ring")->note, "call before stringing\nstringing\nring\nring") << "it waits once more";
}

TEST_P(JobCourse, AWaitingJobIsWithdrawnToo) {
    const Length before = freeOfL();
    const Job job = petras();
    ASSERT_TRUE(wait(job, "an answer"));
    EXPECT_EQ(withdraw(job)->state, JobState::Withdrawn);
    EXPECT_EQ(freeOfL(), before);
}

IN_MEMORY_AND_ON_BOTH_ENGINES(JobCourse);

} // namespace
} // namespace rw::desk::test
