// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/money/money.h"

#include "core/money/known_currencies.h"

#include <gtest/gtest.h>

#include <algorithm>

using rw::Code;
using rw::Currency;
using rw::Money;

namespace {

Money pounds(std::int64_t minor) { return Money::fromMinor(minor, Currency::pounds()); }

TEST(Money, SplitsWithoutLosingAPenny) {
    const auto parts = pounds(10'000).splitFairly(3);
    EXPECT_EQ(parts, (std::vector{pounds(3'334), pounds(3'333), pounds(3'333)}));
    const auto credit = pounds(-10'000).splitFairly(3);
    EXPECT_EQ(credit, (std::vector{pounds(-3'334), pounds(-3'333), pounds(-3'333)}));
}

TEST(Money, ReadsAndPrintsWithTheCurrencysDecimals) {
    EXPECT_EQ(Money::tryParse("14,5", Currency::pounds()).value(), pounds(1'450));
    EXPECT_EQ(pounds(1'450).text(), "14.50");
    EXPECT_EQ(pounds(-5).text(), "-0.05");
    EXPECT_EQ(Money::tryParse("14.505", Currency::pounds()).error().code(), Code::TooFine);
    EXPECT_EQ(Money::tryParse("14 quid", Currency::pounds()).error().code(), Code::Unreadable);
    const Currency yen = Currency::fromCode("JPY").value();
    EXPECT_EQ(Money::tryParse("1400", yen).value().text(), "1400");
    EXPECT_EQ(Currency::fromCode("gbp").error().code(), Code::ImpossibleValue);
}

TEST(Money, RoundsHalvesAwayFromZeroAndNowhereElse) {
    EXPECT_EQ(pounds(5).timesRatioHalfAway(1, 2), pounds(3));
    EXPECT_EQ(pounds(-5).timesRatioHalfAway(1, 2), pounds(-3));
    EXPECT_EQ(pounds(66'900).timesRatioHalfAway(90, 100), pounds(60'210));
}

// Source: ISO 4217, list one.
TEST(Money, KnowsWhichCodesAreMoney) {
    for (const std::string_view code : {"AED", "CHF", "EUR", "GBP", "JPY", "KWD", "PLN", "USD", "ZWG"}) {
        EXPECT_TRUE(rw::isKnownCurrency(code)) << code;
    }
    for (const std::string_view code : {"", "GB", "gbp", "GBX", "XTS", "XXX", "D A", "EURO", "AED AFN"}) {
        EXPECT_FALSE(rw::isKnownCurrency(code)) << code;
    }
    const auto all = rw::knownCurrencies();
    EXPECT_EQ(all.size(), 158U);
    EXPECT_TRUE(std::ranges::is_sorted(all));
    EXPECT_TRUE(std::ranges::all_of(all, rw::isKnownCurrency));
}

} // namespace
