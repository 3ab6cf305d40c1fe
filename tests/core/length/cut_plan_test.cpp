// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"
#include "tests/core/length/random_frames.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace rw;
using namespace rw::length;

namespace {

TEST(CutPlan, ThePathIsWhatItIsMadeOf) {
    Frames frames(2);
    for (int round = 0; round < 200; ++round) {
        const CutRequest request = frames.next();
        const int strings = request.pattern.mains + request.pattern.crosses;
        for (const CutPlan& plan : allPlans(request)) {
            double walls = 0;
            for (const PiecePlan& piece : plan.pieces) {
                double chords = 0;
                double arms = 0;
                for (const Arm& arm : piece.arms) {
                    arms += arm.pathMm;
                    for (const LaidString& string : arm.strings) {
                        chords += string.chordMm;
                        EXPECT_NEAR(std::hypot(string.from.x - string.end.x, string.from.y - string.end.y),
                                    string.chordMm, 1e-9);
                    }
                }
                EXPECT_NEAR(piece.chordsMm, chords, 1e-6);
                EXPECT_NEAR(piece.pathMm, arms, 1e-6); // the arms add up to the piece
                EXPECT_NEAR(piece.pathMm, piece.chordsMm + piece.wallsMm + piece.linksMm + piece.crimpMm, 1e-6);
                EXPECT_NEAR(piece.needMm, piece.pathMm / (1 + piece.stretchPercent / 100) + piece.endsMm, 1e-6);
                walls += piece.wallsMm;
            }
            EXPECT_NEAR(walls, 2 * plan.hoop.wallMm * strings, 1e-6);
        }
    }
}

// Links by hand from the points that the plan gives: straight between exit points one wall outside.
TEST(CutPlan, LinksAreStraightBetweenExitPoints) {
    const CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "wrap-last-3");
    const CutPlan plan = planCut(request).value();
    const auto outside = [&](const Point& tip, const Point& other) {
        const double length = std::hypot(tip.x - other.x, tip.y - other.y);
        return Point{tip.x + (tip.x - other.x) / length * plan.hoop.wallMm,
                     tip.y + (tip.y - other.y) / length * plan.hoop.wallMm};
    };
    const auto apart = [](const Point& a, const Point& b) { return std::hypot(a.x - b.x, a.y - b.y); };
    double links = 0;
    std::vector<Point> starts;
    for (const Arm& arm : plan.pieces[0].arms) {
        starts.push_back(outside(arm.strings[0].from, arm.strings[0].end));
        for (std::size_t i = 1; i < arm.strings.size(); ++i) {
            links += apart(outside(arm.strings[i - 1].end, arm.strings[i - 1].from),
                           outside(arm.strings[i].from, arm.strings[i].end));
        }
    }
    links += apart(starts[0], starts[1]);
    EXPECT_NEAR(plan.pieces[0].linksMm, links, 1e-9);
}

TEST(CutPlan, NoChanceAboveTheCeilingUnlessHeld) {
    Frames frames(6);
    for (int round = 0; round < 200; ++round) {
        const CutRequest request = frames.next();
        for (const CutPlan& plan : allPlans(request)) {
            const bool held = plan.pieces[0].heldAtPacket;
            EXPECT_TRUE(held || plan.chanceShortJob <= request.ceiling) << plan.chanceShortJob;
            for (const PiecePlan& piece : plan.pieces) {
                EXPECT_EQ(piece.heldAtPacket, held);
                EXPECT_TRUE(held || piece.cut.millimetres() % request.tapeStep.millimetres() == 0);
                if (piece.role == PieceRole::Whole) {
                    EXPECT_GT(piece.shortSide->measure.millimetres(), piece.shortSide->needMm);
                    EXPECT_NEAR(piece.shortSide->headLengths,
                                static_cast<double>(piece.shortSide->measure.millimetres()) / plan.headLengthMm, 1e-9);
                }
            }
        }
    }
}

TEST(CutPlan, EachHalfOfAOnePieceJobHasItsOwnStretch) {
    const auto needAt = [](const char* mains, const char* crosses) {
        CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "plain-0");
        request.mains.tension = Tension::tryParse(mains, TensionUnit::Pound).value();
        request.crosses.tension = Tension::tryParse(crosses, TensionUnit::Pound).value();
        return planCut(request).value().pieces[0];
    };
    const PiecePlan even = needAt("55 lb", "55 lb");
    const PiecePlan looserCrosses = needAt("55 lb", "40 lb");
    EXPECT_NEAR(even.stretchPercent, 9.5, 1e-9);
    // The short side is mains only, so only the long side needs more.
    EXPECT_NEAR(looserCrosses.shortSide->needMm, even.shortSide->needMm, 1e-9);
    EXPECT_GT(looserCrosses.needMm, even.needMm);
    // Each string with the link before it: crosses and the link from the last main to X1.
    double crossesPath = 0;
    const Arm& arm = even.arms[1];
    for (std::size_t i = 8; i < arm.strings.size(); ++i) {
        crossesPath += arm.strings[i].chordMm + 22;
    }
    const double e = 0.095;
    const double looser = 0.095 * std::sqrt(40.0 / 55.0);
    EXPECT_GT(looserCrosses.needMm - even.needMm, crossesPath * (1 / (1 + looser) - 1 / (1 + e)));
    EXPECT_LT(looserCrosses.needMm - even.needMm, 1.1 * crossesPath * (1 / (1 + looser) - 1 / (1 + e)));
}

TEST(CutPlan, EndsAreThePiecesOwn) {
    CutRequest request = inTwoPieces(defaultRequest(Sport::Tennis));
    const CutPlan knotted = planCut(request).value();
    EXPECT_EQ(knotted.pieces[0].endsMm, 600);
    EXPECT_EQ(knotted.pieces[1].endsMm, 450);
    request.ends.crossesStartClamped = true;
    EXPECT_EQ(planCut(request).value().pieces[1].endsMm, 600);
    EXPECT_EQ(planCut(inOnePiece(request, "plain-1")).value().pieces[0].endsMm, 600);
}

TEST(CutPlan, SaysWhatItStandsOn) {
    const auto says = [](const CutPlan& plan, Why::Kind kind) {
        return std::ranges::find(plan.why, kind, &Why::kind) != plan.why.end();
    };
    const CutPlan plan = planCut(inOnePiece(defaultRequest(Sport::Tennis), "plain-2")).value();
    EXPECT_TRUE(says(plan, Why::Kind::OutlineFrom));
    EXPECT_TRUE(says(plan, Why::Kind::GeometryOnly));
    EXPECT_TRUE(says(plan, Why::Kind::RouteChosen));
    EXPECT_TRUE(says(plan, Why::Kind::StartEndAssumed));
    EXPECT_TRUE(says(plan, Why::Kind::TwoTopCrosses));
    EXPECT_TRUE(says(plan, Why::Kind::CeilingDecides));
    CutRequest throatUp = inOnePiece(defaultRequest(Sport::Tennis), "throat-up-2");
    EXPECT_TRUE(says(planCut(throatUp).value(), Why::Kind::CrossesFromThroat));
    CutRequest dense = headOf(Sport::Tennis, 370, 285, 18, 20);
    EXPECT_TRUE(says(planCut(of(dense, Material::Polyester)).value(), Why::Kind::AbovePacket));
    CutRequest costly = inTwoPieces(defaultRequest(Sport::Tennis));
    costly.costPerMetre = 0.01;
    costly.spoiledJobCost = 100;
    costly.ceiling = 0.1;
    EXPECT_TRUE(says(planCut(costly).value(), Why::Kind::LeastCost));
}

TEST(CutPlan, NumbersOutsideTheirRangeAreRefusedByName) {
    CutRequest request = defaultRequest(Sport::Tennis);
    request.hoop.lengthMm = std::nan("");
    EXPECT_EQ(planCut(request).error().text("key"), "hoop.lengthMm");
    request = defaultRequest(Sport::Tennis);
    request.ceiling = 0;
    EXPECT_EQ(planCut(request).error().text("key"), "ceiling");
    request = defaultRequest(Sport::Tennis);
    request.mains.stretchPercent = -1;
    EXPECT_EQ(planCut(request).error().text("key"), "mains.stretchPercent");
    request = defaultRequest(Sport::Tennis);
    request.tapeStep = Length::fromMillimetres(0);
    EXPECT_EQ(planCut(request).error().text("key"), "tapeStepMm");
}

} // namespace
