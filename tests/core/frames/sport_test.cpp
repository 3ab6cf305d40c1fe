// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/sport.h"

#include <gtest/gtest.h>

using rw::Sport;

namespace {

TEST(Sport, EveryNameReadsBack) {
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        EXPECT_EQ(rw::sportFromText(rw::sportText(sport)), sport);
    }
    EXPECT_EQ(rw::sportFromText("Tennis"), std::nullopt);
    EXPECT_EQ(rw::sportFromText(""), std::nullopt);
}

TEST(Sport, EndsAndSidesHaveTheTradesWords) {
    EXPECT_EQ(rw::hoopEndText(rw::HoopEnd::Head), "head");
    EXPECT_EQ(rw::hoopEndText(rw::HoopEnd::Throat), "throat");
    EXPECT_EQ(rw::sideText(rw::Side::Left), "left");
    EXPECT_EQ(rw::sideText(rw::otherSide(rw::Side::Left)), "right");
    EXPECT_EQ(rw::otherEnd(rw::HoopEnd::Throat), rw::HoopEnd::Head);
}

} // namespace
