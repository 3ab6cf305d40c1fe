// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/need.h"
#include "tests/core/length/requests.h"

#include <boost/math/distributions/normal.hpp>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

using namespace rw;
using namespace rw::length;

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

Observation exactly(double r, double sd = kJobSpread) { return {r, r, sd}; }
Observation atMost(double r, double sd = kJobSpread) { return {-kInfinity, r, sd}; }
Observation moreThan(double r, double sd = kJobSpread) { return {r, kInfinity, sd}; }
Observation between(double low, double high, double sd = kJobSpread) { return {low, high, sd}; }

const Belief kNewFrame = groupBelief(kUnknownShop, 0.003);

Belief momentsOf(const std::vector<ThetaPoint>& points) {
    double mean = 0;
    double squares = 0;
    for (const ThetaPoint& point : points) {
        mean += point.weight * point.theta;
        squares += point.weight * point.theta * point.theta;
    }
    return {mean, std::sqrt(squares - mean * mean)};
}

class Jobs {
public:
    explicit Jobs(unsigned seed)
        : m_random(seed) {}
    double normal(double mean, double sd) { return std::normal_distribution<double>(mean, sd)(m_random); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    std::vector<Observation> exact(int count) {
        const double theta = normal(0, kNewFrame.sd);
        std::vector<Observation> seen;
        for (int i = 0; i < count; ++i) {
            const double sd = std::hypot(kJobSpread, whole(0, 1) * 0.01);
            seen.push_back(exactly(normal(theta, sd), sd));
        }
        return seen;
    }
    /// Of every kind, as a shop would see them of one frame.
    std::vector<Observation> mixed(int count) {
        const double theta = normal(0, kNewFrame.sd);
        std::vector<Observation> seen;
        for (int i = 0; i < count; ++i) {
            const double r = normal(theta, kJobSpread);
            const double cut = 0.01 * whole(-3, 9);
            switch (whole(0, 3)) {
            case 0:
                seen.push_back(exactly(r));
                break;
            case 1:
                seen.push_back(between(r - 0.004, r + 0.01));
                break;
            default:
                seen.push_back(r <= cut ? atMost(cut) : moreThan(cut));
            }
        }
        return seen;
    }

private:
    std::mt19937 m_random;
};

// The closed form of a normal belief with normal observations.
TEST(Evidence, ExactObservationsGiveTheNormalPosterior) {
    Jobs jobs(1);
    for (int count = 1; count <= 60; ++count) {
        const std::vector<Observation> seen = jobs.exact(count);
        double information = 1 / (kNewFrame.sd * kNewFrame.sd);
        double pull = 0;
        for (const Observation& one : seen) {
            information += 1 / (one.sd * one.sd);
            pull += one.low / (one.sd * one.sd);
        }
        const Belief found = momentsOf(thetaAfter(kNewFrame, seen));
        EXPECT_NEAR(found.mean, pull / information, 1e-8);
        EXPECT_NEAR(found.sd, 1 / std::sqrt(information), 1e-8);
        EXPECT_NEAR(afterExact(kNewFrame, seen).mean, pull / information, 1e-14);
    }
}

// Against Boost.Math's normal distribution, to half a millimetre.
TEST(Evidence, PredictiveQuantilesOfExactObservations) {
    Jobs jobs(2);
    for (int count = 0; count <= 60; count += 3) {
        const std::vector<Observation> seen = jobs.exact(count);
        const Belief theta = afterExact(kNewFrame, seen);
        const boost::math::normal closed(theta.mean, std::hypot(theta.sd, kJobSpread));
        const Need need = Need::learned(11'000, kNewFrame, seen);
        for (const double chance : {0.99, 0.5, 0.1, 0.01, 0.005, 1e-4, 5e-7}) {
            const double expected = 11'000 * std::exp(boost::math::quantile(complement(closed, chance)));
            EXPECT_NEAR(need.exceededWith(chance), expected, 0.5) << count << ' ' << chance;
            EXPECT_NEAR(need.chanceAbove(expected) / chance, 1, 1e-3) << count << ' ' << chance;
        }
        EXPECT_NEAR(need.sdLog(), closed.standard_deviation(), 1e-8);
        // The standard deviation of a lognormal variable.
        const double variance = closed.standard_deviation() * closed.standard_deviation();
        EXPECT_NEAR(need.sdMm(), 11'000 * std::exp(closed.mean() + variance / 2) * std::sqrt(std::expm1(variance)),
                    1e-3);
    }
}

/// The predictive distribution by brute force: the model's densities as they are written down, theta in twenty
/// thousand steps, the quantile by halving.
class Quadrature {
public:
    Quadrature(const Belief& before, const std::vector<Observation>& seen) {
        constexpr int kSteps = 20'000;
        constexpr double kReach = 0.6;
        const boost::math::normal prior(before.mean, before.sd);
        std::vector<double> logs;
        for (int i = 0; i <= kSteps; ++i) {
            const double theta = -kReach + 2 * kReach * i / kSteps;
            double log = std::log(pdf(prior, theta));
            for (const Observation& one : seen) {
                const boost::math::normal job(theta, one.sd);
                if (one.low == one.high) {
                    log += std::log(pdf(job, one.low));
                } else if (std::isinf(one.low)) {
                    log += std::log(cdf(job, one.high));
                } else if (std::isinf(one.high)) {
                    log += std::log(cdf(complement(job, one.low)));
                } else {
                    log += std::log(cdf(job, one.high) - cdf(job, one.low));
                }
            }
            m_theta.push_back(theta);
            logs.push_back(log);
        }
        const double most = *std::max_element(logs.begin(), logs.end());
        for (const double log : logs) {
            m_weight.push_back(std::exp(log - most));
            m_sum += m_weight.back();
        }
    }

    [[nodiscard]] double chanceAbove(double r) const {
        double chance = 0;
        for (std::size_t i = 0; i < m_theta.size(); ++i) {
            if (m_weight[i] > 1e-18) {
                chance += m_weight[i] * cdf(complement(boost::math::normal(m_theta[i], kJobSpread), r));
            }
        }
        return chance / m_sum;
    }

    [[nodiscard]] double exceededWith(double chance) const {
        double low = -0.6;
        double high = 0.6;
        while (high - low > 1e-7) {
            const double middle = (low + high) / 2;
            (chanceAbove(middle) > chance ? low : high) = middle;
        }
        return low;
    }

private:
    std::vector<double> m_theta;
    std::vector<double> m_weight;
    double m_sum = 0;
};

void expectAgrees(const std::vector<Observation>& seen, const char* what) {
    const Quadrature fine(kNewFrame, seen);
    const Need need = Need::learned(11'000, kNewFrame, seen);
    for (const double chance : {0.5, 0.1, 0.01, 0.005, 1e-4}) {
        EXPECT_NEAR(need.exceededWith(chance), 11'000 * std::exp(fine.exceededWith(chance)), 1)
            << what << ' ' << chance;
    }
}

TEST(Evidence, CensoredPosteriorAgreesWithAFineQuadrature) {
    Jobs jobs(3);
    for (const int count : {1, 2, 5, 12, 30, 50}) {
        expectAgrees(jobs.mixed(count), "mixed");
    }
    expectAgrees({atMost(0.06)}, "enough");
    expectAgrees({moreThan(0.02)}, "short");
    expectAgrees(std::vector<Observation>(50, atMost(0.0)), "fifty times just enough");
    std::vector<Observation> squeezed(25, atMost(0.01));
    squeezed.insert(squeezed.end(), 25, moreThan(0.01));
    expectAgrees(squeezed, "as often short as enough");
    expectAgrees({between(0.03, 0.031), between(0.03, 0.05)}, "narrow");
    expectAgrees({moreThan(0.15), moreThan(0.16)}, "far out");
}

TEST(Evidence, EqualObservationsCountEach) {
    std::vector<Observation> nearlyEqual;
    for (int i = 0; i < 8; ++i) {
        nearlyEqual.push_back(atMost(0.01 + i * 1e-9));
    }
    const Need counted = Need::learned(5500, kNewFrame, std::vector<Observation>(8, atMost(0.01)));
    EXPECT_NEAR(counted.medianMm(), Need::learned(5500, kNewFrame, nearlyEqual).medianMm(), 1e-3);
    EXPECT_LT(counted.medianMm(), Need::learned(5500, kNewFrame, std::vector<Observation>(1, atMost(0.01))).medianMm());
}

TEST(Evidence, EveryKindPullsItsWay) {
    const double before = firstNeed(5500, 0.003).medianMm();
    const auto after = [](const Observation& one) {
        return Need::learned(5500, kNewFrame, std::vector<Observation>{one}).medianMm();
    };
    EXPECT_GT(after(exactly(0.03)), before);
    EXPECT_LT(after(exactly(-0.03)), before);
    EXPECT_LT(after(atMost(0.0)), before);
    EXPECT_GT(after(moreThan(0.0)), before);
    EXPECT_LT(after(atMost(0.0)), after(atMost(0.03)));
    EXPECT_GT(after(between(0.02, 0.03)), before);
}

// A reel's end of three metres too much proves nothing that was not known.
TEST(Evidence, FarMoreThanEnoughTeachesNothing) {
    const std::vector<Observation> reelEnds(10, atMost(std::log(14'000 / 11'000.0)));
    const Need need = Need::learned(11'000, kNewFrame, reelEnds);
    const Need before = firstNeed(11'000, 0.003);
    for (const double chance : {0.5, 0.1, 0.01}) {
        EXPECT_NEAR(need.exceededWith(chance), before.exceededWith(chance), 0.1);
    }
}

TEST(Evidence, StaysSoundWhenBeliefAndObservationsContradict) {
    for (const auto& seen : {std::vector<Observation>{moreThan(0.69), moreThan(0.69), atMost(-0.69)},
                             std::vector<Observation>(50, moreThan(0.69)),
                             std::vector<Observation>{between(-0.69, -0.68), between(0.68, 0.69)}}) {
        const Need need = Need::learned(11'000, kNewFrame, seen);
        EXPECT_TRUE(std::isfinite(need.medianMm()));
        double last = 0;
        for (const double chance : {0.999, 0.5, 0.1, 0.01, 1e-6}) {
            EXPECT_GT(need.exceededWith(chance), last);
            last = need.exceededWith(chance);
            EXPECT_NEAR(need.chanceAbove(last), chance, 1e-6);
        }
    }
}

TEST(Evidence, QuantilesGrowFarBeyondWhatCanHappen) {
    const Need need = Need::learned(11'000, kNewFrame, std::vector<Observation>{atMost(0.02), exactly(0.01)});
    double last = 0;
    for (double z = -60; z <= 60; z += 0.5) {
        EXPECT_GT(need.atSd(z), last);
        last = need.atSd(z);
    }
}

/// x of the linear equations A x = y, by elimination.
std::vector<double> solve(std::vector<std::vector<double>> a, std::vector<double> y) {
    const std::size_t n = y.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 1; j < n; ++j) {
            const double factor = a[j][i] / a[i][i];
            for (std::size_t k = i; k < n; ++k) {
                a[j][k] -= factor * a[i][k];
            }
            y[j] -= factor * y[i];
        }
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) {
            y[i] -= a[i][k] * y[k];
        }
        y[i] /= a[i][i];
    }
    return y;
}

// The bias given all exact observations, by conditioning their joint normal distribution as a whole.
TEST(Evidence, ShopsBiasIsTheJointNormalOnes) {
    Jobs jobs(4);
    const std::vector<std::vector<Observation>> groups{jobs.exact(1), jobs.exact(7), jobs.exact(3), {atMost(0.01)}};
    std::vector<std::span<const Observation>> spans(groups.begin(), groups.end());
    std::vector<double> r;
    std::vector<std::size_t> groupOf;
    std::vector<double> sd;
    for (std::size_t g = 0; g < groups.size(); ++g) {
        for (const Observation& one : groups[g]) {
            if (one.isExact()) {
                r.push_back(one.low);
                groupOf.push_back(g);
                sd.push_back(one.sd);
            }
        }
    }
    const double shop = kShopSpread * kShopSpread;
    std::vector<std::vector<double>> covariance(r.size(), std::vector<double>(r.size(), shop));
    for (std::size_t i = 0; i < r.size(); ++i) {
        for (std::size_t j = 0; j < r.size(); ++j) {
            covariance[i][j] += groupOf[i] == groupOf[j] ? kFrameSpread * kFrameSpread : 0;
            covariance[i][j] += i == j ? sd[i] * sd[i] : 0;
        }
    }
    double mean = 0;
    for (const double part : solve(covariance, r)) {
        mean += shop * part;
    }
    double variance = shop;
    for (const double part : solve(covariance, std::vector<double>(r.size(), shop))) {
        variance -= shop * part;
    }
    const Belief bias = shopBias(spans);
    EXPECT_NEAR(bias.mean, mean, 1e-12);
    EXPECT_NEAR(bias.sd, std::sqrt(variance), 1e-12);
    EXPECT_EQ(shopBias({}).mean, 0);
    EXPECT_EQ(shopBias({}).sd, kShopSpread);
}

} // namespace
