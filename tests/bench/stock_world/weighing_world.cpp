// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/weighing_world.h"

#include "core/stock/weighing.h"
#include "tests/bench/stock_world/dice.h"

#include <cmath>

namespace rw::world {

namespace {
constexpr double kScaleStepG = 1;
constexpr double kSpoolSdG = 1;
constexpr double kNominalMm = 200'000;
constexpr double kLabelSd = 0.005;

double read(double trueG) { return std::round(trueG / kScaleStepG) * kScaleStepG; }

bool covers(const stock::Estimate& said, double truth) {
    constexpr double k95 = 1.959963984540054;
    return std::abs(said.value - truth) <= k95 * said.sd;
}
} // namespace

CoverageResult runWeighing(int reels, std::uint64_t seed) {
    Dice dice(seed);
    CoverageResult result;
    for (int i = 0; i < reels; ++i) {
        const stock::Estimate material = stock::gramsPerMetreOf(Material::Polyester, 1.25);
        const double gramsPerMetre = dice.normal(material.value, material.sd);
        const double newMm = dice.normal(kNominalMm, kLabelSd * kNominalMm);
        const double leftMm = newMm * dice.uniform();
        const double spoolG = dice.normal(150, kSpoolSdG);
        const auto onScale = [&](double mm) {
            return stock::Estimate{read(spoolG + mm / 1'000 * gramsPerMetre), stock::scaleSdG(kScaleStepG)};
        };
        const stock::Weighing weighing{onScale(leftMm), {150, kSpoolSdG}};
        const auto againstNew =
            stock::lengthAgainstNew(weighing, {{kNominalMm, kLabelSd * kNominalMm}, onScale(newMm)});
        const auto byWeight = stock::lengthByWeight(weighing, material);
        if (!againstNew || !byWeight) {
            continue; // lighter than the spool is thought to be: refused, nothing is claimed
        }
        ++result.weighings;
        result.coveredAgainstNew += covers(*againstNew, leftMm) ? 1 : 0;
        result.coveredByWeight += covers(*byWeight, leftMm) ? 1 : 0;
    }
    return result;
}

} // namespace rw::world
