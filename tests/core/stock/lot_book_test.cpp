// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/lot_book.h"

#include "tests/core/stock/lives.h"

#include <gtest/gtest.h>

#include <cmath>

namespace rw::stock {
namespace {

using test::Life;
using test::minute;

// By hand, from the rule: 0.5 % of a new reel, 2 cm a cut by tape, 1 cm by tape; variances add.
TEST(LotBook, IsAsSureAsItsLifeSays) {
    Life life;
    life.add(MovementReason::Received, 200'000);
    EXPECT_NEAR(bookEstimate(life.movements(), {}).sd, 1'000, 1e-9);
    for (int cut = 0; cut < 25; ++cut) {
        life.add(MovementReason::Cut, -6'000);
    }
    EXPECT_EQ(bookEstimate(life.movements(), {}).value, 50'000);
    EXPECT_NEAR(bookEstimate(life.movements(), {}).sd, std::hypot(1'000, 5 * 20), 1e-9);
    const MovementId weighed = life.add(MovementReason::Weighed, -1'500);
    EXPECT_NEAR(bookEstimate(life.movements(), {{weighed, 620}}).sd, 620, 1e-9);
    life.add(MovementReason::Cut, -6'000);
    EXPECT_NEAR(bookEstimate(life.movements(), {{weighed, 620}}).sd, std::hypot(620, 20), 1e-9);
    life.add(MovementReason::Measured, 0);
    EXPECT_EQ(bookEstimate(life.movements(), {}).value, 42'500);
    EXPECT_NEAR(bookEstimate(life.movements(), {}).sd, 10, 1e-9) << "a tape that finds the book right is a tape";
}

TEST(LotBook, WhatWasTakenBackSaysNothing) {
    Life life;
    life.add(MovementReason::Received, 200'000);
    const MovementId measured = life.add(MovementReason::Measured, -50'000);
    life.add(MovementReason::Measured, 50'000, measured);
    EXPECT_EQ(standing(life.movements()).size(), 1U);
    EXPECT_EQ(bookEstimate(life.movements(), {}).value, 200'000);
    EXPECT_NEAR(bookEstimate(life.movements(), {}).sd, 1'000, 1e-9);
}

TEST(LotBook, KnowsWhatWasCutBetweenTwoMoments) {
    Life life;
    life.add(MovementReason::Received, 200'000);
    life.add(MovementReason::Cut, -6'000); // minute 1
    life.add(MovementReason::Cut, -5'500);
    const auto both = knownCut(life.movements(), minute(0), minute(2));
    ASSERT_TRUE(both);
    EXPECT_EQ(both->value, 11'500);
    EXPECT_NEAR(both->sd, std::hypot(20, 20), 1e-9);
    EXPECT_EQ(knownCut(life.movements(), minute(1), minute(2))->value, 5'500);
    EXPECT_FALSE(knownCut(life.movements(), minute(2), minute(9))) << "nothing was cut";
    life.add(MovementReason::Measured, 0); // minute 3: the book was right
    EXPECT_TRUE(knownCut(life.movements(), minute(0), minute(9)));
    life.add(MovementReason::Measured, -200);
    EXPECT_FALSE(knownCut(life.movements(), minute(0), minute(9))) << "more was gone than was booked";
}

} // namespace
} // namespace rw::stock
