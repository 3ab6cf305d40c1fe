// SPDX-License-Identifier: GPL-3.0-or-later
// Strings that are not where an outline and equal spans would have them.
#include "core/length/cut_plan.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

using namespace rw;
using namespace rw::length;

namespace {

const LaidString& laid(const CutPlan& plan, std::string_view name) {
    for (const PiecePlan& piece : plan.pieces) {
        for (const Arm& arm : piece.arms) {
            const auto found =
                std::ranges::find_if(arm.strings, [&](const LaidString& string) { return string.id.text() == name; });
            if (found != arm.strings.end()) {
                return *found;
            }
        }
    }
    throw std::out_of_range(std::string(name));
}

CutRequest openSquash() {
    CutRequest request = inTwoPieces(defaultRequest(Sport::Squash));
    request.hoop.openThroat = true;
    return request;
}

StringPlace place(const char* name, Point low, Point high, std::optional<double> wallMm = {}) {
    return {StringId::fromText(name).value(), low, high, wallMm};
}

/// Every string where the bed has it, said outright.
std::vector<StringPlace> asTheyLie(const CutPlan& plan) {
    std::vector<StringPlace> places;
    for (const PiecePlan& piece : plan.pieces) {
        for (const Arm& arm : piece.arms) {
            for (const LaidString& string : arm.strings) {
                const bool up = string.to == RunsTo::Head || string.to == RunsTo::Right;
                places.push_back({string.id, up ? string.from : string.end, up ? string.end : string.from, {}});
            }
        }
    }
    return places;
}

TEST(Places, SaidOutrightAreTheSameAsFromTheOutline) {
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        CutRequest request = defaultRequest(sport);
        const CutPlan before = planCut(request).value();
        request.places = asTheyLie(before);
        const CutPlan after = planCut(request).value();
        for (std::size_t i = 0; i < before.pieces.size(); ++i) {
            EXPECT_NEAR(after.pieces[i].pathMm, before.pieces[i].pathMm, 1e-6);
            EXPECT_NEAR(after.pieces[i].crimpMm, before.pieces[i].crimpMm, 1e-9);
        }
    }
}

TEST(Places, AreStraightLinesThatTheLinksFollow) {
    CutRequest request = openSquash();
    const CutPlan before = planCut(request).value();
    const LaidString was = laid(before, "1L");
    const Point throat{-8, -200};
    const Point head{-6, 170};
    request.places = {place("1L", throat, head, 25)};
    const CutPlan after = planCut(request).value();
    const LaidString& is = laid(after, "1L");
    EXPECT_NEAR(is.chordMm, std::hypot(2, 370), 1e-9);
    EXPECT_EQ(is.wallMm, 25);
    EXPECT_EQ(laid(after, "2L").chordMm, laid(before, "2L").chordMm);
    EXPECT_NEAR(after.pieces[0].chordsMm - before.pieces[0].chordsMm, is.chordMm - was.chordMm, 1e-9);
    EXPECT_NEAR(after.pieces[0].wallsMm - before.pieces[0].wallsMm, 2 * (25 - 10), 1e-9);
    EXPECT_NE(after.pieces[0].linksMm, before.pieces[0].linksMm);
}

// By hand: a main from (-4, -165) to (10, 165) meets the crosses where its own line does.
TEST(Places, CrimpCountsTheGapsAsTheStringMeetsThem) {
    CutRequest request = inTwoPieces(withSpans(headOf(Sport::Tennis, 340, 250, 7, 11), 180, 200));
    request.places = {place("C", {-4, -165}, {10, 165})};
    const CutPlan plan = planCut(request).value();
    const double slope = std::hypot(14, 330) / 330;
    const double h = 1.30;
    // Ten gaps of 20 mm along y, longer along the string.
    const double own = 10 * (std::hypot(20 * slope, h) - 20 * slope);
    const double others = 6 * 10 * (std::hypot(20, h) - 20); // the outermost main is 236 mm long: it meets all eleven
    EXPECT_NEAR(plan.pieces[0].crimpMm, own + others, 1e-9);
}

TEST(Fan, ClosesUpInTheThroat) {
    CutRequest request = openSquash();
    const CutPlan parallel = planCut(request).value();
    request.mainsThroatSpanMm = 60;
    const CutPlan fan = planCut(request).value();
    for (const char* name : {"7L", "7R", "3L"}) {
        EXPECT_GT(laid(fan, name).chordMm, laid(parallel, name).chordMm) << name;
    }
    const LaidString& outer = laid(fan, "7L");
    EXPECT_NEAR(std::min(outer.from.y, outer.end.y), std::min(laid(fan, "7R").from.y, laid(fan, "7R").end.y), 1e-9);
    EXPECT_NEAR(std::abs(outer.from.y < outer.end.y ? outer.from.x : outer.end.x), 30, 1e-9);
    EXPECT_GT(fan.pieces[0].chordsMm, parallel.pieces[0].chordsMm);
    request.mainsThroatSpanMm = *request.mainsThroatSpanMm + 1;
    EXPECT_LT(planCut(request).value().pieces[0].chordsMm, fan.pieces[0].chordsMm);
}

TEST(Fan, AsWideAsTheHeadIsNoFan) {
    CutRequest request = openSquash();
    const double need = needOf(planCut(request).value());
    request.mainsThroatSpanMm = 0.75 * 190;
    EXPECT_NEAR(needOf(planCut(request).value()), need, 1e-9);
}

std::string refusedKey(const CutRequest& request) {
    const auto plan = planCut(request);
    return plan ? "" : plan.error().text("key");
}

TEST(Places, ThatCannotBeAreRefusedByName) {
    CutRequest request = openSquash();
    request.places = {place("8L", {-10, -170}, {-10, 170})};
    EXPECT_EQ(refusedKey(request), "points");
    request.places = {place("1L", {-6, 170}, {-6, -170})};
    EXPECT_EQ(refusedKey(request), "points.1L");
    request.places = {place("X3", {80, 60}, {-80, 60})};
    EXPECT_EQ(refusedKey(request), "points.X3");
    request.places = {place("1L", {60, -170}, {60, 170})}; // right of 1R
    EXPECT_EQ(refusedKey(request), "points.1L");
    request.places = {place("1L", {-6, -900}, {-6, 170})};
    EXPECT_EQ(refusedKey(request), "points.1L.throat[1]");
    request.places = {place("1L", {-6, -170}, {-6, 170}, 100)};
    EXPECT_EQ(refusedKey(request), "points.1L.wallMm");
    request.places.clear();
    request.mainsThroatSpanMm = 10; // 14 strings of 1.2 mm
    EXPECT_EQ(refusedKey(request), "pattern.mainsThroatSpanMm");
    request.mainsThroatSpanMm = 195;
    EXPECT_EQ(refusedKey(request), "pattern.mainsThroatSpanMm");
}

TEST(Places, MayShareAHole) {
    CutRequest request = openSquash();
    const CutPlan plan = planCut(request).value();
    const LaidString& second = laid(plan, "2L");
    const Point hole = second.from.y < second.end.y ? second.from : second.end;
    request.places = {place("1L", hole, {-5, 175})};
    EXPECT_TRUE(planCut(request));
}

// String over 60 mm bare along a hoop is a warning; across an open throat there is nothing it could lie on.
TEST(Places, FarApartAtTheStart) {
    CutRequest bridged = openSquash();
    bridged.hoop.openThroat = false;
    bridged.hoop.lengthMm = 360;
    const auto startingAt = [](CutRequest request, HoopEnd end) {
        request.pattern.mainsStart = end;
        request.pattern.mains = 6;
        request.pattern.mainsSpanMm = 150;
        request.places = {place("1L", {-35, -150}, {-35, 150}), place("1R", {35, -150}, {35, 150}),
                          place("2L", {-45, -140}, {-45, 140}), place("2R", {45, -140}, {45, 140})};
        return planCut(request);
    };
    const auto warned = startingAt(bridged, HoopEnd::Throat);
    ASSERT_TRUE(warned);
    const auto why = std::ranges::find(warned->why, Why::Kind::LongOutsideRun, &Why::kind);
    ASSERT_NE(why, warned->why.end());
    EXPECT_EQ(why->text, "1L to 1R");
    EXPECT_NEAR(why->value, 70, 1e-9);
    const auto refused = startingAt(openSquash(), HoopEnd::Throat);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text("key"), "points");
    EXPECT_EQ(refused.error().text("text"), "1L to 1R");
    EXPECT_TRUE(startingAt(openSquash(), HoopEnd::Head));
}

} // namespace
