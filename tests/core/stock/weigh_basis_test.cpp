// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/weigh_basis.h"

#include "core/stock/weighing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <utility>

namespace rw::stock {
namespace {

// stock-checks.csv, weigh1: L0 = 200 m, G0 = 490 g, G = 236 g, T = 150 g.
ReelOnScale reel() {
    return {.grossG = {236, 0.58},
            .emptyG = Estimate{150, 1},
            .newG = Estimate{490, 0.58},
            .nominalMm = {200'000, 1'000},
            .gramsPerMetre = {1.70, 1.70 * 0.02}};
}

TEST(WeighBasis, IsTheSurestThatThereIs) {
    const auto against = weighedLength(reel());
    ASSERT_TRUE(against);
    EXPECT_EQ(against->basis, WeighBasis::AgainstNew);
    EXPECT_NEAR(against->lengthMm.value / 1'000, 50.588235, 1e-5); // weigh1
    EXPECT_NEAR(against->lengthMm.sd / 1'000, 0.617204, 1e-5);
    ReelOnScale byMetre = reel();
    byMetre.newG.reset();
    EXPECT_EQ(weighedLength(byMetre)->basis, WeighBasis::ByMetre);
    EXPECT_NEAR(weighedLength(byMetre)->lengthMm.value / 1'000, 50.588235, 1e-5); // weigh2
    EXPECT_NEAR(weighedLength(byMetre)->lengthMm.sd / 1'000, 1.219053, 1e-5);
    ReelOnScale byGone = reel();
    byGone.emptyG.reset();
    EXPECT_EQ(weighedLength(byGone)->basis, WeighBasis::ByGone);
    byGone.newG.reset();
    ASSERT_FALSE(weighedLength(byGone));
    EXPECT_EQ(weighedLength(byGone).error().code(), Code::Missing);
}

// A closed form: 200 m less 254 g at 1.70 g/m; and its uncertainty against half a million draws (standard error of a
// standard deviation: 0.1 %).
TEST(WeighBasis, WhatIsGoneTellsWhatIsLeft) {
    const Estimate gross{236, 0.58};
    const NewReel fresh{{200'000, 1'000}, {490, 0.58}};
    const Estimate metre{1.70, 0.034};
    const auto left = lengthByWhatIsGone(gross, fresh, metre);
    ASSERT_TRUE(left);
    EXPECT_NEAR(left->value, 200'000 - 254 / 1.70 * 1'000, 1e-6);
    std::mt19937_64 random(20'260'401);
    const auto draw = [&](const Estimate& of) { return std::normal_distribution(of.value, of.sd)(random); };
    constexpr int kDraws = 500'000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double off =
            draw(fresh.lengthMm) - (draw(fresh.grossG) - draw(gross)) / draw(metre) * 1'000 - left->value;
        sum += off;
        squares += off * off;
    }
    const double mean = sum / kDraws;
    EXPECT_NEAR(left->sd, std::sqrt(squares / kDraws - mean * mean), 0.01 * left->sd);
}

TEST(WeighBasis, LessThanSuchASpoolWeighsIsRefused) {
    const auto left = lengthByWhatIsGone({140, 0.3}, {{200'000, 1'000}, {490, 0.3}}, {1.70, 0.034});
    ASSERT_FALSE(left);
    EXPECT_EQ(left.error().code(), Code::ImpossibleValue);
    EXPECT_EQ(left.error().text("expected"), "more than the empty spool's 150 g");
}

TEST(WeighBasis, HasATextEach) {
    for (const auto& [basis, text] : {std::pair(WeighBasis::AgainstNew, "new"), std::pair(WeighBasis::ByMetre, "metre"),
                                      std::pair(WeighBasis::ByGone, "gone")}) {
        EXPECT_EQ(weighBasisText(basis), text);
        EXPECT_EQ(weighBasisFromText(text), basis);
    }
    EXPECT_EQ(weighBasisFromText("guess"), std::nullopt);
}

} // namespace
} // namespace rw::stock
