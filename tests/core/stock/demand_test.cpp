// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/demand.h"

#include "core/stock/order_point.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace rw::stock {
namespace {

/// What a shop knows after a first day, so that shape and days are these.
Demand known(double shape, double days) {
    Demand demand = Demand::likeOthers(0.5 / (days - 1));
    demand.addDay(shape - 0.5);
    EXPECT_NEAR(demand.shape(), shape, 1e-12);
    EXPECT_NEAR(demand.days(), days, 1e-12);
    return demand;
}

int enoughFor(const Demand& demand, double leadDays, double service) {
    const std::vector<double> lead = {leadDays};
    return jobsUntilDelivery(demand, LeadTimes(lead, {}), {.chance = service});
}

// stock-checks.csv, nbq: negative binomial of size 2 and mean 4; Boost and R agree.
TEST(Demand, IsTheNegativeBinomialOfTheChecks) {
    const Demand demand = known(2, 2);
    EXPECT_NEAR(chanceOfAtMost(0, demand, 4), 1.0 / 9, 1e-10);
    EXPECT_NEAR(chanceOfAtMost(1, demand, 4) - chanceOfAtMost(0, demand, 4), 4.0 / 27, 1e-10);
    EXPECT_NEAR(chanceOfAtMost(2, demand, 4) - chanceOfAtMost(1, demand, 4), 4.0 / 27, 1e-10);
    EXPECT_NEAR(chanceOfAtMost(3, demand, 4) - chanceOfAtMost(2, demand, 4), 0.131687242798, 1e-10);
    EXPECT_EQ(enoughFor(demand, 3, 0.90), 9);
    EXPECT_EQ(enoughFor(demand, 3, 0.95), 11);
    EXPECT_EQ(enoughFor(demand, 3, 0.98), 13);
    EXPECT_EQ(enoughFor(demand, 3, 0.99), 15);
}

// stock-checks.csv, gpq: a = 12, b = 60 days, 11 days to come; Boost and R agree.
TEST(Demand, IsTheGammaPoissonOfTheChecks) {
    const Demand demand = known(12, 60);
    EXPECT_NEAR(chanceOfAtMost(0, demand, 11), 0.1326523, 1e-6);
    EXPECT_EQ(enoughFor(demand, 10, 0.90), 4);
    EXPECT_EQ(enoughFor(demand, 10, 0.95), 5);
    EXPECT_EQ(enoughFor(demand, 10, 0.98), 6);
    EXPECT_EQ(enoughFor(demand, 10, 0.99), 7);
}

// stock-checks.csv, runout: a = 12, b = 60 days, 5 jobs left; R's qbeta, checked there against the other tail.
TEST(RunOut, IsTheBetaPrimeOfTheChecks) {
    const Demand demand = known(12, 60);
    EXPECT_NEAR(runOutDay(demand, 5, 0.05), 11.97375, 1e-4);
    EXPECT_NEAR(runOutDay(demand, 5, 0.10), 14.73483, 1e-4);
    EXPECT_NEAR(runOutDay(demand, 5, 0.50), 29.1581, 1e-4);
}

TEST(RunOut, IsWhenMoreJobsComeThanAreLeft) {
    const Demand demand = known(3.5, 40);
    for (const double p : {0.01, 0.1, 0.5, 0.9, 0.99}) {
        EXPECT_NEAR(1 - chanceOfAtMost(7, demand, runOutDay(demand, 7, p)), p, 1e-9);
    }
    EXPECT_GT(runOutDay(Demand::likeOthers(1e-6), 100'000, 0.9), 1e10); // and is no nonsense far out
}

// stock-checks.csv, poisq: Poisson quantiles; Boost and R agree. A rate known for sure is Poisson.
TEST(Demand, KnownForSureIsPoisson) {
    const double service[] = {0.90, 0.95, 0.98, 0.99};
    const std::pair<double, std::vector<int>> means[] = {{0.5, {1, 2, 2, 3}}, {2, {4, 5, 5, 6}}, {5.3, {8, 9, 10, 11}}};
    for (const auto& [mean, quantiles] : means) {
        const Demand sure = known(mean * 1e7, 1e7);
        for (std::size_t i = 0; i < 4; ++i) {
            EXPECT_EQ(enoughFor(sure, 0, service[i]), quantiles[i]) << mean << " " << service[i];
        }
    }
}

// By hand: delta = 2^(-1/90), so what a day told is half forgotten after 90 days.
TEST(Demand, ForgetsHalfInNinetyDays) {
    Demand demand = Demand::likeOthers(0.25);
    EXPECT_DOUBLE_EQ(demand.days(), 2);
    EXPECT_DOUBLE_EQ(demand.jobsPerDay(), 0.25);
    demand.addDay(8);
    for (int day = 0; day < 90; ++day) {
        demand.addDay(0);
    }
    EXPECT_NEAR(demand.shape(), 0.5 + 4, 1e-12);
    const double fading = std::exp2(-1.0 / 90);
    EXPECT_NEAR(demand.days(), 2 + (1 - std::pow(fading, 91)) / (1 - fading), 1e-9);
}

TEST(Demand, ClumpingWidensItAndKeepsItsMean) {
    const Demand demand = known(12, 60);
    EXPECT_LT(chanceOfAtMost(6, demand, 11, 1.6), chanceOfAtMost(6, demand, 11));
    for (const double ratio : {1.0, 1.6, 3.0}) {
        double mean = 0;
        double squares = 0;
        for (int jobs = 0; jobs < 400; ++jobs) {
            const double chance =
                chanceOfAtMost(jobs, demand, 11, ratio) - (jobs > 0 ? chanceOfAtMost(jobs - 1, demand, 11, ratio) : 0);
            mean += jobs * chance;
            squares += jobs * jobs * chance;
        }
        EXPECT_NEAR(mean, 2.2, 1e-9);                                         // a t/b
        EXPECT_NEAR((squares - mean * mean) / mean, ratio + 11.0 / 60, 1e-8); // R = kappa + t/b
    }
}

TEST(DailyRatio, IsPooledVarianceOverPooledMean) {
    // by hand: means 1 and 0.5; squares 0 + 0 + 4 + 4 and 0.25 * 4 above 3 * 1 + 3 * 0.5
    const std::vector<std::vector<double>> strings = {{2, 0, 2, 0}, {1, 0, 1, 0}, {7}, {}};
    EXPECT_NEAR(dailyRatio(strings), (4 + 1) / (3 * 1 + 3 * 0.5), 1e-12);
    EXPECT_EQ(dailyRatio(std::vector<std::vector<double>>{{1, 1, 1}}), 1); // never below 1
    EXPECT_EQ(dailyRatio({}), 1);
}

TEST(OrderPoint, AveragesOverWhatDeliveriesTook) {
    const Demand demand = known(60, 60); // about a job a day
    const auto enough = [&](const std::vector<double>& seen) {
        return jobsUntilDelivery(demand, LeadTimes(seen, {}), {.chance = 0.98});
    };
    const int mean = enough({6});
    EXPECT_GT(enough({2, 10}), mean); // the late one decides, not the mean
    EXPECT_LT(enough({2, 10}), enough({10}));
    // by hand from the definition: the smallest s whose chance, averaged, is enough
    const int s = enough({2, 10});
    const auto chance = [&](int jobs) {
        return (chanceOfAtMost(jobs, demand, 3) + chanceOfAtMost(jobs, demand, 11)) / 2;
    };
    EXPECT_GE(chance(s), 0.98);
    EXPECT_LT(chance(s - 1), 0.98);
}

TEST(OrderPoint, HasAPriorOfFourOrders) {
    using Mix = std::vector<LeadTimes::Likely>;
    EXPECT_EQ(LeadTimes({}).mix(), (Mix{{3, 0.25}, {5, 0.25}, {7, 0.25}, {10, 0.25}}));
    EXPECT_EQ(LeadTimes(std::vector{5.0, 12.0, 5.0, 5.0}).mix(),
              (Mix{{3, 0.125}, {5, 0.5}, {7, 0.125}, {10, 0.125}, {12, 0.125}}));
    EXPECT_EQ(orderPoint(5), 5.5);
    EXPECT_EQ(orderPoint(0), 1);
    EXPECT_TRUE(isRunningShort(5, 5));
    EXPECT_FALSE(isRunningShort(5.1, 5));
}

TEST(OrderPoint, WhatSellsTooSeldomIsOnRequest) {
    // by hand: 20 % of a reel of 80 a year is 16; at a margin of 8 a job that is 2 jobs a year
    EXPECT_TRUE(isOnRequest(1.9, 0.2, 80, 8));
    EXPECT_FALSE(isOnRequest(2, 0.2, 80, 8));
    EXPECT_TRUE(isOnRequest(0, 0.2, 0, 8));
}

// The series of stock-checks.csv, croston1 and tsb1.
const std::vector<double> kSeries = {0, 0, 3, 0, 1, 0, 0, 0, 2, 0, 0, 1, 1, 0, 0, 4, 0, 0, 0, 1};

/// Croston, "Forecasting and stock control for intermittent demands", 1972: size over interval, each smoothed.
double croston(const std::vector<double>& series, double alpha) {
    double size = 0;
    double interval = 0;
    double since = 1;
    bool started = false;
    for (const double value : series) {
        if (value > 0) {
            size = started ? size + alpha * (value - size) : value;
            interval = started ? interval + alpha * (since - interval) : since;
            started = true;
            since = 1;
        } else {
            since += 1;
        }
    }
    return size / interval;
}

/// Teunter, Syntetos and Babai, "Intermittent demand: linking forecasting to inventory obsolescence", 2011.
double tsb(const std::vector<double>& series, double size, double chance) {
    for (std::size_t i = 1; i < series.size(); ++i) {
        chance += 0.05 * ((series[i] > 0 ? 1 : 0) - chance);
        if (series[i] > 0) {
            size += 0.1 * (series[i] - size);
        }
    }
    return size * chance;
}

// stock-checks.csv, croston1 (forecast 8.20, tsintermittent 1.10: two independent codes) and tsb1 (tsintermittent
// 1.10): two other ways to the rate of one series. Ours lies between its plain mean and what they say.
TEST(Demand, RateIsNearOtherWaysToIt) {
    const double byCroston = croston(kSeries, 0.1);
    EXPECT_NEAR(byCroston, 0.814549944796525, 1e-12);
    EXPECT_NEAR(byCroston * (1 - 0.1 / 2), 0.773822447556699, 1e-12); // Syntetos and Boylan's correction
    const double byTsb = tsb(kSeries, 3, 1.0 / 3);
    EXPECT_NEAR(byTsb, 0.856521438892408, 1e-12);
    Demand demand = Demand::likeOthers(0.65); // the series' own mean
    for (const double jobs : kSeries) {
        demand.addDay(jobs);
    }
    EXPECT_NEAR(demand.jobsPerDay(), 0.65, 0.03);
    EXPECT_LT(demand.jobsPerDay(), std::min(byCroston, byTsb));
}

} // namespace
} // namespace rw::stock
