// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold of learning on any frame, whatever its head, its pattern and its string.
#include "core/length/cut_plan.h"
#include "tests/core/length/random_frames.h"

#include <boost/math/distributions/lognormal.hpp>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

using namespace rw;
using namespace rw::length;

namespace {

const int kFrames = std::getenv("REELWRIGHT_LONG") != nullptr ? 10'000 : 500;

constexpr double square(double value) { return value * value; }

/// The belief about a frame after n equal exact observations, in closed form: normal with normal.
Belief closedForm(const Belief& before, double r, int n) {
    const double information = 1 / square(before.sd) + n / square(kJobSpread);
    return {(before.mean / square(before.sd) + n * r / square(kJobSpread)) / information, std::sqrt(1 / information)};
}

Learnt seen(double r, int n) { return {kUnknownShop, std::vector<Observation>(static_cast<std::size_t>(n), {r, r})}; }

CutPlan planned(CutRequest request, const Learnt& crosses) {
    request.experience.crosses = crosses;
    return planCut(inTwoPieces(request)).value();
}

const PiecePlan& crossesOf(const CutPlan& plan) { return plan.pieces.back(); }

// Against Boost.Math's lognormal, to half a millimetre (length model, what it must reproduce).
TEST(LearningOfAnyFrame, ExactObservationsGiveTheClosedFormsQuantiles) {
    Frames frames(11);
    for (int i = 0; i < kFrames; ++i) {
        const CutRequest request = frames.next();
        const int n = frames.whole(1, 12);
        const double r = frames.between(-0.06, 0.06);
        const CutPlan plan = planned(request, seen(r, n));
        const PiecePlan& crosses = crossesOf(plan);
        const double spread = predictParts(inTwoPieces(request)).value().back().materialSpread;
        const Belief theta = closedForm(groupBelief(kUnknownShop, spread), r, n);
        const boost::math::lognormal closed(std::log(crosses.predictedMm) + theta.mean,
                                            std::hypot(theta.sd, kJobSpread));
        ASSERT_NEAR(crosses.quantilesMm.p50, boost::math::quantile(closed, 0.5), 0.5) << i;
        ASSERT_NEAR(crosses.quantilesMm.p90, boost::math::quantile(closed, 0.9), 0.5) << i;
        ASSERT_NEAR(crosses.quantilesMm.p99, boost::math::quantile(closed, 0.99), 0.5) << i;
        ASSERT_EQ(crosses.measured, n);
        ASSERT_NEAR(crosses.frameEffect, theta.mean, 1e-7);
    }
}

TEST(LearningOfAnyFrame, TheShopsBiasAloneMovesTheNeedAndNothingElse) {
    Frames frames(12);
    for (int i = 0; i < kFrames; ++i) {
        const CutRequest request = frames.next();
        const double bias = frames.between(-0.04, 0.04);
        const CutPlan plan = planned(request, {{bias, 0.01}, {}, 9});
        ASSERT_NEAR(crossesOf(plan).needMm, crossesOf(plan).predictedMm * std::exp(bias), 1e-6) << i;
        ASSERT_EQ(plan.pieces.front().needMm, planned(request, {}).pieces.front().needMm) << i;
    }
}

TEST(LearningOfAnyFrame, ATailMoreIsNeverALongerCutAndMoreTailsAreNeverLessSure) {
    Frames frames(13);
    for (int i = 0; i < kFrames; ++i) {
        const CutRequest request = frames.next();
        const int n = frames.whole(1, 8);
        const double r = frames.between(-0.05, 0.05);
        const CutPlan plan = planned(request, seen(r, n));
        const CutPlan shorter = planned(request, seen(r - frames.between(0, 0.02), n));
        const CutPlan surer = planned(request, seen(r, n + frames.whole(1, 5)));
        ASSERT_LE(crossesOf(shorter).cut, crossesOf(plan).cut) << i;
        ASSERT_LE(crossesOf(surer).needSdLog, crossesOf(plan).needSdLog + 1e-12) << i;
        ASSERT_LE(crossesOf(plan).chanceShort, request.ceiling / 2 + 1e-9)
            << i << ": the owner's ceiling, shared by two";
    }
}

TEST(LearningOfAnyFrame, AFarLongerCutThatWasEnoughSaysNothingAndAShortOneAsksForMore) {
    Frames frames(14);
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    for (int i = 0; i < kFrames; ++i) {
        const CutRequest request = frames.next();
        const CutPlan alone = planned(request, {});
        const CutPlan enough = planned(request, {kUnknownShop, {{-kInfinity, 0.6}}});
        const CutPlan cameShort = planned(request, {kUnknownShop, {{0.0, kInfinity}}});
        ASSERT_NEAR(crossesOf(enough).needMm, crossesOf(alone).needMm, 0.01) << i;
        ASSERT_GT(crossesOf(cameShort).needMm, crossesOf(alone).needMm * 1.01) << i;
        ASSERT_GE(crossesOf(cameShort).cut, crossesOf(alone).cut) << i;
    }
}

TEST(LearningOfAnyFrame, ThePartsPredictedAreThoseThatAPlanPredicts) {
    Frames frames(15);
    for (int i = 0; i < kFrames / 10; ++i) {
        const CutRequest request = frames.next();
        for (const CutPlan& plan : allPlans(request)) {
            CutRequest same = plan.method == Method::TwoPiece ? inTwoPieces(request) : inOnePiece(request, plan.route);
            const auto parts = predictParts(same).value();
            ASSERT_EQ(parts.front().needMm, plan.pieces.front().predictedMm) << plan.route;
            if (plan.method == Method::OnePiece) {
                ASSERT_EQ(parts.size(), 2U);
                ASSERT_TRUE(parts.back().shortSide);
                ASSERT_EQ(parts.back().needMm, plan.pieces.front().shortSide->predictedMm) << plan.route;
            }
        }
    }
}

} // namespace
