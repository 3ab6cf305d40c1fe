// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/metre_weight.h"

#include "core/stock/weighing.h"
#include "tests/core/stock/lives.h"

#include <gtest/gtest.h>

#include <cmath>

namespace rw::stock {
namespace {

using test::Life;
using test::minute;

constexpr double kTrue = 1.62;                                  ///< grams a metre
const Estimate kGuess = gramsPerMetreOf(Material::Nylon, 1.30); // check value 21: 1.513, within 5 %

/// A reel of 150 g and 200 m that was weighed new and after `cuts` of 10 m, on a scale of 1 g.
ScaleLife weighedTwice(int cuts, double metre = kTrue) {
    Life life;
    life.add(MovementReason::Received, 200'000);
    for (int i = 0; i < cuts; ++i) {
        life.add(MovementReason::Cut, -10'000);
    }
    const double newG = std::round(150 + 200 * metre);
    const double nowG = std::round(150 + (200 - 10.0 * cuts) * metre);
    return {{{{newG, scaleSdG(1)}, minute(0)}, {{nowG, scaleSdG(1)}, minute(cuts)}}, life.movements()};
}

TEST(MetreWeight, IsTheMaterialsUntilSomebodyTypesIt) {
    StringArticle article;
    article.material = Material::Nylon;
    article.diameterMicrometres = 1300;
    EXPECT_NEAR(usualGramsPerMetre(article).value, 1.513, 0.0005);
    article.milligramsPerMetre = 1'700;
    EXPECT_NEAR(usualGramsPerMetre(article).value, 1.70, 1e-12); // weigh2: within 2 %
    EXPECT_NEAR(usualGramsPerMetre(article).sd, 0.034, 1e-12);
}

TEST(MetreWeight, IsLearnedFromAReelWeighedBeforeAndAfter) {
    EXPECT_EQ(learnedFrom(kGuess, {}).value, kGuess.value);
    const Estimate learned = learnedFrom(kGuess, {weighedTwice(10)});
    EXPECT_NEAR(learned.value, kTrue, 0.01);
    EXPECT_LT(learned.sd, kGuess.sd / 5);
    EXPECT_LT(std::abs(learned.value - kTrue), 2 * learned.sd);
    EXPECT_LT(learnedFrom(kGuess, {weighedTwice(4), weighedTwice(4)}).sd, learnedFrom(kGuess, {weighedTwice(4)}).sd);
    EXPECT_GE(learnedFrom(kGuess, {weighedTwice(19), weighedTwice(19)}).sd, 0.005 * kTrue * 0.99) << "batches differ";
}

TEST(MetreWeight, IsNotLearnedFromAMistake) {
    EXPECT_EQ(learnedFrom(kGuess, {weighedTwice(10, 2.5)}).value, kGuess.value) << "that is another string";
    EXPECT_EQ(learnedFrom(kGuess, {weighedTwice(0)}).value, kGuess.value) << "nothing was cut between";
}

TEST(MetreWeight, IsLearnedAfterTheLastCorrectionOnly) {
    ScaleLife reel = weighedTwice(5);
    Life life;
    life.add(MovementReason::Received, 200'000);
    life.add(MovementReason::Cut, -10'000);
    life.add(MovementReason::Measured, -40'000); // minute 2: four jobs that nobody booked
    reel.movements = life.movements();
    EXPECT_EQ(learnedFrom(kGuess, {reel}).value, kGuess.value);
    life.add(MovementReason::Cut, -20'000); // minute 3
    reel.movements = life.movements();
    reel.moments = {reel.moments[0], {{393, scaleSdG(1)}, minute(2)}, {{361, scaleSdG(1)}, minute(3)}};
    EXPECT_NEAR(learnedFrom(kGuess, {reel}).value,
                learnedGramsPerMetre(kGuess, {393, scaleSdG(1)}, {361, scaleSdG(1)}, {20'000, 20}).value, 1e-12);
}

} // namespace
} // namespace rw::stock
