// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/pricing/harbour_lane_prices.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace rw::prices;

namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

// The design's check table for costs: two reels of 110.00 with 9.00 shipping, 11.2 m off a 200 m one.
TEST(Cost, OfACutIsItsShareOfTheLandedReel) {
    const std::vector<Money> shipping = shareShipping(pounds(900), {pounds(11'000), pounds(11'000)});
    ASSERT_EQ(shipping, (std::vector{pounds(450), pounds(450)}));
    EXPECT_EQ(costOfCut(pounds(11'000) + shipping[0], mm(200'000), mm(11'200)), pounds(641));
}

TEST(Cost, RoundsAHalfAwayFromZero) {
    EXPECT_EQ(costOfCut(pounds(100), mm(200'000), mm(1'000)), pounds(1)); // 0.5 pence
    EXPECT_EQ(costOfCut(pounds(100), mm(200'000), mm(999)), pounds(0));
    EXPECT_EQ(costOfCut(pounds(100), mm(200'000), mm(0)), pounds(0));
    EXPECT_EQ(costOfCut(pounds(11'450), mm(200'000), mm(200'000)), pounds(11'450));
}

TEST(Cost, ShippingIsSharedByPriceAndAddsUp) {
    EXPECT_EQ(shareShipping(pounds(900), {pounds(10'000), pounds(5'000)}), (std::vector{pounds(600), pounds(300)}));
    EXPECT_EQ(shareShipping(pounds(100), {pounds(700), pounds(700), pounds(700)}),
              (std::vector{pounds(34), pounds(33), pounds(33)}));
    EXPECT_EQ(shareShipping(pounds(101), {pounds(0), pounds(0)}), (std::vector{pounds(51), pounds(50)}));
    EXPECT_TRUE(shareShipping(pounds(900), {}).empty());
}

} // namespace
