// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/give_back.h"

#include "core/desk/account.h"
#include "core/desk/books.h"
#include "core/desk/job_course.h"
#include "core/desk/payment.h"
#include "tests/core/desk/demo_fixture.h"

namespace rw::desk::test {
namespace {

class GivingBack : public DemoEverywhere {
protected:
    /// One that was paid and then withdrawn.
    Job withdrawn(Money paid) {
        const Job job = waiting(paid);
        const JobStep step{*job.id, by("counter")};
        EXPECT_TRUE(write([&](Transaction& t) { return withdrawJob(t, step); }));
        return job;
    }
    Job waiting(Money paid) {
        const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
        const Job job = logged(racket, draftFor(racket, "K", "L", "50", "52"), "paid before it is strung");
        const TakePayment command{"deposit", *job.id, paid, "card", by("books")};
        EXPECT_TRUE(write([&](Transaction& t) { return takePayment(t, command); }));
        return job;
    }
    Result<GivenBack> give(const Job& job, Money amount, std::string_view key, std::string_view way = "cash") {
        const GiveBack command{std::string(key), *job.id, amount, std::string(way), by("counter")};
        return write([&](Transaction& t) { return giveBack(t, command); });
    }
    std::vector<ToGiveBack> open() {
        return *read([](Transaction& t) { return toGiveBack(t); });
    }
    std::vector<Payment> paymentsOf(const Job& job) {
        return look([&](Transaction& t) { return t.jobs().payments(*job.id); });
    }
    Takings takenToday() {
        const CivilDate today = std::chrono::floor<std::chrono::days>(kNow);
        return *read([&](Transaction& t) { return takings(t, dayOf(today)); });
    }
    static std::int64_t came(const Takings& takings, const std::string& way) {
        for (const auto& [name, amount] : takings.byWay) {
            if (name == way) {
                return amount.minor();
            }
        }
        return 0;
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(GivingBack);

TEST_P(GivingBack, WhatWasPaidForAWithdrawnJobGoesBackInPartsByAnyWay) {
    const Takings before = takenToday();
    const Job job = withdrawn(pounds(2000));
    ASSERT_EQ(open().size(), 1U);
    EXPECT_EQ(open().front().job.number, job.number);
    EXPECT_EQ(open().front().amount, pounds(2000));
    EXPECT_EQ(read([&](Transaction& t) { return accountOf(t, job.customer); }), pounds(-2000));

    const auto part = give(job, pounds(500), "first");
    ASSERT_TRUE(part);
    EXPECT_EQ(part->left, pounds(1500));
    EXPECT_FALSE(part->already);
    const auto rest = give(job, pounds(1500), "second", "card");
    ASSERT_TRUE(rest);
    EXPECT_EQ(rest->left, pounds(0));
    EXPECT_TRUE(open().empty());
    EXPECT_EQ(read([&](Transaction& t) { return accountOf(t, job.customer); }), pounds(0));

    const auto payments = paymentsOf(job);
    ASSERT_EQ(payments.size(), 3U) << "what came in stands as it was";
    EXPECT_EQ(payments[0].amount, pounds(2000));
    EXPECT_EQ(payments[1].amount, pounds(-500));
    EXPECT_EQ(payments[1].way, "cash");
    EXPECT_EQ(payments[2].amount, pounds(-1500));
    EXPECT_FALSE(payments[1].corrects) << "taking it was no mistake";
    const Takings after = takenToday();
    EXPECT_EQ(after.total, before.total);
    EXPECT_EQ(came(after, "cash"), came(before, "cash") - 500);
    EXPECT_EQ(came(after, "card"), came(before, "card") + 500);
    EXPECT_TRUE(ledger().check().empty());
}

TEST_P(GivingBack, TheSameFormGivesItOnce) {
    const Job job = withdrawn(pounds(2000));
    ASSERT_TRUE(give(job, pounds(500), "form"));
    const auto again = give(job, pounds(500), "form");
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->already);
    EXPECT_EQ(again->left, pounds(1500));
    EXPECT_EQ(refusalOf(give(job, pounds(700), "form")), Code::ChangedMeanwhile);
    EXPECT_EQ(refusalOf(give(job, pounds(500), "form", "card")), Code::ChangedMeanwhile);
    EXPECT_EQ(refusalOf(give(job, pounds(2000), "deposit", "card")), Code::ChangedMeanwhile)
        << "that key took the money";
    EXPECT_EQ(paymentsOf(job).size(), 2U);
}

TEST_P(GivingBack, MoreThanIsTheirsIsRefused) {
    const Job job = withdrawn(pounds(2000));
    EXPECT_EQ(refusalOf(give(job, pounds(2001), "more")), Code::ImpossibleValue);
    EXPECT_EQ(refusalOf(give(job, pounds(0), "nothing")), Code::ImpossibleValue);
    EXPECT_EQ(refusalOf(give(job, pounds(-5), "less")), Code::ImpossibleValue);
    EXPECT_EQ(refusalOf(give(job, pounds(500), "how", " ")), Code::Missing);
    EXPECT_EQ(refusalOf(give(job, Money::fromMinor(500, *Currency::fromCode("EUR")), "abroad")),
              Code::CurrencyMismatch);
    ASSERT_TRUE(give(job, pounds(2000), "all"));
    EXPECT_EQ(refusalOf(give(job, pounds(1), "again")), Code::ImpossibleValue) << "another window gave it before";
    EXPECT_EQ(paymentsOf(job).size(), 2U);
}

TEST_P(GivingBack, OfAJobThatIsDoneOnlyWhatIsTooMuch) {
    const Job job = waiting(pounds(1000));
    EXPECT_EQ(refusalOf(give(job, pounds(1), "a deposit")), Code::ImpossibleValue) << "it stays for the job";
    const TakePayment more{"more", *job.id, job.total, "cash", by("books")};
    ASSERT_TRUE(write([&](Transaction& t) { return takePayment(t, more); }));
    EXPECT_EQ(refusalOf(give(job, pounds(1001), "beyond")), Code::ImpossibleValue);
    const auto given = give(job, pounds(1000), "what is too much");
    ASSERT_TRUE(given);
    EXPECT_EQ(given->left, pounds(0));
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().paid(*job.id); }), job.total);
}

TEST_P(GivingBack, AWithdrawnJobThatGoesOnAfterAllIsOwedAgain) {
    const Job job = withdrawn(pounds(2000));
    ASSERT_TRUE(give(job, pounds(2000), "all"));
    const JobStep step{*job.id, by("counter")};
    const auto again = write([&](Transaction& t) { return resumeJob(t, step); });
    ASSERT_TRUE(again);
    EXPECT_EQ(owedFor(*again, look([&](Transaction& t) { return t.jobs().paid(*job.id); })), job.total);
}

} // namespace
} // namespace rw::desk::test
