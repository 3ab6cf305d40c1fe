// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strings/gauge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using rw::gaugeNames;
using rw::nearestGaugeName;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

// US stringers' association gauge table as reprinted in trade guides.
TEST(Gauge, TheTableOfTheTrade) {
    struct Row {
        std::string_view name;
        int low;
        int high;
    };
    const Row rows[] = {{"15", 1410, 1490}, {"15L", 1330, 1410}, {"16", 1260, 1340}, {"16L", 1220, 1300},
                        {"17", 1160, 1240}, {"18", 1060, 1160},  {"19", 900, 1060},  {"20", 800, 900},
                        {"21", 700, 800},   {"22", 600, 700}};
    ASSERT_EQ(rw::gauges().size(), std::size(rows));
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        EXPECT_EQ(rw::gauges()[i].name, rows[i].name);
        EXPECT_EQ(rw::gauges()[i].lowestMicrometres, rows[i].low) << rows[i].name;
        EXPECT_EQ(rw::gauges()[i].highestMicrometres, rows[i].high) << rows[i].name;
    }
}

// The same table: 1.33 mm is both 15L and 16, 1.28 both 16 and 16L.
TEST(Gauge, NamesOverlap) {
    EXPECT_THAT(gaugeNames(1330), ElementsAre("15L", "16"));
    EXPECT_THAT(gaugeNames(1280), ElementsAre("16", "16L"));
    EXPECT_THAT(gaugeNames(680), ElementsAre("22"));
    EXPECT_THAT(gaugeNames(590), IsEmpty());
    EXPECT_THAT(gaugeNames(1500), IsEmpty());
}

TEST(Gauge, ProposesTheNameWhoseMiddleIsNearest) {
    EXPECT_EQ(nearestGaugeName(1300), "16");
    EXPECT_EQ(nearestGaugeName(1250), "16L");
    EXPECT_EQ(nearestGaugeName(1280), "16L"); // as near to both middles: the thinner
    EXPECT_EQ(nearestGaugeName(1200), "17");
    EXPECT_EQ(nearestGaugeName(300), "");
}

} // namespace
