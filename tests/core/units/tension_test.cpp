// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/tension.h"

#include <gtest/gtest.h>

using rw::Code;
using rw::Tension;
using rw::TensionUnit;

namespace {

Tension read(std::string_view text) { return Tension::tryParse(text, TensionUnit::Pound).value(); }
Code refusal(std::string_view text) { return Tension::tryParse(text, TensionUnit::Pound).error().code(); }

// Factors: NIST SP 811, Appendix B.8.
TEST(Tension, ConvertsByTheExactFactors) {
    EXPECT_NEAR(rw::kNewtonsPerPound, 4.4482216152605, 1e-9);
    EXPECT_NEAR(rw::kNewtonsPerKilogram, 9.80665, 1e-9);
    EXPECT_NEAR(rw::kNewtonsPerPound / rw::kNewtonsPerKilogram, 0.45359237, 1e-9);
    EXPECT_NEAR(read("50 lb").in(TensionUnit::Kilogram), 22.680, 0.001);
    EXPECT_NEAR(read("50 lb").newtons(), 222.411, 0.001);
    EXPECT_NEAR(read("28 kg").in(TensionUnit::Pound), 61.729, 0.001);
}

// Cross & Bower, "Measurements of string tension in a tennis racket", Sports Engineering: 28 kg = 274 N = 62 lb.
TEST(Tension, AgreesWithAPublishedMeasurement) {
    EXPECT_NEAR(read("28 kg").newtons(), 274, 1.0);
    EXPECT_NEAR(read("28 kg").in(TensionUnit::Pound), 62, 0.5);
}

TEST(Tension, KeepsTheNumberAndTheUnitThatWereTyped) {
    EXPECT_EQ(read("52").text(), "52 lb");
    EXPECT_EQ(read("23,5 kg").text(), "23.5 kg");
    EXPECT_EQ(read("52.50 LBS").text(), "52.5 lb");
    EXPECT_NE(read("23.59 kg"), read("52 lb"));
}

TEST(Tension, ALeadingSignChangesTheOldValue) {
    const Tension old = read("54 lb");
    EXPECT_EQ(Tension::tryParse("-2 lb", TensionUnit::Pound, old).value().text(), "52 lb");
    EXPECT_EQ(Tension::tryParse("+1,5", TensionUnit::Kilogram, old).value().text(), "55.5 lb");
    EXPECT_EQ(Tension::tryParse("-1 kg", TensionUnit::Pound, old).value().text(), "51.8 lb");
    EXPECT_EQ(refusal("-3"), Code::NothingToChange);
}

TEST(Tension, RefusesNonsense) {
    EXPECT_EQ(refusal("abc"), Code::Unreadable);
    EXPECT_EQ(refusal(""), Code::Unreadable);
    EXPECT_EQ(refusal("52 st"), Code::Unreadable);
    EXPECT_EQ(refusal("5000 lb"), Code::OutOfRange);
    EXPECT_EQ(refusal("3 lb"), Code::OutOfRange);
    EXPECT_EQ(refusal("52.125"), Code::TooFine);
    EXPECT_EQ(Tension::tryParse("-60", TensionUnit::Pound, read("54")).error().code(), Code::OutOfRange);
}

} // namespace
