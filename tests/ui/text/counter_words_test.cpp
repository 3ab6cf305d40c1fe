// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/text/said.h"
#include "ui/text/counter_words.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
Tension tension(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }

TEST(CounterWords, APullAboveTheMarkIsToldInTheMarksUnit) {
    EXPECT_EQ(said(aboveText({tension("30"), tension("26")}, kBritish)), "30 lb, 4 lb above the marked 26 lb");
    EXPECT_EQ(said(aboveText({tension("13.5 kg"), tension("26")}, kBritish)),
              "13.5 kg (29.8 lb), 3.8 lb above the marked 26 lb");
}

TEST(CounterWords, TheShopsOwnWordsComeFirst) {
    EXPECT_EQ(said(aboveMarkedWords("At your own risk?")), "At your own risk?");
    EXPECT_NE(said(aboveMarkedWords("")), "");
}

TEST(CounterWords, WhatWasNotAgreedIsSaidAfterWhatWasDone) {
    const TensionPair pair{tension("28"), tension("30")};
    EXPECT_EQ(said(withNotAgreed(QStringLiteral("Done."), pair, false, kBritish)), "Done.");
    EXPECT_EQ(said(withNotAgreed(QStringLiteral("Done."), pair, true, kBritish)),
              "Done. Not agreed to 30 lb yet: A among the jobs to be strung (F9) keeps the yes.");
}

TEST(CounterWords, ARiseIsNamedWhereThereIsOne) {
    EXPECT_EQ(said(crossesHigherText(CrossesRise::none())), "");
    EXPECT_EQ(said(crossesHigherText(*CrossesRise::tryParse("10 %"))),
              "crosses 10 % higher, by the shop's rule");
}

TEST(CounterWords, TaxIsNamedOnceWhereItIsInThePrice) {
    const Currency pounds = Currency::pounds();
    Quote quote{.charges = {{ChargeKind::Labour, std::nullopt, "", 1, Money::fromMinor(2400, pounds), 2000}},
                .taxes = {{2000, Money::fromMinor(400, pounds)}},
                .total = Money::fromMinor(2400, pounds)};
    EXPECT_EQ(said(taxInsideText(quote, kBritish)), "with 20 % tax £4.00 in it");
    quote.charges.push_back({ChargeKind::Tax, std::nullopt, "", 1, Money::fromMinor(480, pounds), 2000});
    EXPECT_EQ(said(taxInsideText(quote, kBritish)), "") << "it stands on the bill";
    quote.taxes.clear();
    EXPECT_EQ(said(taxInsideText(quote, kBritish)), "");
}

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

Job jobNumbered(std::int64_t number) {
    return {.id = JobId::of(1),
            .number = number,
            .requestKey = {},
            .customer = CustomerId::of(1),
            .racket = RacketId::of(1),
            .route = {},
            .shortSideLength = std::nullopt,
            .asked = {tension("52"), tension("50")},
            .pieces = {},
            .charges = {},
            .total = pounds(2400),
            .promised = std::nullopt,
            .note = {},
            .logged = {},
            .strung = std::nullopt,
            .collected = std::nullopt};
}

TEST(CounterWords, WhatIsToBeGivenBackIsSaidWithTheWithdrawal) {
    const Job job = jobNumbered(2119);
    EXPECT_EQ(said(withdrawnText(job, pounds(0), kBritish)),
              "Job 2119 is withdrawn; the string promised to it is free again.");
    EXPECT_EQ(
        said(withdrawnText(job, pounds(2400), kBritish)),
        "Job 2119 is withdrawn; the string promised to it is free again. £24.00 was paid for it and is to be given "
        "back (F7).");
    EXPECT_EQ(said(giveBackText(pounds(2400), pounds(2400), kBritish)), "");
    EXPECT_EQ(said(giveBackText(pounds(2400), pounds(1000), kBritish)), "£14.00 stays to be given back");
    EXPECT_EQ(said(giveBackText(pounds(2400), pounds(2500), kBritish)), "£1.00 more than is theirs");
    EXPECT_EQ(said(gaveBackText({job, false, pounds(2400), pounds(0)}, kBritish)), "Given back £24.00 for job 2119.");
    EXPECT_EQ(said(gaveBackText({job, true, pounds(1000), pounds(1400)}, kBritish)),
              "£10.00 was given back before for job 2119. £14.00 is still to be given back.");
}

TEST(CounterWords, ARacketThatIsHereSaysAsWhat) {
    using namespace std::chrono;
    const Instant now = sys_days(year(2026) / 3 / 12) + hours(11);
    desk::JobLine line{.id = JobId::of(1),
                       .number = 2119,
                       .state = JobState::Logged,
                       .customerId = CustomerId::of(1),
                       .customer = {},
                       .phone = {},
                       .frame = {},
                       .mark = {},
                       .sport = Sport::Tennis,
                       .method = Method::TwoPiece,
                       .asked = {tension("52"), tension("50")},
                       .strings = {},
                       .promised = now + hours(30),
                       .logged = now};
    EXPECT_EQ(said(hereText(line, now, QTimeZone::utc(), kBritish)),
              "here: No. 2119, ○ logged, promised tomorrow 17:00");
    line.state = JobState::Strung;
    EXPECT_EQ(said(hereText(line, now, QTimeZone::utc(), kBritish)), "here: No. 2119, ● strung");
}

} // namespace
} // namespace rw::ui
