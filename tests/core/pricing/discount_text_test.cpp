// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/discount_text.h"

#include <gtest/gtest.h>

namespace rw {
namespace {

Result<Discount> read(std::string_view text) { return discountFromText(text, Currency::pounds()); }

TEST(DiscountText, IsAPercentageOrAnAmount) {
    EXPECT_EQ(read("10 %")->hundredthsPercent, 1000);
    EXPECT_FALSE(read("10%")->fixed);
    EXPECT_EQ(read("7,5%")->hundredthsPercent, 750);
    EXPECT_EQ(read("3")->fixed, Money::fromMinor(300, Currency::pounds()));
    EXPECT_EQ(read("2.50")->fixed, Money::fromMinor(250, Currency::pounds()));
    for (const char* text : {"10 %", "7.5 %", "2.50", "0.00"}) {
        EXPECT_EQ(discountText(*read(text)), text);
    }
}

TEST(DiscountText, WhatIsNoneIsRefused) {
    for (const char* text : {"", "team", "%", "10 percent"}) {
        ASSERT_FALSE(read(text)) << text;
        EXPECT_EQ(read(text).error().code(), Code::Unreadable) << text;
        EXPECT_EQ(read(text).error().text("what"), "discount") << text;
    }
    EXPECT_EQ(read("101 %").error().code(), Code::OutOfRange);
    EXPECT_EQ(read("-5 %").error().code(), Code::OutOfRange);
    EXPECT_EQ(read("-2").error().code(), Code::OutOfRange);
    EXPECT_EQ(read("2.505").error().code(), Code::TooFine);
    EXPECT_EQ(read("7.505 %").error().code(), Code::TooFine);
}

} // namespace
} // namespace rw
