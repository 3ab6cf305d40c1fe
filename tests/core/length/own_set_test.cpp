// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace rw;
using namespace rw::length;

namespace {

CutRequest withSet(CutRequest request, std::int64_t mm) {
    request.set = Length::fromMillimetres(mm);
    return request;
}

CutPlan planOf(CutRequest request, std::int64_t mm) { return planCut(withSet(std::move(request), mm)).value(); }

const SetWay& wayOf(const CutPlan& plan, SetUse use) { return *std::ranges::find(plan.set->ways, use, &SetWay::use); }

bool says(const CutPlan& plan, Why::Kind kind) {
    return std::ranges::find(plan.why, kind, &Why::kind) != plan.why.end();
}

TEST(OwnSet, IsUsedUpToTheLastMillimetre) {
    for (const std::int64_t set : {9144, 10'000, 12'000, 12'192, 12'201, 30'000}) {
        for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
            for (const Method method : {Method::TwoPiece, Method::OnePiece}) {
                CutRequest request = defaultRequest(sport);
                request.method = method;
                const CutPlan plan = planOf(request, set);
                EXPECT_EQ(cutOf(plan).millimetres(), set);
                EXPECT_FALSE(plan.pieces[0].heldAtPacket);
                for (const SetWay& way : plan.set->ways) {
                    EXPECT_EQ((way.shares[0] + way.shares[1]).millimetres(), set);
                }
            }
        }
    }
}

// Plenty: folding it in the middle leaves both halves safe. Little: the mains, which need more, are measured.
TEST(OwnSet, IsCutInTheWayThatIsSafestForTheWorseOff) {
    const CutRequest request = inTwoPieces(defaultRequest(Sport::Tennis));
    const CutPlan plenty = planOf(request, 12'800);
    EXPECT_EQ(plenty.set->ways.front().use, SetUse::Halved);
    EXPECT_EQ(plenty.pieces[0].cut, Length::fromMillimetres(6400));
    const CutPlan little = planOf(request, 11'000);
    EXPECT_EQ(little.set->ways.front().use, SetUse::MainsAndRest);
    EXPECT_GT(little.pieces[0].cut, little.pieces[1].cut);
    for (const CutPlan& plan : {plenty, little}) {
        ASSERT_EQ(plan.set->ways.size(), 2U);
        EXPECT_LE(plan.set->ways[0].chanceWorst, plan.set->ways[1].chanceWorst);
        EXPECT_NEAR(plan.set->ways[0].chanceWorst, std::max(plan.pieces[0].chanceShort, plan.pieces[1].chanceShort),
                    1e-12);
        EXPECT_EQ(wayOf(plan, SetUse::MainsAndRest).shares[0].millimetres() % 50, 0);
    }
    // Measured as from a reel where there is plenty; where there is little, so that both are about equally safe.
    EXPECT_GE(wayOf(plenty, SetUse::MainsAndRest).shares[0].metres() * 1000, plenty.pieces[0].quantilesMm.p99);
    EXPECT_LT(little.pieces[0].cut.metres() * 1000, little.pieces[0].quantilesMm.p99);
    EXPECT_LT(std::abs(little.pieces[0].chanceShort - little.pieces[1].chanceShort), 0.1);
}

TEST(OwnSet, OfOnePieceIsUsedWholeWithItsShortSideMeasured) {
    const CutPlan plan = planOf(inOnePiece(defaultRequest(Sport::Squash), "plain-2"), 10'000);
    ASSERT_EQ(plan.set->ways.size(), 1U);
    EXPECT_EQ(plan.set->ways[0].use, SetUse::Whole);
    EXPECT_EQ(plan.pieces[0].shortSide->measure, plan.set->ways[0].shares[0]);
    EXPECT_GT(plan.pieces[0].shortSide->measure.metres() * 1000, plan.pieces[0].shortSide->needMm);
}

TEST(OwnSet, IsJudgedByTheChanceThatTheJobNeedsMore) {
    const CutRequest request = inTwoPieces(defaultRequest(Sport::Tennis));
    double last = 1;
    for (std::int64_t set = 9000; set <= 13'000; set += 50) {
        const SetJudgement judged = *planOf(request, set).set;
        EXPECT_LE(judged.chanceNotEnough, last);
        last = judged.chanceNotEnough;
        EXPECT_EQ(judged.verdict == PacketVerdict::Enough, last <= 0.02);
        EXPECT_EQ(judged.verdict == PacketVerdict::NotEnough, judged.chanceWithClamp > 0.25);
        EXPECT_EQ(judged.verdict == PacketVerdict::Enough, set >= judged.enoughFrom.millimetres());
        EXPECT_LT(judged.chanceWithClamp, last);
    }
}

TEST(OwnSet, APrintedLengthIsLessSureThanAMeasuredOne) {
    CutRequest request = withSet(inTwoPieces(defaultRequest(Sport::Tennis)), 11'600);
    const double printed = planCut(request).value().set->chanceNotEnough;
    request.setMeasured = true;
    EXPECT_LT(planCut(request).value().set->chanceNotEnough, printed);
}

// 18 x 20 in polyester in an oversize head is more than the usual packet in two pieces; one piece has two ends fewer.
TEST(OwnSet, WhatIsNotEnoughHasItsAlternativeNamed) {
    CutRequest request = of(headOf(Sport::Tennis, 345, 258, 18, 20), Material::Polyester);
    const CutPlan plan = planOf(inTwoPieces(request), 12'000);
    EXPECT_EQ(plan.set->verdict, PacketVerdict::NotEnough);
    ASSERT_TRUE(plan.set->alternative);
    EXPECT_LT(plan.set->alternative->needMm, needOf(plan));
    EXPECT_LT(plan.set->alternative->chanceNotEnough, plan.set->chanceNotEnough);
    const CutPlan one = planOf(inOnePiece(request, plan.set->alternative->route), 12'000);
    EXPECT_EQ(one.pieces[0].needMm, plan.set->alternative->needMm);
    EXPECT_TRUE(says(plan, Why::Kind::SetJudged));
    EXPECT_TRUE(says(plan, Why::Kind::SetUsed));
    EXPECT_TRUE(says(plan, Why::Kind::SetSaferInOne));
    EXPECT_TRUE(says(plan, Why::Kind::SetSaferWithClamp));
    EXPECT_TRUE(says(plan, Why::Kind::SetEnoughFrom));
    EXPECT_FALSE(says(planOf(inTwoPieces(request), 14'000), Why::Kind::SetEnoughFrom));
    // Two strings cannot become one.
    request.crosses.material = Material::Nylon;
    EXPECT_FALSE(planOf(inTwoPieces(request), 12'000).set->alternative);
}

// C: no job that the trade does daily from a packet is called not enough: 16 x 19 up to 100 in2 (12.0 and 12.192 m),
// badminton (10 m), squash in one piece (9.144 and 10 m), every material.
TEST(OwnSet, EverydayJobsAreNeverCalledNotEnough) {
    const auto expectDoes = [](CutRequest request, Material material, std::int64_t set) {
        const CutPlan plan = planOf(of(std::move(request), material), set);
        EXPECT_NE(plan.set->verdict, PacketVerdict::NotEnough) << materialText(material) << ' ' << set;
    };
    for (const Material material : kMaterials) {
        for (double squareInches = 90; squareInches <= 100; ++squareInches) {
            for (const Method method : {Method::TwoPiece, Method::OnePiece}) {
                CutRequest request = defaultRequest(Sport::Tennis);
                request.hoop.headAreaCm2 = squareInches * 6.4516;
                request.method = method;
                expectDoes(request, material, 12'000);
                expectDoes(request, material, 12'192);
            }
        }
        expectDoes(defaultRequest(Sport::Badminton), material, 10'000);
        CutRequest square = defaultRequest(Sport::Badminton);
        square.hoop.headExponent = 2.5;
        if (material != Material::Aramid) { // of which nobody strings a whole badminton racket
            expectDoes(square, material, 10'000);
        }
        for (const bool open : {false, true}) {
            CutRequest squash = defaultRequest(Sport::Squash);
            squash.hoop.openThroat = open;
            squash.method = Method::OnePiece;
            expectDoes(squash, material, 9144);
            expectDoes(squash, material, 10'000);
        }
    }
}

TEST(OwnSet, OutOfRangeIsRefusedByName) {
    EXPECT_EQ(planCut(withSet(defaultRequest(Sport::Tennis), 12)).error().text("key"), "setMm");
}

} // namespace
