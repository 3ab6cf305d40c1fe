// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/length.h"

#include <gtest/gtest.h>

using rw::Code;
using rw::Length;

namespace {

std::int64_t mm(std::string_view text) { return Length::tryParse(text).value().millimetres(); }
Code refusal(std::string_view text) { return Length::tryParse(text).error().code(); }

// Foot = 0.3048 m exactly: NIST SP 811, Appendix B.8.
TEST(Length, FeetOnReelsAndSetsAreExact) {
    EXPECT_EQ(mm("660 ft"), 201'168);
    EXPECT_EQ(mm("330 ft"), 100'584);
    EXPECT_EQ(mm("40 ft"), 12'192);
    EXPECT_EQ(mm("30 ft"), 9'144);
    EXPECT_EQ(Length::fromFeetRoundedDown(660).millimetres(), 201'168);
}

TEST(Length, ReadsWhatPeopleType) {
    EXPECT_EQ(mm("11.2"), 11'200);
    EXPECT_EQ(mm(" 11,2 m "), 11'200);
    EXPECT_EQ(mm("620cm"), 6'200);
    EXPECT_EQ(mm("6200 mm"), 6'200);
    EXPECT_EQ(mm("38' 6\""), 11'734); // 11734.8 mm, never longer than it is
    EXPECT_EQ(mm("-0.05"), -50);
    EXPECT_EQ(mm("\u22120.05"), -50);
}

TEST(Length, RefusesWhatItCannotKeep) {
    EXPECT_EQ(refusal(""), Code::Unreadable);
    EXPECT_EQ(refusal("abc"), Code::Unreadable);
    EXPECT_EQ(refusal("11.2 yards"), Code::Unreadable);
    EXPECT_EQ(refusal("11.2.3"), Code::Unreadable);
    EXPECT_EQ(refusal("38' 12\""), Code::Unreadable);
    EXPECT_EQ(refusal("0.00000000001' 999999999999\""), Code::Unreadable);
    EXPECT_EQ(refusal("11.2345"), Code::TooFine);
    EXPECT_EQ(refusal("10001"), Code::OutOfRange);
    EXPECT_EQ(refusal("999999999999"), Code::OutOfRange);
    EXPECT_EQ(refusal("9999999999999"), Code::Unreadable);
}

TEST(Length, RoundsOnlyUpToTheTape) {
    EXPECT_EQ(Length::fromMillimetres(11'183).roundedUpTo(Length::fromMillimetres(50)).millimetres(), 11'200);
    EXPECT_EQ(Length::fromMillimetres(11'200).roundedUpTo(Length::fromMillimetres(50)).millimetres(), 11'200);
    EXPECT_EQ(Length::roundedUp(11'200.0000000001).millimetres(), 11'200);
    EXPECT_EQ(Length::roundedUp(11'200.01).millimetres(), 11'201);
}

// floor(200 / 11.0) and so on, in whole millimetres; 360 ft is exactly 12 squash sets of 30 ft.
TEST(Length, WholeJobsFromAReel) {
    EXPECT_EQ(Length::fromMillimetres(200'000).wholeTimes(Length::fromMillimetres(11'000)), 18);
    EXPECT_EQ(Length::fromMillimetres(201'168).wholeTimes(Length::fromMillimetres(11'580)), 17);
    EXPECT_EQ(Length::fromMillimetres(200'000).wholeTimes(Length::fromMillimetres(12'000)), 16);
    EXPECT_EQ(Length::fromMillimetres(200'000).wholeTimes(Length::fromMillimetres(10'000)), 20);
    EXPECT_EQ(Length::fromFeetRoundedDown(360).wholeTimes(Length::fromFeetRoundedDown(30)), 12);
    EXPECT_EQ(Length::fromMillimetres(27'600).wholeTimes(Length::fromMillimetres(9'300)), 2);
    EXPECT_EQ(Length::fromMillimetres(-5).wholeTimes(Length::fromMillimetres(9'300)), 0);
}

} // namespace
