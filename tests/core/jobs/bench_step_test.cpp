// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/bench_step.h"

#include <gtest/gtest.h>

namespace rw {
namespace {

TEST(BenchStep, StepsFollowOneAnotherBothWays) {
    EXPECT_FALSE(stepBefore(BenchStep::LookOver));
    EXPECT_EQ(stepAfter(BenchStep::LookOver), BenchStep::Mains);
    EXPECT_EQ(stepAfter(BenchStep::Mains), BenchStep::Crosses);
    EXPECT_EQ(stepAfter(BenchStep::Crosses), BenchStep::Finish);
    EXPECT_FALSE(stepAfter(BenchStep::Finish));
    EXPECT_EQ(stepBefore(BenchStep::Finish), BenchStep::Crosses);
    EXPECT_EQ(stepBefore(BenchStep::Mains), BenchStep::LookOver);
}

TEST(BenchStep, TextsGoBothWays) {
    for (const BenchStep step : {BenchStep::LookOver, BenchStep::Mains, BenchStep::Crosses, BenchStep::Finish}) {
        EXPECT_EQ(benchStepFromText(benchStepText(step)), step);
    }
    EXPECT_FALSE(benchStepFromText("tea"));
}

} // namespace
} // namespace rw
