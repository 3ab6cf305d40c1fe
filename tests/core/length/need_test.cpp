// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/need.h"
#include "core/length/stretch.h"
#include "tests/core/length/requests.h"

#include <boost/math/distributions/lognormal.hpp>
#include <gtest/gtest.h>

#include <cmath>

using namespace rw;
using namespace rw::length;

namespace {

TEST(Need, SpreadIsShopFrameMaterialAndJob) {
    EXPECT_NEAR(firstNeed(5800, 0).sdLog(), std::sqrt(0.025 * 0.025 + 0.02 * 0.02 + 0.015 * 0.015), 1e-15);
    EXPECT_NEAR(firstNeed(5800, 0.004).sdLog(), std::sqrt(0.025 * 0.025 + 0.02 * 0.02 + 0.004 * 0.004 + 0.015 * 0.015),
                1e-15);
}

// Without observations the posterior is the prior: closed form, from Boost.Math's lognormal.
TEST(Need, QuantilesAgreeWithTheClosedForm) {
    const Need need = firstNeed(5800, 0.003);
    const boost::math::lognormal closed(std::log(5800), need.sdLog());
    for (const double chance : {0.5, 0.1, 0.01, 0.005, 1e-4, 1e-6}) {
        EXPECT_NEAR(need.exceededWith(chance), boost::math::quantile(complement(closed, chance)), 0.5) << chance;
        EXPECT_NEAR(need.chanceAbove(need.exceededWith(chance)), chance, 1e-9);
    }
    EXPECT_EQ(need.chanceAbove(0), 1);
    EXPECT_NEAR(need.exceededWith(0.5), 5800, 1e-6);
}

StringChoice string(Material material, double diameterMm, std::string_view tension) {
    return {material, diameterMm, Tension::tryParse(tension, TensionUnit::Pound).value(), std::nullopt};
}

TEST(Stretch, FollowsPullAndThickness) {
    EXPECT_NEAR(stretchOf(string(Material::Nylon, 1.30, "55 lb")).share, 0.095, 1e-12);
    EXPECT_NEAR(stretchOf(string(Material::Polyester, 1.30, "55 lb")).share, 0.035, 1e-12);
    EXPECT_NEAR(stretchOf(string(Material::Nylon, 0.65, "55 lb")).share, 0.19, 1e-12);
    EXPECT_NEAR(stretchOf(string(Material::Nylon, 1.30, "13.75 lb")).share, 0.0475, 1e-12);
    EXPECT_NEAR(stretchOf(string(Material::Multifilament, 1.30, "55 lb")).standardDeviation, 0.005, 1e-12);
}

TEST(Stretch, AnArticlesOwnMeasureReplacesTheMaterials) {
    StringChoice measured = string(Material::Nylon, 1.30, "55 lb");
    measured.stretchPercent = 8;
    EXPECT_NEAR(stretchOf(measured).share, 0.08, 1e-12);
    EXPECT_EQ(stretchOf(measured).standardDeviation, 0);
}

} // namespace
