// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/job_course.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// What was agreed with the customer: the informed yes, and a change of mind on the phone.
namespace rw::desk::test {
namespace {

class Agreement : public DemoEverywhere {
protected:
    /// Jun's Pellow Feather, marked 26 lb at most.
    Job feather(std::string_view mains, std::string_view crosses, std::string_view key = "feather") {
        const RacketSummary racket = racketOf("Hallerby", "Pellow Feather");
        return logged(racket, draftFor(racket, "W", "W", mains, crosses), key);
    }
    Result<Consent> agree(JobId job) {
        const Agree command{job, "Jun's coach", "It may break, and the maker will not pay.", by("counter")};
        return write([&](Transaction& t) { return agreeAboveMarked(t, command); });
    }
    std::optional<Consent> consent(JobId job, std::string_view pull) {
        return look([&](Transaction& t) { return consentTo(t, job, lb(pull)); });
    }
    Result<Job> change(JobId job, const TensionPair& seen, const TensionPair& wanted,
                       std::string_view station = "counter") {
        const ChangeAsked command{job, seen, wanted, by(station)};
        return write([&](Transaction& t) { return changeAsked(t, command); });
    }
    std::vector<AskedChange> toNodTo(JobId job) {
        return look([&](Transaction& t) { return changesToNodTo(t, job); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Agreement);

TEST_P(Agreement, AYesCoversThePullThatWasAgreedToAndNoMore) {
    const Job job = feather("28", "30");
    EXPECT_FALSE(consent(*job.id, "30"));
    const auto agreed = agree(*job.id);
    ASSERT_TRUE(agreed);
    EXPECT_EQ(agreed->above, (AboveMarked{lb("30"), lb("26")}));
    EXPECT_EQ(consent(*job.id, "30")->agreedBy, "Jun's coach");
    EXPECT_EQ(consent(*job.id, "30")->words, "It may break, and the maker will not pay.");
    EXPECT_TRUE(consent(*job.id, "13.6 kg")) << "29.98 lb: pulls are compared as forces";
    EXPECT_FALSE(consent(*job.id, "30.5"));
}

TEST_P(Agreement, AYesIsOfOneJobAndSaidOnce) {
    const Job job = feather("28", "30");
    ASSERT_TRUE(agree(*job.id));
    ASSERT_TRUE(agree(*job.id));
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().consents(*job.id).size(); }), 1U);
    EXPECT_FALSE(consent(*feather("28", "30", "the next").id, "30"));
}

TEST_P(Agreement, AYesAtTheCounterIsKeptWithTheJob) {
    const RacketSummary racket = racketOf("Hallerby", "Pellow Feather");
    LogJob command = logging(racket, draftFor(racket, "W", "W", "28", "30"), "with a yes");
    command.yes = InformedYes{" Jun's coach ", "It may break."};
    const auto log = [&] { return write([&](Transaction& t) { return logJob(t, command); }); };
    const auto job = log();
    ASSERT_TRUE(job);
    const auto kept = consent(*job->id, "30");
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->above, (AboveMarked{lb("30"), lb("26")}));
    EXPECT_EQ(kept->agreedBy, "Jun's coach");
    EXPECT_EQ(kept->words, "It may break.");
    EXPECT_EQ(kept->by.staff, command.by.staff);

    EXPECT_EQ(log()->id, job->id) << "pressed twice it is logged once";
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().consents(*job->id).size(); }), 1U);
    command.yes.reset();
    EXPECT_EQ(refusalOf(log()), Code::ChangedMeanwhile) << "nobody may believe that the yes was taken back";
    command.requestKey = "the next";
    EXPECT_FALSE(consent(*log()->id, "30")) << "it never carries over";
}

TEST_P(Agreement, AJobIsLoggedWithoutAYesTooAndShownAsNotAgreed) {
    const auto notAgreed = [&](const Job& job) {
        for (const auto& list : {read([](Transaction& t) { return toBeStrung(t); }),
                                 read([](Transaction& t) { return benchQueue(t); })}) {
            const auto line = std::ranges::find(*list, *job.id, &JobLine::id);
            EXPECT_NE(line, list->end());
            if (!line->notAgreed) {
                return false;
            }
        }
        return true;
    };
    const Job job = feather("28", "30");
    EXPECT_TRUE(notAgreed(job));
    EXPECT_FALSE(notAgreed(feather("24", "26", "within the mark")));
    ASSERT_TRUE(agree(*job.id));
    EXPECT_FALSE(notAgreed(job));
    ASSERT_TRUE(change(*job.id, job.asked, {lb("28"), lb("31")}));
    EXPECT_TRUE(notAgreed(job)) << "the yes was to 30 lb";
}

TEST_P(Agreement, AYesToNothingIsNotKept) {
    const RacketSummary racket = racketOf("Hallerby", "Pellow Feather");
    LogJob command = logging(racket, draftFor(racket, "W", "W", "24", "26"), "no need");
    command.yes = InformedYes{"", "It may break."};
    const auto job = write([&](Transaction& t) { return logJob(t, command); });
    ASSERT_TRUE(job);
    EXPECT_TRUE(look([&](Transaction& t) { return t.jobs().consents(*job->id); }).empty());
    EXPECT_EQ(write([&](Transaction& t) { return logJob(t, command); })->id, job->id);
}

TEST_P(Agreement, NothingIsAgreedToWithinTheMarkedRange) {
    EXPECT_EQ(refusalOf(agree(*feather("24", "26").id)), Code::ImpossibleValue);
}

TEST_P(Agreement, AChangeOfMindIsKeptWithWhatWasAskedBefore) {
    const Job job = feather("24", "25");
    const auto changed = change(*job.id, job.asked, {lb("23"), lb("24")});
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->asked, (TensionPair{lb("23"), lb("24")}));
    const auto changes = look([&](Transaction& t) { return t.jobs().askedChanges(*job.id); });
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].before, job.asked);
    EXPECT_EQ(changes[0].after, changed->asked);
    EXPECT_TRUE(toNodTo(*job.id).empty()) << "nobody is stringing it yet";
}

TEST_P(Agreement, OnTheMachineItWaitsForANod) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(change(*job.id, job.asked, {lb("23"), lb("24")}));
    EXPECT_EQ(toNodTo(*job.id).size(), 1U);
    const Nod command{*job.id, by("bench")};
    ASSERT_TRUE(write([&](Transaction& t) { return nodToChanges(t, command); }));
    EXPECT_TRUE(toNodTo(*job.id).empty());
    ASSERT_TRUE(change(*job.id, {lb("23"), lb("24")}, {lb("22"), lb("24")}, "bench"));
    EXPECT_TRUE(toNodTo(*job.id).empty()) << "the bench has seen what it did itself";
}

TEST_P(Agreement, OfTwoStationsThatChangeItTheSecondSeesBoth) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(change(*job.id, job.asked, {lb("23"), lb("24")}));
    const auto second = change(*job.id, job.asked, {lb("22"), lb("22")});
    ASSERT_EQ(refusalOf(second), Code::ChangedMeanwhile);
    EXPECT_EQ(second.error().text("mine"), "22 lb / 22 lb");
    EXPECT_EQ(second.error().text("theirs"), "23 lb / 24 lb");
    EXPECT_TRUE(change(*job.id, job.asked, {lb("23"), lb("24")})) << "both wanted the same";
}

TEST_P(Agreement, WhatIsStrungIsAskedForNoMore) {
    const Job job = feather("24", "25");
    ASSERT_TRUE(take(*job.id));
    for (const auto& [role, length] : {std::pair(PieceRole::Mains, 5.5), std::pair(PieceRole::Crosses, 4.4)}) {
        ASSERT_TRUE(cut(cutting(*job.id, role, metres(length))));
    }
    ASSERT_TRUE(finish(*job.id, job.asked));
    EXPECT_EQ(refusalOf(change(*job.id, job.asked, {lb("23"), lb("24")})), Code::WrongState);
}

} // namespace
} // namespace rw::desk::test
