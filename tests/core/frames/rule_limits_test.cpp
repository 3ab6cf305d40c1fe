// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/rule_limits.h"

#include <gtest/gtest.h>

using rw::ruleLimits;
using rw::Sport;

namespace {

TEST(RuleLimits, Tennis) { // ITF, Rules of Tennis, Appendix II: strung surface at most 394 x 292 mm
    EXPECT_EQ(ruleLimits(Sport::Tennis, false).lengthMm, 394);
    EXPECT_EQ(ruleLimits(Sport::Tennis, false).widthMm, 292);
    EXPECT_FALSE(ruleLimits(Sport::Tennis, false).areaCm2);
}

TEST(RuleLimits, Squash) { // World Squash Federation, Rules, appendix on racket dimensions: 390 mm, 500 cm2
    EXPECT_EQ(ruleLimits(Sport::Squash, true).lengthMm, 390);
    EXPECT_EQ(ruleLimits(Sport::Squash, true).areaCm2, 500);
}

TEST(RuleLimits,
     Badminton) { // BWF, Laws of Badminton, Law 4: 280 x 220 mm, 330 mm with strings into the throat
    EXPECT_EQ(ruleLimits(Sport::Badminton, false).lengthMm, 280);
    EXPECT_EQ(ruleLimits(Sport::Badminton, true).lengthMm, 330);
    EXPECT_EQ(ruleLimits(Sport::Badminton, false).widthMm, 220);
}

} // namespace
