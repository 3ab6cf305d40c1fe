// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/packet.h"
#include "core/length/recommended_cut.h"
#include "tests/core/length/requests.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace rw;
using namespace rw::length;

namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
const Length kStep = Length::fromMillimetres(50);

TEST(RecommendedCut, IsTheLeastTapeStepWithinTheCeiling) {
    const Need need[] = {firstNeed(5414, 0.002)};
    const RecommendedCut best = recommendCut(need, 0.005, kStep, std::nullopt);
    EXPECT_EQ(best.cut.millimetres() % 50, 0);
    EXPECT_LE(need[0].chanceAbove(best.cut.metres() * 1000), 0.005);
    EXPECT_GT(need[0].chanceAbove(best.cut.metres() * 1000 - 50), 0.005);
    EXPECT_FALSE(best.costDecided);
}

// Looked up one tape step after the other, with the cost as the model writes it.
TEST(RecommendedCut, HasTheLeastExpectedCost) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> perMetre(0.05, 2);
    std::uniform_real_distribution<double> spoiledLog(0, 8);
    std::uniform_real_distribution<double> median(3000, 12'000);
    int costDecided = 0;
    for (int round = 0; round < 300; ++round) {
        const Need need[] = {firstNeed(median(random), 0.003)};
        const JobCosts costs{perMetre(random), std::exp(spoiledLog(random))};
        const auto costOf = [&](std::int64_t cut) {
            const double string = costs.perMetre * static_cast<double>(cut) / 1000;
            return string + need[0].chanceAbove(static_cast<double>(cut)) * (costs.spoiledJob + string);
        };
        const RecommendedCut best = recommendCut(need, 0.005, kStep, costs);
        const std::int64_t least = recommendCut(need, 0.005, kStep, std::nullopt).cut.millimetres();
        std::int64_t looked = least;
        for (std::int64_t cut = least; cut < 2 * least; cut += 50) {
            looked = costOf(cut) < costOf(looked) ? cut : looked;
        }
        EXPECT_EQ(best.cut.millimetres(), looked);
        EXPECT_NEAR(best.cost, costOf(looked), 1e-9);
        EXPECT_EQ(best.costDecided, looked > least);
        costDecided += best.costDecided ? 1 : 0;
    }
    EXPECT_GT(costDecided, 20);
    EXPECT_LT(costDecided, 280);
}

TEST(RecommendedCut, OfTwoSidesIsTheLeastTotalThatSplits) {
    std::mt19937 random(11);
    std::uniform_real_distribution<double> shortSide(2000, 3500);
    std::uniform_real_distribution<double> longSide(5000, 9000);
    for (int round = 0; round < 500; ++round) {
        const Need sides[] = {firstNeed(shortSide(random), 0.002), firstNeed(longSide(random), 0.004)};
        const std::int64_t cut = recommendCut(sides, 0.005, kStep, std::nullopt).cut.millimetres();
        const auto splits = [&](std::int64_t total) {
            const auto measure = static_cast<std::int64_t>(std::ceil(sides[0].exceededWith(0.005)));
            return sides[1].chanceAbove(static_cast<double>(total - measure)) <= 0.005;
        };
        EXPECT_TRUE(splits(cut));
        EXPECT_FALSE(splits(cut - 50));
    }
}

TEST(SplitEvenly, LeavesTheWorseOffPartAsSafeAsTheTapeAllows) {
    std::mt19937 random(13);
    std::uniform_real_distribution<double> median(3000, 7000);
    for (int round = 0; round < 300; ++round) {
        const Need parts[] = {firstNeed(median(random), 0.002), firstNeed(median(random), 0.006)};
        const auto total = static_cast<std::int64_t>((parts[0].medianMm() + parts[1].medianMm()) * 1.05);
        const std::vector<Length> split = splitEvenly(parts, mm(total), kStep);
        ASSERT_EQ((split[0] + split[1]).millimetres(), total);
        EXPECT_EQ(split[0].millimetres() % 50, 0);
        const auto worse = [&](std::int64_t first) {
            return std::max(parts[0].chanceAbove(static_cast<double>(first)),
                            parts[1].chanceAbove(static_cast<double>(total - first)));
        };
        const std::int64_t first = split[0].millimetres();
        EXPECT_LE(worse(first), worse(first + 50) + 1e-12);
        EXPECT_LE(worse(first), worse(first - 50) + 1e-12);
    }
}

TEST(Packet, HoldsOnlyWhatFitsWithTwoPercentToSpare) {
    const Need fits[] = {firstNeed(6000, 0), firstNeed(5900, 0)};
    const Need tooLong[] = {firstNeed(6000, 0), firstNeed(6000, 0)}; // 12.24 m with 2 %
    EXPECT_TRUE(holdsAtPacket(fits, mm(12'900), mm(12'200)));
    EXPECT_FALSE(holdsAtPacket(fits, mm(12'200), mm(12'200)));
    EXPECT_FALSE(holdsAtPacket(tooLong, mm(13'000), mm(12'200)));
}

TEST(Packet, IsSharedInTapeStepsUnlessTheTapeIsTooCoarse) {
    const Need parts[] = {firstNeed(6000, 0), firstNeed(5900, 0)};
    const std::vector<Length> steps = shareOfPacket(parts, mm(12'200), kStep);
    EXPECT_EQ((steps[0] + steps[1]).millimetres(), 12'200);
    EXPECT_EQ(steps[0].millimetres() % 50, 0);
    const std::vector<Length> coarse = shareOfPacket(parts, mm(12'200), mm(700)); // 17 steps are 11.9 m
    EXPECT_EQ((coarse[0] + coarse[1]).millimetres(), 12'200);
}

TEST(Packet, JudgedByTheChanceThatTheJobNeedsMore) {
    const Need need[] = {firstNeed(11'000, 0)};
    EXPECT_EQ(judgePacket(need, mm(12'200)), PacketVerdict::Enough);
    EXPECT_EQ(judgePacket(need, mm(11'500)), PacketVerdict::Tight);
    EXPECT_EQ(judgePacket(need, mm(11'100)), PacketVerdict::NotEnough);
    EXPECT_EQ(judgePacket(need, Length::roundedUp(need[0].exceededWith(0.02))), PacketVerdict::Enough);
    EXPECT_EQ(judgePacket(need, Length::roundedUp(need[0].exceededWith(0.25))), PacketVerdict::Tight);
}

} // namespace
