// SPDX-License-Identifier: GPL-3.0-or-later
// The goals of the stock rules, held in the simulated shop. With REELWRIGHT_LONG ten times as long.
#include "tests/bench/stock_world/cutting_run.h"
#include "tests/bench/stock_world/weighing_world.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <map>

namespace rw::world {
namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

int times() { return std::getenv("REELWRIGHT_LONG") != nullptr ? 10 : 1; }

CuttingShop shop(Work work, bool bothOffOneReel) {
    const Length shortest = mm(work == Work::OnePieceOnly ? 9'000 : 5'000);
    return {work, bothOffOneReel, shortest, 6'000 * times(), 20'260'301};
}

/// How often each length is wanted, from work before the first day.
stock::PieceMix mixOf(const CuttingShop& shop) {
    Dice dice(shop.seed + 1);
    std::vector<stock::PieceMix::Share> wanted;
    for (int i = 0; i < 20'000; ++i) {
        const std::vector<Length> pieces = nextJob(shop.work, dice);
        if (shop.bothOffOneReel && pieces.size() == 2) {
            wanted.push_back({pieces[0] + pieces[1], 1});
            continue;
        }
        for (const Length piece : pieces) {
            wanted.push_back({piece, 1});
        }
    }
    return stock::PieceMix::of(std::move(wanted));
}

void expectGoals(const CuttingShop& shop, double scrapPercent, double openReels) {
    const auto rule = remnantRule(mixOf(shop), shop.shortestUseful);
    const CuttingResult result = runCutting(shop, *rule);
    EXPECT_LE(result.scrapPercent(), scrapPercent);
    EXPECT_LE(result.openReels, openReels);
    EXPECT_LE(result.pastPer10000(), 2);
}

// The goals of the stock model for each kind of work.
TEST(StockWorld, TheRuleKeepsToItsGoals) {
    expectGoals(shop(Work::Mixed, false), 0.30, 1.5);
    expectGoals(shop(Work::Mixed, true), 0.35, 2);
    expectGoals(shop(Work::OnePieceOnly, false), 0.60, 2);
}

TEST(StockWorld, ALearnedMixKeepsToThemToo) {
    const CuttingShop mixed = shop(Work::Mixed, false);
    const auto rule = remnantRule(FirstDay{{mm(6'100), mm(5'600), mm(11'000)}, mm(5'000)});
    const CuttingResult result = runCutting(mixed, *rule);
    EXPECT_LE(result.scrapPercent(), 0.30);
    EXPECT_LE(result.openReels, 1.5);
}

// Stock model: earlier runs threw 2.9 % away with one reel at a time and 1.1 % with the best fit. A world in which they
// did much better or worse would be another one.
TEST(StockWorld, OtherRulesDoAsBadlyAsBefore) {
    EXPECT_NEAR(runCutting(shop(Work::Mixed, true), *oneReelAtATime()).scrapPercent(), 2.9, 0.15);
    EXPECT_NEAR(runCutting(shop(Work::Mixed, false), *bestFit()).scrapPercent(), 1.1, 0.15);
    EXPECT_NEAR(runCutting(shop(Work::OnePieceOnly, false), *bestFit()).scrapPercent(), 2.26, 0.15);
}

TEST(StockWorld, AWeighingIsAsSureAsItSays) {
    const CoverageResult result = runWeighing(10'000 * times(), 20'260'301);
    EXPECT_GT(result.weighings, 9'900 * times());
    for (const int covered : {result.coveredAgainstNew, result.coveredByWeight}) {
        EXPECT_GE(covered, 0.93 * result.weighings);
        EXPECT_LE(covered, 0.97 * result.weighings);
    }
}

} // namespace
} // namespace rw::world
