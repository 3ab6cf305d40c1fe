// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/crosses_rise.h"

#include <gtest/gtest.h>

namespace rw {
namespace {

CrossesRise rise(std::string_view text) { return CrossesRise::tryParse(text).value(); }
Tension tension(std::string_view text) { return Tension::tryParse(text, TensionUnit::Pound).value(); }
Code refused(std::string_view text) { return CrossesRise::tryParse(text).error().code(); }

TEST(CrossesRise, IsReadAndWritten) {
    for (const char* text : {"2 lb", "1.5 kg", "10 %", "0.5 lb"}) {
        EXPECT_EQ(rise(text).text(), text);
    }
    EXPECT_EQ(rise("2lb"), rise("2 lb"));
    EXPECT_EQ(rise("7,5%").text(), "7.5 %");
    for (const char* none : {"", "  ", "0", "0 lb", "0 %"}) {
        EXPECT_TRUE(rise(none).isNone()) << none;
        EXPECT_EQ(rise(none).text(), "");
    }
}

TEST(CrossesRise, WhatIsNoRiseIsRefused) {
    EXPECT_EQ(refused("2"), Code::Unreadable) << "of what?";
    EXPECT_EQ(refused("two lb"), Code::Unreadable);
    EXPECT_EQ(refused("2 stone"), Code::Unreadable);
    EXPECT_EQ(refused("1.005 lb"), Code::TooFine);
    EXPECT_EQ(refused("-2 lb"), Code::OutOfRange);
    EXPECT_EQ(refused("21 lb"), Code::OutOfRange);
    EXPECT_EQ(refused("9.1 kg"), Code::OutOfRange);
    EXPECT_EQ(refused("51 %"), Code::OutOfRange);
}

TEST(CrossesRise, IsPutOnTheMainsInTheirUnit) {
    EXPECT_EQ(rise("2 lb").over(tension("28")), tension("30"));
    EXPECT_EQ(rise("2 lb").over(tension("28.25")), tension("30.25"));
    EXPECT_EQ(rise("10 %").over(tension("28")), tension("30.8"));
    EXPECT_EQ(rise("10 %").over(tension("27.5")), tension("30.3")) << "30.25, to the tenth";
    EXPECT_EQ(rise("2 lb").over(tension("12.5 kg")), tension("13.4 kg")) << "13.41, to the tenth";
    EXPECT_EQ(rise("1 kg").over(tension("28")), tension("30.2")) << "30.20";
    EXPECT_EQ(rise("").over(tension("28.75")), tension("28.75"));
    EXPECT_EQ(rise("2 lb").over(tension("99")).error().code(), Code::OutOfRange);
}

TEST(CrossesRise, OneNumberForBothIsHigherOnlyInBadminton) {
    EXPECT_EQ(crossesOfOneNumber(tension("28"), Sport::Badminton, rise("2 lb")), tension("30"));
    EXPECT_EQ(crossesOfOneNumber(tension("28"), Sport::Squash, rise("2 lb")), tension("28"));
    EXPECT_EQ(crossesOfOneNumber(tension("28"), Sport::Badminton, CrossesRise::none()), tension("28"));
    EXPECT_EQ(crossesOfOneNumber(tension("99"), Sport::Badminton, rise("2 lb")), tension("99"));
}

} // namespace
} // namespace rw
