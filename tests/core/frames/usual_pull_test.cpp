// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/usual_pull.h"

#include <gtest/gtest.h>

namespace rw {
namespace {

bool usual(std::string_view text, Sport sport) {
    return isUsualPull(Tension::tryParse(text, TensionUnit::Pound).value(), sport);
}

TEST(UsualPull, ANumberSaidInTheOtherUnitStandsOut) {
    EXPECT_TRUE(usual("26 lb", Sport::Squash));
    EXPECT_FALSE(usual("26 kg", Sport::Squash)) << "57 lb";
    EXPECT_TRUE(usual("12 kg", Sport::Badminton));
    EXPECT_FALSE(usual("12 lb", Sport::Badminton));
    EXPECT_TRUE(usual("52 lb", Sport::Tennis));
    EXPECT_TRUE(usual("23.5 kg", Sport::Tennis));
    EXPECT_FALSE(usual("23.5 lb", Sport::Tennis));
    EXPECT_FALSE(usual("45 kg", Sport::Tennis));
}

} // namespace
} // namespace rw
