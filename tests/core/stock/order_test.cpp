// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/order_draft.h"
#include "core/stock/order_quantity.h"

#include <gtest/gtest.h>

namespace rw::stock {
namespace {

// stock-checks.csv, eoq1: Snyder and Shen, "Fundamentals of Supply Chain Theory", 2nd ed., example 3.1: Q = 304.0468
// at 68.41052550594829. In whole reels 304 costs as much to the fourth digit.
TEST(OrderQuantity, IsTheWholeNumberNextToTheFormulas) {
    const OrderCosts costs{.perOrder = 8, .holdingRate = 0.225};
    EXPECT_EQ(reelsPerOrder(1'300, 1, costs), 304);
    EXPECT_NEAR(yearlyCost(304, 1'300, 1, costs) - 1'300, 68.41052550594829, 1e-4);
}

TEST(OrderQuantity, CostsLessThanItsNeighbours) {
    const OrderCosts costs{.perOrder = 9.5};
    for (const double reelsPerYear : {0.5, 1.0, 3.0, 7.0, 20.0, 60.0}) {
        const int reels = reelsPerOrder(reelsPerYear, 84, costs);
        const auto cost = [&](int n) { return yearlyCost(n, reelsPerYear, 84, costs); };
        EXPECT_LE(cost(reels), cost(reels + 1));
        EXPECT_TRUE(reels == 1 || cost(reels) <= cost(reels - 1));
    }
}

TEST(OrderQuantity, StaysWithinTheShelfLife) {
    const OrderCosts costs{.perOrder = 8, .holdingRate = 0.225};
    EXPECT_EQ(reelsPerOrder(1'300, 1, costs, 0.1), 130);
    EXPECT_EQ(reelsPerOrder(0.2, 1, costs, 1.0), 1); // and yet one
}

// stock-checks.csv, eoqdisc1: all-units discount, an example of stockpyl's documentation.
TEST(OrderQuantity, ComparesEachPriceBreak) {
    const OrderCosts costs{.perOrder = 200, .holdingRate = 0.20};
    const std::vector<PriceBreak> breaks = {{1, 500}, {200, 475}, {500, 450}};
    const OrderQuantity best = cheapestOrder(1'000, breaks, costs);
    EXPECT_EQ(best.reels, 500);
    EXPECT_NEAR(best.yearlyCost, 472'900, 1e-6);
    EXPECT_EQ(cheapestOrder(1'000, breaks, costs, 0.3).reels, 200); // 300 may be kept: not enough for the best price
    EXPECT_EQ(cheapestOrder(1'000, std::span(breaks).first(1), costs).reels, reelsPerOrder(1'000, 500, costs));
}

Money pounds(std::int64_t whole) { return Money::fromMinor(whole * 100, Currency::pounds()); }

StringPosition string(std::int64_t article, double positionJobs, double jobsPerDay = 0.2) {
    return {.article = StringArticleId::of(article),
            .positionJobs = positionJobs,
            .s = 4,
            .jobsPerDay = jobsPerDay,
            .jobsPerReel = 18,
            .reelsPerOrder = 1,
            .reelPrice = pounds(84)};
}

std::vector<std::pair<std::int64_t, DraftLine::Because>> drafted(const std::vector<StringPosition>& strings,
                                                                 std::optional<Money> freeFrom = std::nullopt,
                                                                 std::int64_t shipping = 8) {
    std::vector<std::pair<std::int64_t, DraftLine::Because>> lines;
    for (const DraftLine& line : draftOrder(strings, {.shipping = pounds(shipping), .freeFrom = freeFrom})) {
        lines.emplace_back(line.article.value(), line.because);
    }
    return lines;
}

using Because = DraftLine::Because;

TEST(OrderDraft, WaitsUntilSomethingRunsShort) {
    EXPECT_TRUE(drafted({string(1, 4.1), string(2, 5)}, pounds(1)).empty());
    EXPECT_TRUE(drafted({}).empty());
}

// Stock model: with one string at s, those below s plus the demand of 14 days come along: 4 + 14 * 0.2 = 6.8 jobs.
TEST(OrderDraft, TakesAlongWhatIsDueSoon) {
    EXPECT_EQ(drafted({string(1, 6.8), string(2, 4), string(3, 6.9), string(4, -2)}),
              (std::vector<std::pair<std::int64_t, Because>>{
                  {2, Because::RunningShort}, {4, Because::RunningShort}, {1, Because::DueSoon}}));
}

// By hand: a reel of 84 that comes 30 days early costs 84 * 0.2 * 30 / 365 = 1.38, one that comes 180 days early 8.28.
TEST(OrderDraft, FillsUpToFreeShippingWhileItPays) {
    const std::vector<StringPosition> strings = {string(1, 3), string(2, 40), string(3, 10)};
    EXPECT_EQ(drafted(strings, pounds(84)).size(), 1U); // nothing is missing
    EXPECT_EQ(drafted(strings, pounds(160)), (std::vector<std::pair<std::int64_t, Because>>{
                                                 {1, Because::RunningShort}, {3, Because::FillsFreeShipping}}));
    EXPECT_EQ(drafted({string(1, 3), string(2, 40)}, pounds(160), 3).size(), 1U); // 85 days early cost 3.91
    EXPECT_EQ(drafted(strings, pounds(10'000)).size(), 1U);                       // too far off, and nothing half done
}

TEST(OrderDraft, MayTakeASecondReelOfTheSame) {
    const std::vector<StringPosition> strings = {string(1, 3), string(2, 4'000)};
    const auto lines = draftOrder(strings, {.shipping = pounds(8), .freeFrom = pounds(160)});
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[1].article, StringArticleId::of(1));
    EXPECT_EQ(lines[1].reels, 1);
    EXPECT_NEAR(lines[1].daysEarly, (3 + 18 - 4) / 0.2, 1e-9);
    // what nobody wants is never ordered early
    EXPECT_EQ(drafted({string(1, 3, 0), string(2, 9, 0)}, pounds(160)).size(), 1U);
}

} // namespace
} // namespace rw::stock
