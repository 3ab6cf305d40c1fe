// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/demand_days.h"
#include "core/stock/order_point.h"
#include "core/stock/run_out.h"

#include <gtest/gtest.h>

#include <cmath>

namespace rw::stock {
namespace {

using namespace std::chrono_literals;

TEST(PooledDemand, IsTheMeanOfAllStringsDays) {
    const std::vector<DailyJobs> strings = {{0, 2, 0, 0}, {1, 0, 0, 0, 0, 0.5}};
    EXPECT_DOUBLE_EQ(pooled(strings)->jobsPerDay, 3.5 / 10);
    EXPECT_DOUBLE_EQ(pooled(strings)->dailyRatio, 1) << "less than four weeks say nothing of clumping";
    EXPECT_FALSE(pooled(std::vector<DailyJobs>{{0, 0, 0}}));
    EXPECT_FALSE(pooled({}));
}

TEST(PooledDemand, ATeamsDaysClumpAndASeasonDoesNot) {
    DailyJobs teams(56, 0);
    for (std::size_t day = 3; day < teams.size(); day += 14) {
        teams[day] = 6;
    }
    EXPECT_GT(pooled(std::vector<DailyJobs>{teams})->dailyRatio, 4);
    DailyJobs season(28, 1);
    season.resize(56, 3); // each half as even as can be
    EXPECT_DOUBLE_EQ(pooled(std::vector<DailyJobs>{season})->dailyRatio, 1);
}

TEST(PooledDemand, SpeaksForAStringWithoutDays) {
    const PooledDemand others{.jobsPerDay = 0.25, .dailyRatio = 1};
    EXPECT_DOUBLE_EQ(demandAfter({}, others).jobsPerDay(), 0.25);
    EXPECT_LT(demandAfter(DailyJobs(30, 0), others).jobsPerDay(), 0.25);
    EXPECT_GT(demandAfter(DailyJobs(30, 1), others).jobsPerDay(), 0.25);
}

Demand known(double shape, double days) {
    Demand demand = Demand::likeOthers(0.5 / (days - 1));
    demand.addDay(shape - 0.5);
    return demand;
}

// stock-checks.csv, runout: a = 12, b = 60 days, 5 jobs left: 14.73 and 29.16 days for 10 and 50 %.
TEST(RunOutDates, AreTheDaysOfTheChecks) {
    const RunOut out = runOutDates(known(12, 60), 5, 2026y / 3 / 1);
    EXPECT_EQ(out.p10, CivilDate(2026y / 3 / 15));
    EXPECT_EQ(out.p50, CivilDate(2026y / 3 / 30));
    EXPECT_FALSE(runOutDates(known(0.6, 1e7), 100'000, 2026y / 3 / 1).p50) << "beyond the calendar";
}

TEST(StockCourse, IsTheStockLeftAfterEachJob) {
    const Demand demand = known(12, 60);
    const std::vector<StockStep> course = stockCourse(demand, 5);
    ASSERT_EQ(course.size(), 6U);
    for (std::size_t i = 0; i < course.size(); ++i) {
        const auto wanted = static_cast<double>(i + 1);
        EXPECT_EQ(course[i].left, 4 - static_cast<int>(i));
        // So many jobs, or more, have come by then with just that chance.
        EXPECT_NEAR(1 - chanceOfAtMost(wanted - 1, demand, course[i].early), 0.1, 1e-9);
        EXPECT_NEAR(1 - chanceOfAtMost(wanted - 1, demand, course[i].likely), 0.5, 1e-9);
        EXPECT_NEAR(1 - chanceOfAtMost(wanted - 1, demand, course[i].late), 0.9, 1e-9);
    }
    EXPECT_EQ(stockCourse(demand, 0).size(), 1U) << "the next job finds none";
}

TEST(ChanceUntilDelivery, IsTheMeanOverTheLeadTimes) {
    const Demand demand = known(12, 60);
    const std::vector<double> seen = {4, 9};
    const double mean = (chanceOfAtMost(3, demand, 5) + chanceOfAtMost(3, demand, 10)) / 2;
    EXPECT_NEAR(chanceUntilDelivery(3, demand, LeadTimes(seen, {}), 1), mean, 1e-12);
    const int s = jobsUntilDelivery(demand, LeadTimes(seen, {}), {.chance = 0.98});
    EXPECT_GE(chanceUntilDelivery(s, demand, LeadTimes(seen, {}), 1), 0.98);
    EXPECT_LT(chanceUntilDelivery(s - 1, demand, LeadTimes(seen, {}), 1), 0.98);
}

} // namespace
} // namespace rw::stock
