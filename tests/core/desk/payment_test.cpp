// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/payment.h"

#include "core/desk/job_course.h"
#include "tests/core/desk/demo_fixture.h"

namespace rw::desk::test {
namespace {

class Paying : public DemoEverywhere {
protected:
    Job inOnePiece() {
        const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
        IntakeDraft draft = draftFor(racket, "L", "L", "50", "52");
        draft.method = Method::OnePiece;
        return logged(racket, draft, "to be paid");
    }
    Result<PaymentTaken> pay(JobId job, Money amount, std::string_view key, std::string_view way = "cash") {
        const TakePayment command{std::string(key), job, amount, std::string(way), by("books")};
        return write([&](Transaction& t) { return takePayment(t, command); });
    }
    std::vector<Payment> paymentsOf(JobId job) {
        return look([&](Transaction& t) { return t.jobs().payments(job); });
    }
    void stringAndCollect(JobId job) {
        EXPECT_TRUE(take(job));
        ConfirmCut whole = cutting(job, PieceRole::Whole, metres(11.2));
        whole.lot = lot("L-3").id;
        EXPECT_TRUE(cut(whole));
        EXPECT_TRUE(finish(job, {lb("50"), lb("52")}));
        const HandOver command{job, {}, std::nullopt, "", by("counter")};
        EXPECT_TRUE(write([&](Transaction& t) { return handOver(t, command); }));
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Paying);

TEST_P(Paying, InPartsBeforeItIsStrungAndAfterItLeftOnAccount) {
    const Job job = inOnePiece();
    const auto deposit = pay(*job.id, pounds(500), "deposit");
    ASSERT_TRUE(deposit);
    EXPECT_EQ(deposit->owed(), job.total - pounds(500));
    stringAndCollect(*job.id);
    const auto rest = pay(*job.id, deposit->owed(), "rest", "card");
    ASSERT_TRUE(rest);
    EXPECT_FALSE(rest->already);
    EXPECT_EQ(rest->paidNow, job.total - pounds(500));
    EXPECT_EQ(rest->owed(), pounds(0));
    EXPECT_EQ(rest->job.state, JobState::Collected);
    ASSERT_EQ(paymentsOf(*job.id).size(), 2U);
    EXPECT_EQ(paymentsOf(*job.id).back().way, "card");
    EXPECT_EQ(paymentsOf(*job.id).back().by.station, "books");
}

TEST_P(Paying, TheSameFormTakesItOnce) {
    const Job job = inOnePiece();
    ASSERT_TRUE(pay(*job.id, pounds(500), "form"));
    const auto again = pay(*job.id, pounds(500), "form");
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->already);
    EXPECT_EQ(again->paid, pounds(500));
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(700), "form")), Code::ChangedMeanwhile);
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(500), "form", "card")), Code::ChangedMeanwhile);
    EXPECT_EQ(paymentsOf(*job.id).size(), 1U);
}

TEST_P(Paying, WhatIsNoPaymentIsRefused) {
    const Job job = inOnePiece();
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(0), "nothing")), Code::ImpossibleValue);
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(-5), "less")), Code::ImpossibleValue);
    EXPECT_EQ(refusalOf(pay(*job.id, Money::fromMinor(500, *Currency::fromCode("EUR")), "abroad")),
              Code::CurrencyMismatch);
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(500), "how", " ")), Code::Missing);
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(500), "how", std::string(41, 'x'))), Code::TooLong);
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(500), " ")), Code::Missing);
    EXPECT_EQ(refusalOf(pay(JobId::of(987'654), pounds(500), "whose")), Code::NotFound);
    const JobStep withdrawing{*job.id, by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return withdrawJob(t, withdrawing); }));
    EXPECT_EQ(refusalOf(pay(*job.id, pounds(500), "gone")), Code::WrongState);
    EXPECT_TRUE(paymentsOf(*job.id).empty());
}

} // namespace
} // namespace rw::desk::test
