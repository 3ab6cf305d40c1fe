// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"
#include "core/desk/remove_customer.h"
#include "tests/core/desk/demo_fixture.h"

namespace rw::desk::test {
namespace {

class Removal : public DemoEverywhere {
protected:
    Result<void> remove(CustomerId customer) {
        return write([&](Transaction& t) { return removeCustomer(t, customer, kNow); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Removal);

TEST_P(Removal, ARacketInTheShopBlocksIt) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const Job job = logged(racket, draftFor(racket, "K", "L", "50", "52"), "here");
    const auto refused = remove(job.customer);
    ASSERT_EQ(refusalOf(refused), Code::RacketStillHere);
    EXPECT_EQ(refused.error().text("jobs"), std::to_string(job.number));
    EXPECT_EQ(personCalled("Ferreday").customer.name, "Tomas Ferreday");
}

TEST_P(Removal, AReelOfTheirsBlocksItToo) {
    const CustomerId tomas = *personCalled("Ferreday").customer.id;
    ASSERT_TRUE(receive(delivery("K", "KT-1", metres(100), tomas)));
    EXPECT_EQ(remove(tomas).error().text("lots"), "KT-1");
}

TEST_P(Removal, NothingIsBegunForWhoeverWasRemoved) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const Job job = logged(racket, draftFor(racket, "K", "L", "50", "52"), "withdrawn");
    const JobStep step{*job.id, by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return withdrawJob(t, step); }));
    ASSERT_TRUE(remove(job.customer));
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return resumeJob(t, step); })), Code::NotFound);
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().get(*job.id); })->state, JobState::Withdrawn);
    const AddRacket another{"another", job.customer, racket.racket.frame, "B"};
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return addRacket(t, another); })), Code::NotFound);
}

TEST_P(Removal, NameAndWordsGoAndStockAndSumsStay) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    LogJob command = logging(racket, draftFor(racket, "K", "L", "50", "52"), "words");
    command.note = "mind his elbow";
    command.inspection = {"cover with his name in it", "bumper worn"};
    const auto job = write([&](Transaction& t) { return logJob(t, command); });
    ASSERT_TRUE(job);
    ASSERT_TRUE(take(*job->id));
    for (const auto& [role, length, tag] :
         {std::tuple(PieceRole::Mains, 6.2, "K-4"), std::tuple(PieceRole::Crosses, 5.6, "L-3")}) {
        ConfirmCut cutCommand = cutting(*job->id, role, metres(length));
        cutCommand.lot = lot(tag).id;
        ASSERT_TRUE(cut(cutCommand));
    }
    ASSERT_TRUE(finish(*job->id, job->asked));
    const HandOver handing{*job->id, "his sister", job->total, "cash", by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return handOver(t, handing); }));
    const Length left = lot("K-4").length;
    const auto facts = factsOf(*job->id);

    ASSERT_TRUE(remove(job->customer));
    EXPECT_TRUE(read([](Transaction& t) { return findPeople(t, "Ferreday"); })->empty());
    const Job kept = *look([&](Transaction& t) { return t.jobs().get(*job->id); });
    EXPECT_EQ(kept.note, "");
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().inspection(*job->id); }), Inspection());
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().handover(*job->id); })->takenBy, "");
    EXPECT_EQ(kept.total, job->total);
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().paid(*job->id); }), job->total);
    EXPECT_EQ(lot("K-4").length, left);
    EXPECT_EQ(factsOf(*job->id), facts);
    const Customer gone = *look([&](Transaction& t) { return t.customers().get(job->customer); });
    EXPECT_EQ(gone.removed, kNow);
    EXPECT_TRUE(gone.contacts.empty());
    EXPECT_TRUE(ledger().check().empty());
    EXPECT_TRUE(remove(job->customer)) << "removed twice is removed once";
}

} // namespace
} // namespace rw::desk::test
