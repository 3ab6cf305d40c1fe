// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for any frame, pattern and method, over thousands of random ones. The long form takes ten times as many.
#include "core/length/route.h"
#include "core/strings/material.h"
#include "tests/core/length/random_frames.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

using namespace rw;
using namespace rw::length;

namespace {

const int kFrames = std::getenv("REELWRIGHT_LONG") != nullptr ? 10'000 : 1000;

std::vector<RouteArm> armsOf(const CutPlan& plan) {
    std::vector<RouteArm> arms;
    for (const PiecePlan& piece : plan.pieces) {
        for (const Arm& arm : piece.arms) {
            RouteArm route{arm.side, {}, arm.endsAtEnd, arm.endsAtSide};
            for (const LaidString& string : arm.strings) {
                route.strings.push_back({string.id, string.to});
            }
            arms.push_back(std::move(route));
        }
    }
    return arms;
}

TEST(PlanProperties, EveryStringIsLaidExactlyOnceAndBeginsWhereTheLastStopped) {
    Frames frames(1);
    for (int round = 0; round < kFrames; ++round) {
        const CutRequest request = frames.next();
        const std::vector<CutPlan> plans = allPlans(request);
        EXPECT_GE(plans.size(), 2U); // at least one route of one piece fits any pattern
        for (const CutPlan& plan : plans) {
            const auto arms = armsOf(plan);
            EXPECT_FALSE(faultIn(arms, plan.mainsStart, request.pattern.mains, request.pattern.crosses)) << plan.route;
            std::map<std::string, int> laid;
            for (const RouteArm& arm : arms) {
                for (const RouteString& string : arm.strings) {
                    ++laid[string.id.text()];
                }
            }
            EXPECT_EQ(laid.size(), static_cast<std::size_t>(request.pattern.mains + request.pattern.crosses));
            EXPECT_TRUE(std::ranges::all_of(laid, [](const auto& entry) { return entry.second == 1; }));
        }
    }
}

TEST(PlanProperties, LeftAndRightAreMirrorImages) {
    Frames frames(3);
    for (int round = 0; round < kFrames; ++round) {
        CutRequest left = frames.next();
        left.shortSide = Side::Left;
        CutRequest right = left;
        right.shortSide = Side::Right;
        const auto a = allPlans(left);
        const auto b = allPlans(right);
        ASSERT_EQ(a.size(), b.size());
        for (std::size_t i = 1; i < a.size(); ++i) { // two pieces name their left arm first on both
            const PiecePlan& one = a[i].pieces[0];
            const PiecePlan& other = b[i].pieces[0];
            EXPECT_EQ(one.cut, other.cut);
            EXPECT_NEAR(one.needMm, other.needMm, 1e-6);
            EXPECT_EQ(one.shortSide->measure, other.shortSide->measure);
            for (std::size_t arm = 0; arm < 2; ++arm) {
                EXPECT_EQ(one.arms[arm].side, otherSide(other.arms[arm].side));
                EXPECT_EQ(one.arms[arm].endsAtSide, otherSide(other.arms[arm].endsAtSide));
                for (std::size_t s = 0; s < one.arms[arm].strings.size(); ++s) {
                    EXPECT_NEAR(one.arms[arm].strings[s].from.x, -other.arms[arm].strings[s].from.x, 1e-9);
                    EXPECT_NEAR(one.arms[arm].strings[s].from.y, other.arms[arm].strings[s].from.y, 1e-9);
                }
            }
        }
    }
}

/// The need of every plan of a frame, before and after a change that leaves its routes what they were.
template<class Change>
void expectNeed(const CutRequest& request, Change change, bool grows, const char* what) {
    CutRequest changed = request;
    change(changed);
    const auto before = allPlans(request);
    const auto after = allPlans(changed);
    ASSERT_EQ(before.size(), after.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        EXPECT_EQ(needOf(after[i]) > needOf(before[i]), grows) << what << ' ' << before[i].route;
        EXPECT_NE(needOf(after[i]), needOf(before[i])) << what << ' ' << before[i].route;
    }
}

TEST(PlanProperties, NeedGrowsWithTheHeadTheWallAndTheReachAndFallsWithStretch) {
    Frames frames(4);
    for (int round = 0; round < kFrames; ++round) {
        const CutRequest request = frames.next();
        expectNeed(
            request,
            [](CutRequest& larger) {
                larger.hoop.lengthMm = *larger.hoop.lengthMm * 1.02;
                larger.hoop.widthMm = *larger.hoop.widthMm * 1.02;
            },
            true, "head");
        expectNeed(
            request, [](CutRequest& thicker) { thicker.hoop.wallMm = 12.5; }, true, "wall");
        expectNeed(
            request, [](CutRequest& longer) { longer.ends.reachMm += 10; }, true, "reach");
        expectNeed(
            request,
            [](CutRequest& stretchier) {
                stretchier.mains.stretchPercent = stretchAt55(stretchier.mains.material).middle() + 1;
                stretchier.crosses.stretchPercent = stretchier.mains.stretchPercent;
            },
            false, "stretch");
    }
}

// Over the same span. Which routes of one piece fit changes with the count, so two pieces are looked at, and the routes
// that fit any number of crosses.
TEST(PlanProperties, NeedGrowsWithEachAddedString) {
    Frames frames(7);
    for (int round = 0; round < kFrames; ++round) {
        CutRequest request = frames.next();
        request.pattern.mainsSpanMm = 0.75 * *request.hoop.widthMm;
        request.pattern.crossesSpanMm = 0.74 * *request.hoop.lengthMm;
        CutRequest moreMains = inTwoPieces(request);
        ++moreMains.pattern.mains;
        const double need = needOf(planCut(inTwoPieces(request)).value());
        EXPECT_GT(needOf(planCut(moreMains).value()), need);
        CutRequest moreCrosses = request;
        ++moreCrosses.pattern.crosses;
        EXPECT_GT(needOf(planCut(inTwoPieces(moreCrosses)).value()), need);
        const auto one = planCut(inOnePiece(request, "plain-0"));
        if (one) {
            EXPECT_GT(needOf(planCut(inOnePiece(moreCrosses, "plain-0")).value()), needOf(*one));
        }
    }
}

// A one-piece job is its two sides: their predictions add up to the whole's, and so do their paths.
TEST(PlanProperties, TheTwoSidesAddUpToThePiece) {
    Frames frames(8);
    for (int round = 0; round < kFrames; ++round) {
        const CutRequest request = frames.next();
        for (const CutPlan& plan : allPlans(request)) {
            for (const PiecePlan& piece : plan.pieces) {
                double path = 0;
                for (const Arm& arm : piece.arms) {
                    path += arm.pathMm;
                }
                EXPECT_NEAR(path, piece.pathMm, 1e-6);
                if (!piece.shortSide) {
                    continue;
                }
                // The short side by itself: its path pulled at its own tensions, and one reach.
                EXPECT_LT(piece.shortSide->needMm, piece.arms[0].pathMm + request.ends.reachMm);
                EXPECT_GT(piece.shortSide->needMm, piece.arms[0].pathMm / 1.35 + request.ends.reachMm);
                EXPECT_LT(piece.shortSide->measure, piece.cut);
            }
        }
    }
}

TEST(PlanProperties, EverythingTwiceAsLargeNeedsTwiceAsMuch) {
    Frames frames(5);
    for (int round = 0; round < kFrames; ++round) {
        CutRequest small = frames.next();
        small.hoop.lengthMm = frames.between(200, 220);
        small.hoop.widthMm = frames.between(150, 170);
        small.hoop.wallMm = 5;
        small.pattern.crossesCentreMm = 2;
        small.stretch = false;
        small.mains.diameterMm = small.crosses.diameterMm = 0.7;
        CutRequest large = small;
        for (auto* length :
             {&large.hoop.lengthMm, &large.hoop.widthMm, &large.hoop.wallMm, &large.pattern.crossesCentreMm}) {
            *length = **length * 2;
        }
        large.mains.diameterMm = large.crosses.diameterMm = 1.4;
        large.ends.reachMm = small.ends.reachMm * 2;
        large.ends.startingKnotMm = small.ends.startingKnotMm * 2;
        const auto one = allPlans(small);
        const auto two = allPlans(large);
        for (std::size_t i = 0; i < one.size(); ++i) {
            EXPECT_NEAR(needOf(two[i]), 2 * needOf(one[i]), 1e-6);
        }
    }
}

} // namespace
