// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/remnant_value.h"
#include "tests/core/stock/stock_data.h"

#include <gtest/gtest.h>

#include <numeric>

namespace rw::stock::test {
namespace {

double wholeOf(const PieceMix& mix) {
    return std::accumulate(mix.shares().begin(), mix.shares().end(), 0.0,
                           [](double sum, const PieceMix::Share& share) { return sum + share.share; });
}

double meanMm(const PieceMix& mix) {
    return std::accumulate(mix.shares().begin(), mix.shares().end(), 0.0, [](double sum, const PieceMix::Share& share) {
        return sum + share.share * static_cast<double>(share.length.millimetres());
    });
}

TEST(PieceMix, TakesSharesAsPartsOfAWhole) {
    const PieceMix mix = PieceMix::of({{mm(6'000), 3}, {mm(5'500), 1}, {mm(6'000), 1}, {mm(7'000), 0}});
    ASSERT_EQ(mix.shares().size(), 2U);
    EXPECT_EQ(mix.shares()[0].length, mm(5'500));
    EXPECT_DOUBLE_EQ(mix.shares()[0].share, 0.2);
    EXPECT_DOUBLE_EQ(mix.shares()[1].share, 0.8);
}

// Stock model: a triangle of +- 15 cm about each cut, in whole centimetres: 15 in 225 at its top, 1 in 225 at 14 cm.
TEST(PieceMix, SpreadsEachCutOverATriangle) {
    const std::vector<Length> cuts = {mm(6'003)};
    const PieceMix mix = PieceMix::around(cuts, mm(150));
    ASSERT_EQ(mix.shares().size(), 29U);
    EXPECT_EQ(mix.shares()[0].length, mm(5'870));
    EXPECT_DOUBLE_EQ(mix.shares()[0].share, 1.0 / 225);
    EXPECT_EQ(mix.shares()[14].length, mm(6'010));
    EXPECT_DOUBLE_EQ(mix.shares()[14].share, 15.0 / 225);
    EXPECT_EQ(mix.shares()[28].length, mm(6'150));
    EXPECT_NEAR(wholeOf(mix), 1, 1e-12);
}

TEST(PieceMix, TheSportCountsAsMuchAsTwentyCuts) {
    const PieceMix sport = PieceMix::of({{mm(10'000), 1}});
    const std::vector<Length> twenty(20, mm(6'000));
    EXPECT_NEAR(meanMm(mixOfString(twenty, sport)), 8'000, 1e-6);
    EXPECT_NEAR(meanMm(mixOfString({}, sport)), 10'000, 1e-6);
    std::vector<Length> many(500, mm(9'000)); // of which only the last 200 count
    std::fill(many.end() - 200, many.end(), mm(6'000));
    EXPECT_NEAR(meanMm(mixOfString(many, sport)), (200 * 6'000 + 20 * 10'000) / 220.0, 1e-6);
}

TEST(PieceMix, OfAFirstDayIsSpreadWider) {
    const std::vector<Length> expected = {mm(6'000), mm(5'400)};
    const PieceMix mix = mixOfFirstDay(expected);
    EXPECT_EQ(mix.shares().front().length, mm(5'110));
    EXPECT_EQ(mix.shares().back().length, mm(6'290));
}

// remnant-values-mixed.json, made for this project from piece-lengths-mixed.json taken as given; four decimals.
TEST(RemnantValue, IsAsWorkedOut) {
    const std::vector<double> worked = workedValues();
    ASSERT_EQ(worked.size(), 1'201U);
    for (std::size_t i = 0; i < worked.size(); ++i) {
        const Length end = mm(50) * static_cast<std::int64_t>(i);
        EXPECT_NEAR(mixedValue().likelyLost(end) / 1'000, worked[i], 0.5001e-4) << end.text();
    }
}

TEST(RemnantValue, StaysTheSameBeyondSixtyMetres) {
    const double atSixty = mixedValue().likelyLost(mm(60'000));
    EXPECT_EQ(mixedValue().likelyLost(mm(60'001)), atSixty);
    EXPECT_EQ(mixedValue().likelyLost(mm(200'000)), atSixty);
    EXPECT_EQ(mixedValue().lostByCutting(mm(200'000), mm(11'000)), 0);
    EXPECT_NE(mixedValue().likelyLost(mm(59'900)), atSixty);
}

TEST(RemnantValue, RoundsRemnantsDownAndLengthsUp) {
    EXPECT_EQ(mixedValue().likelyLost(mm(4'999)), 4'990);
    EXPECT_EQ(mixedValue().likelyLost(mm(6'159)), mixedValue().likelyLost(mm(6'150)));
    EXPECT_NE(mixedValue().likelyLost(mm(6'160)), mixedValue().likelyLost(mm(6'150)));
    const RemnantValue onlySix(PieceMix::of({{mm(5'991), 1}}), mm(5'000));
    EXPECT_EQ(onlySix.likelyLost(mm(5'990)), 5'990); // wanted is 6.00 m on the grid
    EXPECT_EQ(onlySix.likelyLost(mm(6'000)), 50);    // the next piece takes it, after one piece of waiting
}

// By hand, with pieces of 6 m alone and c = 5 cm: an end of 6n + x leaves x, and waits n times.
TEST(RemnantValue, OfOneLengthIsTheRestAndTheWaiting) {
    const RemnantValue value(PieceMix::of({{mm(6'000), 1}}), mm(5'000));
    EXPECT_DOUBLE_EQ(value.likelyLost(mm(7'000)), 1'050);
    EXPECT_DOUBLE_EQ(value.likelyLost(mm(13'000)), 1'100);
    EXPECT_DOUBLE_EQ(value.likelyLost(mm(18'000)), 150);
}

// By hand: 6 m or 10 m with even chances, c = 5 cm. An end of 10 m: W(0) = 0, W(4) = 4 m; w/2 + max(0, w - 4)/2 = 0.05
// gives 0.1 m.
TEST(RemnantValue, WaitsForThePieceThatSuits) {
    const RemnantValue value(PieceMix::of({{mm(6'000), 1}, {mm(10'000), 1}}), mm(5'000));
    EXPECT_DOUBLE_EQ(value.likelyLost(mm(10'000)), 100);
    // waiting for free, whatever suits comes in the end
    const RemnantValue patient(PieceMix::of({{mm(6'000), 1}, {mm(10'000), 1}}), mm(5'000), mm(0));
    EXPECT_EQ(patient.likelyLost(mm(10'000)), 0);
    EXPECT_EQ(patient.likelyLost(mm(11'000)), 1'000);
}

TEST(RemnantValue, OfAnEndThatNothingFitsIsAllOfIt) {
    const RemnantValue value(PieceMix::of({{mm(10'000), 1}}), mm(5'000));
    EXPECT_EQ(value.likelyLost(mm(9'990)), 9'990);
}

// Stock model: four ends of 6 m are not 24 m. W(6.00 m) = 0.3395 m in remnant-values-mixed.json.
TEST(Usable, LeavesOutWhatWillBeScrap) {
    const std::vector<Length> ends(4, mm(6'000));
    EXPECT_NEAR(usableMm(ends, mixedValue()), 4 * (6'000 - 339.5), 0.2);
    EXPECT_EQ(usableMm(std::vector{mm(4'900)}, mixedValue()), 0);
    EXPECT_EQ(usableMm({}, mixedValue()), 0);
}

} // namespace
} // namespace rw::stock::test
