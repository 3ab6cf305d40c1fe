// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/mass.h"

#include <gtest/gtest.h>

namespace rw {
namespace {

TEST(Mass, IsReadAsAScaleShowsIt) {
    const std::pair<std::string_view, std::int64_t> kRead[] = {
        {"236", 236'000}, {"236 g", 236'000}, {" 236,4g ", 236'400}, {"0.236 kg", 236'000}, {"0", 0}, {"0.001", 1}};
    for (const auto& [text, mg] : kRead) {
        const auto mass = Mass::tryParse(text);
        ASSERT_TRUE(mass) << text;
        EXPECT_EQ(mass->milligrams(), mg) << text;
    }
    EXPECT_EQ(Mass::tryParse("100 kg")->milligrams(), 100'000'000);
}

TEST(Mass, IsRefusedWhereItIsNone) {
    for (const std::string_view text : {"", "g", "236 oz", "2x", "12 m"}) {
        const auto mass = Mass::tryParse(text);
        ASSERT_FALSE(mass) << text;
        EXPECT_EQ(mass.error().code(), Code::Unreadable) << text;
    }
    EXPECT_EQ(Mass::tryParse("0.0001").error().code(), Code::TooFine);
    EXPECT_EQ(Mass::tryParse("-1").error().code(), Code::OutOfRange);
    EXPECT_EQ(Mass::tryParse("101 kg").error().code(), Code::OutOfRange);
    EXPECT_EQ(Mass::tryParse("999999999999 kg").error().code(), Code::OutOfRange);
}

TEST(Mass, IsWrittenInGrams) {
    EXPECT_EQ(Mass::fromMilligrams(236'400).text(), "236.4 g");
    EXPECT_EQ(Mass::fromMilligrams(1'000).text(), "1 g");
}

} // namespace
} // namespace rw
