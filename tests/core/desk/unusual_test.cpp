// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/unusual.h"

#include <gtest/gtest.h>

namespace rw::desk {
namespace {

Length metres(double m) { return Length::fromMillimetres(static_cast<std::int64_t>(m * 1000 + 0.5)); }
Tension pull(const char* text) { return Tension::tryParse(text, TensionUnit::Pound).value(); }

TEST(Unusual, ALengthThatIsMoreThanAFifthOffIsFar) {
    EXPECT_FALSE(isFarFromPlanned(metres(10), metres(10)));
    EXPECT_FALSE(isFarFromPlanned(metres(12), metres(10))) << "a fifth itself is not";
    EXPECT_TRUE(isFarFromPlanned(metres(12.001), metres(10)));
    EXPECT_FALSE(isFarFromPlanned(metres(8), metres(10)));
    EXPECT_TRUE(isFarFromPlanned(metres(7.9), metres(10)));
    EXPECT_TRUE(isFarFromPlanned(metres(45), metres(11.2)));
    EXPECT_FALSE(isFarFromPlanned(metres(5), metres(0)));
}

TEST(Unusual, PullsAreComparedAsForcesAndEachByItself) {
    const TensionPair asked{pull("52 lb"), pull("50 lb")};
    EXPECT_FALSE(isFarFromAsked(asked, asked));
    EXPECT_TRUE(isFarFromAsked({pull("25 lb"), pull("50 lb")}, asked));
    EXPECT_TRUE(isFarFromAsked({pull("52 lb"), pull("61 lb")}, asked));
    EXPECT_FALSE(isFarFromAsked({pull("23.5 kg"), pull("22.5 kg")}, asked)) << "51.8 and 49.6 lb";
    EXPECT_TRUE(isFarFromAsked({pull("40 kg"), pull("39 kg")}, asked)) << "88 and 86 lb";
}

} // namespace
} // namespace rw::desk
