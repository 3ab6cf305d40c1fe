// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/cut_search.h"

#include "core/stock/sum_set.h"
#include "tests/core/stock/stock_data.h"

#include <gtest/gtest.h>

#include <set>

namespace rw::stock::test {
namespace {

using namespace std::chrono_literals;

std::chrono::steady_clock::time_point in(std::chrono::seconds time) { return std::chrono::steady_clock::now() + time; }

/// The aim of cut-instances.json, in metres.
double scrapMetres(const SearchLot& lot, Length cut, bool first, Length shortestUseful) {
    const Length left = lot.room - cut;
    return (left < shortestUseful ? left.metres() : 0) + (first ? 0 : 0.01 * left.metres());
}

/// Every lot and piece of one of those plans; lots cost what they add to its aim.
struct ScrapQuestion {
    explicit ScrapQuestion(const ScrapCase& each) {
        const Length shortest = metres(each.shortestUseful);
        for (const Length length : metres(each.stocks)) {
            const bool first = lots.empty();
            const SearchLot whole{length, {}};
            const double untouched = scrapMetres(whole, mm(0), first, shortest);
            atStart += untouched;
            lots.push_back({length, [=](Length cut) { return scrapMetres(whole, cut, first, shortest) - untouched; }});
        }
        for (const Length length : metres(each.pieces)) {
            pieces.push_back({length});
        }
    }
    std::vector<SearchLot> lots;
    std::vector<SearchPiece> pieces;
    double atStart = 0;
};

TEST(SumSet, KnowsWhatCanBeMade) {
    SumSet sums(200);
    const std::vector<std::int64_t> numbers = {64, 3, 3, 65, 1, 300};
    for (const std::int64_t number : numbers) {
        sums.add(number);
    }
    std::set<std::int64_t> expected;
    for (unsigned set = 0; set < 1U << numbers.size(); ++set) {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            sum += (set >> i & 1U) != 0 ? numbers[i] : 0;
        }
        expected.insert(sum);
    }
    for (std::int64_t total = -1; total <= 310; ++total) {
        EXPECT_EQ(sums.has(total), total <= 200 && expected.contains(total)) << total;
    }
}

// cut-instances.json: 80 plans with another aim, their optimum by CBC 2.10.8, part of them checked with GLPK 5.0; made
// for this project. Four decimals of a metre.
TEST(CutSearch, FindsTheOptimumOfAnotherAim) {
    for (const char* set : {"brief", "mixed", "two", "one"}) {
        for (const ScrapCase& each : scrapCases(set)) {
            const ScrapQuestion question(each);
            Placing nothing(question.pieces.size());
            const auto found = searchCuts(question.lots, question.pieces, nothing, in(60s));
            double metresLost = question.atStart;
            for (std::size_t lot = 0; lot < question.lots.size(); ++lot) {
                Length cut = mm(0);
                for (std::size_t i = 0; i < question.pieces.size(); ++i) {
                    ASSERT_TRUE(found.placing[i]);
                    cut += found.placing[i] == lot ? question.pieces[i].length : mm(0);
                }
                metresLost += question.lots[lot].cost(cut);
            }
            EXPECT_TRUE(found.proven) << set;
            EXPECT_NEAR(metresLost, each.optimum, 0.5001e-4) << set;
        }
    }
}

TEST(CutSearch, LeavesOutTheLeastWeight) {
    const auto free = [](Length) { return 0.0; };
    const std::vector<SearchLot> lots = {{mm(10), free}, {mm(7), free}};
    const std::vector<SearchPiece> pieces = {{mm(9), 1}, {mm(5), 1}, {mm(5), 1}, {mm(7), 5}, {mm(6), 1}};
    const auto found = searchCuts(lots, pieces, Placing(5), in(10s));
    EXPECT_TRUE(found.proven);
    EXPECT_EQ(found.placing, (Placing{std::nullopt, 0, 0, 1, std::nullopt}));
}

TEST(CutSearch, KeepsTheStartWhenNothingIsBetter) {
    const auto free = [](Length) { return 0.0; };
    const std::vector<SearchLot> lots = {{mm(10), free}, {mm(10), free}};
    const Placing start = {1, 0};
    const auto found = searchCuts(lots, {{mm(4)}, {mm(4)}}, start, in(10s));
    EXPECT_TRUE(found.proven);
    EXPECT_EQ(found.placing, start);
}

TEST(CutSearch, SaysSoWhenTimeIsUp) {
    const auto cost = [](Length cut) { return cut.isPositive() ? 1.0 : 0.0; };
    const auto found = searchCuts({{mm(10), cost}, {mm(10), cost}}, {{mm(4)}, {mm(4)}}, {1, 0}, in(0s));
    EXPECT_FALSE(found.proven);
    EXPECT_EQ(found.placing, (Placing{1, 0}));
}

} // namespace
} // namespace rw::stock::test
