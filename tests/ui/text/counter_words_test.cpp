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

} // namespace
} // namespace rw::ui
