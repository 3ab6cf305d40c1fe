// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/hoop_curve.h"
#include "core/length/outline.h"
#include "tests/core/length/requests.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

using namespace rw;
using namespace rw::length;
using testing::HasSubstr;

namespace {

FoundOutline found(const CutRequest& request) { return findOutline(request).value(); }
Outline outlineOf(const CutRequest& request) { return found(request).outline; }

bool says(const FoundOutline& outline, Why::Kind kind) {
    return std::ranges::find(outline.why, kind, &Why::kind) != outline.why.end();
}

CutRequest with(Sport sport, const Hoop& hoop) {
    CutRequest request = defaultRequest(sport);
    request.hoop = hoop;
    return request;
}

Hoop tape(double lengthMm, double widthMm) {
    Hoop hoop;
    hoop.lengthMm = lengthMm;
    hoop.widthMm = widthMm;
    return hoop;
}

TEST(Outline, FromTheSportAlone) {
    const Outline tennis = outlineOf(with(Sport::Tennis, {}));
    EXPECT_EQ(tennis.standsOn, StandsOn::SportOnly);
    EXPECT_EQ(tennis.lengthMm, 329);
    EXPECT_EQ(tennis.widthMm, 245);
    EXPECT_EQ(tennis.wallMm, 11);
    const Outline squash = outlineOf(with(Sport::Squash, {}));
    EXPECT_EQ(squash.lengthMm, 310);
    EXPECT_EQ(squash.throatExponent, 2);
    EXPECT_EQ(squash.wallMm, 10);
    Hoop open;
    open.openThroat = true;
    const Outline openSquash = outlineOf(with(Sport::Squash, open));
    EXPECT_EQ(openSquash.lengthMm, 360);
    EXPECT_EQ(openSquash.widestFromThroat, 0.6);
    EXPECT_EQ(openSquash.throatExponent, 1.5);
    EXPECT_EQ(openSquash.headExponent, 2);
    EXPECT_EQ(outlineOf(with(Sport::Badminton, {})).wallMm, 9);
}

TEST(Outline, FromTheMarkedSizeAlone) {
    Hoop hoop;
    hoop.headAreaCm2 = 632.257; // 98 in2
    const Outline outline = outlineOf(with(Sport::Tennis, hoop));
    EXPECT_EQ(outline.standsOn, StandsOn::Marked);
    EXPECT_NEAR(outline.areaCm2, 632.257, 1e-6);
    EXPECT_NEAR(outline.lengthMm / outline.widthMm, 1.343, 1e-9);
    EXPECT_NEAR(outline.lengthMm, 329, 0.3);
    hoop.headAreaCm2 = 480;
    hoop.openThroat = true;
    EXPECT_NEAR(outlineOf(with(Sport::Squash, hoop)).areaCm2, 480, 1e-6);
}

TEST(Outline, TheTapeStandsAsMeasured) {
    const FoundOutline outline = found(with(Sport::Tennis, tape(340, 260)));
    EXPECT_EQ(outline.outline.standsOn, StandsOn::Measured);
    EXPECT_EQ(outline.outline.headExponent, 2);
    EXPECT_FALSE(says(outline, Why::Kind::MarkedDisagrees));
}

TEST(Outline, AMarkedSizeFixesTheExponentWhereItLandsNear) {
    for (const double n : {1.7001, 1.85, 2.0, 2.2, 2.3999}) {
        Hoop hoop = tape(340, 260);
        hoop.headAreaCm2 = HoopCurve(340, 260, 0.5, n, n).areaCm2();
        const FoundOutline outline = found(with(Sport::Tennis, hoop));
        EXPECT_EQ(outline.outline.standsOn, StandsOn::MeasuredAndMarked);
        EXPECT_NEAR(outline.outline.headExponent, n, 1e-9);
        EXPECT_NEAR(outline.outline.throatExponent, n, 1e-9);
        EXPECT_NEAR(outline.outline.areaCm2, *hoop.headAreaCm2, 1e-6);
    }
}

TEST(Outline, AMarkedSizeThatDisagreesStaysMarked) {
    for (const double n : {1.65, 2.5}) {
        Hoop hoop = tape(340, 260);
        hoop.headAreaCm2 = HoopCurve(340, 260, 0.5, n, n).areaCm2();
        const FoundOutline outline = found(with(Sport::Tennis, hoop));
        EXPECT_EQ(outline.outline.standsOn, StandsOn::Measured);
        EXPECT_EQ(outline.outline.headExponent, 2);
        const auto why = std::ranges::find(outline.why, Why::Kind::MarkedDisagrees, &Why::kind);
        ASSERT_NE(why, outline.why.end());
        EXPECT_EQ(why->value, *hoop.headAreaCm2);
        EXPECT_NEAR(why->other, HoopCurve(340, 260, 0.5, 2, 2).areaCm2(), 1e-9);
    }
}

// 496 cm2 is the size of the usual open-throat head; that no single exponent gives it is no disagreement.
TEST(Outline, AMarkThatAgreesWithAnOpenThroatIsNotCalledWrong) {
    Hoop hoop = tape(360, 190);
    hoop.openThroat = true;
    hoop.headAreaCm2 = 496;
    const FoundOutline outline = found(with(Sport::Squash, hoop));
    EXPECT_EQ(outline.outline.throatExponent, 1.5);
    EXPECT_EQ(outline.outline.standsOn, StandsOn::Measured);
    EXPECT_FALSE(says(outline, Why::Kind::MarkedDisagrees));
}

TEST(Outline, ExponentsThatWereGivenAreNeverChanged) {
    Hoop hoop = tape(245, 190);
    hoop.headExponent = 2.5; // square-shouldered
    hoop.headAreaCm2 = 380;
    const FoundOutline outline = found(with(Sport::Badminton, hoop));
    EXPECT_EQ(outline.outline.headExponent, 2.5);
    EXPECT_EQ(outline.outline.throatExponent, 2);
    EXPECT_FALSE(says(outline, Why::Kind::MarkedDisagrees)); // it is within 2 % of the tape's
    hoop.headAreaCm2 = 400;
    EXPECT_TRUE(says(found(with(Sport::Badminton, hoop)), Why::Kind::MarkedDisagrees));
}

TEST(Outline, OneMeasureAndTheMarkGiveTheOther) {
    Hoop hoop;
    hoop.lengthMm = 340;
    hoop.headAreaCm2 = 645.16;
    const Outline outline = outlineOf(with(Sport::Tennis, hoop));
    EXPECT_EQ(outline.standsOn, StandsOn::MeasuredAndMarked);
    EXPECT_NEAR(outline.areaCm2, 645.16, 1e-6);
    hoop.headAreaCm2.reset();
    EXPECT_NEAR(outlineOf(with(Sport::Tennis, hoop)).widthMm, 340 / 1.343, 1e-9);
    EXPECT_EQ(outlineOf(with(Sport::Tennis, hoop)).standsOn, StandsOn::LengthMeasured);
    hoop.lengthMm.reset();
    hoop.widthMm = 250;
    EXPECT_EQ(outlineOf(with(Sport::Tennis, hoop)).standsOn, StandsOn::WidthMeasured);
}

TEST(Outline, TheOutermostMainAndTheLastCrossFixTheExponents) {
    CutRequest request = withSpans(headOf(Sport::Tennis, 329, 245, 16, 19), 181, 240);
    const HoopCurve curve(329, 245, 0.5, 2.3, 1.8);
    request.hoop.outermostMainMm = curve.top(90.5) - curve.bottom(90.5);
    request.hoop.lastCrossMm = 2 * curve.halfWidth(-120);
    EXPECT_NEAR(outlineOf(request).headExponent, 2.3, 1e-9);
    EXPECT_NEAR(outlineOf(request).throatExponent, 1.8, 1e-9);
    request.hoop.lastCrossMm.reset();
    const HoopCurve alike(329, 245, 0.5, 2.1, 2.1);
    request.hoop.outermostMainMm = alike.top(90.5) - alike.bottom(90.5);
    EXPECT_NEAR(outlineOf(request).headExponent, 2.1, 1e-9);
    EXPECT_NEAR(outlineOf(request).throatExponent, 2.1, 1e-9);
}

TEST(Outline, ImpossibleMeasurementsAreRefusedInWords) {
    const auto refused = [](const CutRequest& request) {
        const auto plan = planCut(request);
        EXPECT_FALSE(plan);
        EXPECT_EQ(plan.error().code(), Code::ImpossibleValue);
        return plan.error();
    };
    CutRequest longMain = withSpans(headOf(Sport::Tennis, 329, 245, 16, 19), 181, 240);
    longMain.hoop.outermostMainMm = 335; // longer than the head
    EXPECT_EQ(refused(longMain).text("key"), "hoop.outermostMainMm");
    EXPECT_THAT(refused(longMain).text("expected"), HasSubstr("in a head of this length and width"));
    CutRequest wideCross = withSpans(headOf(Sport::Tennis, 329, 245, 16, 19), 181, 240);
    wideCross.hoop.lastCrossMm = 250;
    EXPECT_EQ(refused(wideCross).text("key"), "hoop.lastCrossMm");
    CutRequest swapped = headOf(Sport::Tennis, 245, 329, 16, 19);
    EXPECT_EQ(refused(swapped).text("key"), "hoop.widthMm");
    CutRequest tooSmall = headOf(Sport::Tennis, 329, 245, 16, 19);
    tooSmall.hoop.widthMm.reset();
    tooSmall.hoop.headAreaCm2 = 200;
    EXPECT_EQ(refused(tooSmall).text("key"), "hoop.headAreaCm2");
}

} // namespace
