// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/next_cut.h"
#include "tests/core/stock/stock_data.h"

#include <gtest/gtest.h>

namespace rw::stock::test {
namespace {

/// Opened lots of these lengths, the first the oldest.
std::vector<CutSource> opened(const std::vector<double>& lengths) {
    std::vector<CutSource> lots;
    for (const double length : lengths) {
        lots.push_back({.length = metres(length), .received = Instant(std::chrono::hours(lots.size()))});
    }
    return lots;
}

CutSource sealedReel() { return {.length = mm(200'000), .sealed = true, .received = Instant(std::chrono::years(1))}; }

std::size_t chosen(const std::vector<CutSource>& lots, double piece) {
    return nextCut(lots, metres(piece), mixedValue()).value().lot;
}

// remnant-exact-cases.json, "delta_W_greedy": each piece in its turn takes the lot that loses least. Worked out for
// this project by another program; to a millimetre.
TEST(NextCut, OneByOneIsAsWorkedOut) {
    for (const ExactCase& each : exactCases()) {
        std::vector<CutSource> lots = opened(each.stocks);
        double lostMm = 0;
        for (const Length piece : metres(each.pieces)) {
            const auto cut = nextCut(lots, piece, mixedValue());
            ASSERT_TRUE(cut);
            lostMm += cut->lostMm;
            lots[cut->lot].length -= piece;
        }
        EXPECT_NEAR(lostMm / 1'000, each.oneByOne, 0.001);
    }
}

TEST(NextCut, UsesAnEndWhenThatIsWorthMoreThanNothing) {
    EXPECT_EQ(chosen(opened({131, 11.4}), 5.6), 1U); // leaves 5.8 m, a cross later
    EXPECT_EQ(chosen(opened({131, 11.4}), 7.0), 0U); // would leave 4.4 m of scrap
    EXPECT_EQ(chosen(opened({131, 5.7}), 5.65), 1U);
}

TEST(NextCut, TiesGoToTheOlder) {
    auto lots = opened({100, 150});
    EXPECT_EQ(chosen(lots, 6), 0U);
    std::swap(lots[0].received, lots[1].received);
    EXPECT_EQ(chosen(lots, 6), 1U);
}

TEST(NextCut, FitsBesideTheGap) {
    auto lots = opened({6.3});
    lots[0].gap = mm(150);
    EXPECT_EQ(nextCut(lots, mm(6'151), mixedValue()), std::nullopt);
    EXPECT_TRUE(nextCut(lots, mm(6'150), mixedValue()));
    EXPECT_EQ(nextCut({}, mm(6'150), mixedValue()), std::nullopt);
}

TEST(NextCut, ReckonsWithoutTheGap) {
    auto lots = opened({12.45});
    lots[0].gap = mm(150);
    EXPECT_EQ(nextCut(lots, mm(6'200), mixedValue())->lostMm, mixedValue().lostByCutting(mm(12'300), mm(6'200)));
}

TEST(NextCut, OpensASealedOneOnlyWhenItMust) {
    auto lots = opened({30});
    lots.push_back(sealedReel());
    lots.push_back(sealedReel());
    lots[2].received = Instant{};
    EXPECT_EQ(chosen(lots, 31), 2U); // the older of the sealed ones
    EXPECT_EQ(chosen(lots, 6), 0U);
}

// Stock model: with no open lot above 60 m and more than 0.30 m lost, a new reel is offered; never otherwise.
TEST(NextCut, OffersANewReelOnlyWhenTheOthersAreLow) {
    auto lots = opened({8.0});
    EXPECT_EQ(nextCut(lots, mm(5'600), mixedValue())->opens, std::nullopt); // there is none
    lots.push_back(sealedReel());
    const auto dear = nextCut(lots, mm(5'600), mixedValue()); // leaves 2.4 m of scrap of an end that was worth 1.9 m
    ASSERT_TRUE(dear);
    EXPECT_EQ(dear->lot, 0U);
    EXPECT_GT(dear->lostMm, 300);
    EXPECT_EQ(dear->opens, 1U);

    lots.push_back({.length = mm(60'000)});
    EXPECT_EQ(nextCut(lots, mm(8'000), mixedValue())->opens, std::nullopt); // 8 m is cut off whole: nothing is lost
    lots[0].length = mm(9'000);
    lots[2].length = mm(60'001);
    EXPECT_EQ(nextCut(lots, mm(6'600), mixedValue())->opens, std::nullopt); // one is full enough
}

TEST(NextCut, AnOldEndIsPulledForward) {
    auto lots =
        opened({131, 9}); // 6.1 m off the end leaves 2.9 m of scrap, a little more than waiting for a better piece
    ASSERT_EQ(chosen(lots, 6.1), 0U);
    lots[1].pullMm = 300;
    EXPECT_EQ(chosen(lots, 6.1), 1U);
}

// Stock model: 0.05 m a month beyond six months.
TEST(AgePull, GrowsWithEachMonth) {
    const auto after = [](double months) {
        return Instant(std::chrono::round<std::chrono::milliseconds>(
            std::chrono::duration<double, std::chrono::months::period>(months)));
    };
    EXPECT_EQ(agePullMm(Instant{}, after(5)), 0);
    EXPECT_EQ(agePullMm(Instant{}, after(6)), 0);
    EXPECT_NEAR(agePullMm(Instant{}, after(9)), 150, 1e-6);
    EXPECT_NEAR(agePullMm(Instant{}, after(9), 8), 50, 1e-6);
}

} // namespace
} // namespace rw::stock::test
