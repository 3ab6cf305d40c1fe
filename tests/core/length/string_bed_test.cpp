// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/outline.h"
#include "core/length/string_bed.h"
#include "tests/core/length/requests.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace rw;
using namespace rw::length;
using testing::DoubleNear;
using testing::ElementsAre;

namespace {

using Kind = StringId::Kind;

StringBed bedOf(const CutRequest& request, double diameterMm = 1.3) {
    const Outline outline = findOutline(request).value().outline;
    const BedSpans spans =
        bedSpans(request.sport, request.hoop.openThroat, request.pattern, outline.lengthMm, outline.widthMm);
    return StringBed::lay(outline, request.pattern, spans, diameterMm).value();
}

std::string refusedKey(const CutRequest& request) {
    const auto plan = planCut(request);
    EXPECT_FALSE(plan);
    return plan ? "" : plan.error().text("key");
}

TEST(SpreadPlaces, GapsWidenLinearlyFromTheMiddle) {
    // Five gaps of 1.5, 1.25, 1, 1.25, 1.5 units over 65 mm.
    EXPECT_THAT(spreadPlaces(6, 65, 0.5, 0),
                ElementsAre(DoubleNear(-32.5, 1e-9), DoubleNear(-17.5, 1e-9), DoubleNear(-5, 1e-9), DoubleNear(5, 1e-9),
                            DoubleNear(17.5, 1e-9), DoubleNear(32.5, 1e-9)));
}

TEST(SpreadPlaces, AnEvenNumberOfGapsHasTwoMiddleOnes) {
    // Four gaps of 2, 1, 1, 2 units over 60 mm, around 100.
    EXPECT_THAT(spreadPlaces(5, 60, 1, 100),
                ElementsAre(DoubleNear(70, 1e-9), DoubleNear(90, 1e-9), DoubleNear(100, 1e-9), DoubleNear(110, 1e-9),
                            DoubleNear(130, 1e-9)));
}

TEST(SpreadPlaces, SumToTheSpanAndLieAlikeOnBothSides) {
    for (int count = 2; count <= 34; ++count) {
        for (const double spread : {0.0, 0.25, 2.0}) {
            const auto places = spreadPlaces(count, 240, spread, 3);
            ASSERT_EQ(places.size(), static_cast<std::size_t>(count));
            EXPECT_NEAR(places.back() - places.front(), 240, 1e-9);
            for (std::size_t i = 0; i < places.size(); ++i) {
                EXPECT_NEAR(places[i] - 3, 3 - places[places.size() - 1 - i], 1e-9);
            }
        }
    }
}

TEST(StringBed, AnOddNumberOfMainsHasACentreMain) {
    CutRequest request = defaultRequest(Sport::Tennis);
    request.pattern.mains = 17;
    const StringBed bed = bedOf(request);
    EXPECT_NEAR(bed.at({Kind::MainCentre, 0}).chordMm, 329, 1e-9);
    EXPECT_NEAR(bed.at({Kind::MainCentre, 0}).low.x, 0, 1e-9);
    EXPECT_LT(bed.at({Kind::MainLeft, 1}).low.x, 0);
    EXPECT_GT(bed.at({Kind::MainRight, 1}).low.x, 0);
    EXPECT_NEAR(bed.at({Kind::MainLeft, 8}).low.x, -bed.at({Kind::MainRight, 8}).low.x, 1e-9);
    EXPECT_NEAR(bed.at({Kind::MainRight, 8}).low.x, 0.74 * 245 / 2, 1e-9);
}

TEST(StringBed, CrossesCountFromTheHead) {
    const StringBed bed = bedOf(defaultRequest(Sport::Tennis));
    EXPECT_NEAR(bed.at({Kind::Cross, 1}).low.y, 0.73 * 329 / 2, 1e-9);
    EXPECT_NEAR(bed.at({Kind::Cross, 19}).low.y, -0.73 * 329 / 2, 1e-9);
    CutRequest open = defaultRequest(Sport::Squash);
    open.hoop.openThroat = true;
    EXPECT_NEAR(bedOf(open, 1.2).at({Kind::Cross, 18}).low.y, 20 - 0.70 * 360 / 2, 1e-9);
}

// A cross near the rim meets fewer mains; only gaps between mains that it really meets bend it.
TEST(StringBed, RimCrossesMeetFewerMains) {
    const CutRequest request = withSpans(headOf(Sport::Tennis, 329, 245, 16, 19), 216, 300);
    const StringBed bed = bedOf(request);
    const double gap = 216.0 / 15;
    const double h = 1.3;
    const auto gapsBent = [&](const StringId& id, double g) { return bed.crimpOf(id, h) / (std::hypot(g, h) - g); };
    EXPECT_NEAR(gapsBent({Kind::Cross, 10}, gap), 15, 1e-6);
    // X1 is at y = 150: half its width is 122.5 sqrt(1 - (150 / 164.5)^2) = 50.29 mm. Mains lie at 7.2, 21.6, 36.0
    // and 50.4 mm: it meets three a side, five gaps.
    EXPECT_NEAR(bed.at({Kind::Cross, 1}).chordMm / 2, 50.29, 0.01);
    EXPECT_NEAR(gapsBent({Kind::Cross, 1}, gap), 5, 1e-6);
    // The outermost main is at x = 108: it reaches 164.5 sqrt(1 - (108 / 122.5)^2) = 77.6 mm up and down; crosses
    // lie 16.67 mm apart: 4 either side of the middle one, eight gaps.
    EXPECT_NEAR(gapsBent({Kind::MainLeft, 8}, 300.0 / 18), 8, 1e-6);
}

TEST(StringBed, StringsOutsideTheHeadAreRefused) {
    CutRequest wide = defaultRequest(Sport::Tennis);
    wide.pattern.mainsSpanMm = 245;
    EXPECT_EQ(refusedKey(wide), "pattern.mainsSpanMm");
    CutRequest tall = defaultRequest(Sport::Tennis);
    tall.pattern.crossesSpanMm = 330;
    EXPECT_EQ(refusedKey(tall), "pattern.crossesSpanMm");
    CutRequest high = defaultRequest(Sport::Tennis);
    high.pattern.crossesCentreMm = 50;
    EXPECT_EQ(refusedKey(high), "pattern.crossesCentreMm");
    CutRequest touching = defaultRequest(Sport::Tennis);
    touching.pattern.mainsSpanMm = 15;
    EXPECT_EQ(refusedKey(touching), "pattern.mainsSpanMm");
}

} // namespace
