// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/weighing.h"

#include <cassert>
#include <cmath>
#include <numbers>
#include <sstream>

namespace rw::stock {

namespace {
constexpr double kMmPerMetre = 1'000;
constexpr double kMaterialSpread = 0.05;

std::string grams(double value) {
    std::ostringstream text;
    text << std::round(value * 10) / 10 << " g";
    return text.str();
}

tl::unexpected<Refusal> belowSpool(std::string_view key, double weightG, double emptyG) {
    return refuse(Code::ImpossibleValue, {{"key", std::string(key)},
                                          {"text", grams(weightG)},
                                          {"expected", "more than the empty spool's " + grams(emptyG)}});
}

/// The share (G - T) / (G0 - T) that is left of a new reel.
Result<Estimate> shareLeft(const Weighing& weighing, const Estimate& newGrossG) {
    const double left = weighing.grossG.value - weighing.emptyG.value;
    const double whole = newGrossG.value - weighing.emptyG.value;
    if (left < 0) {
        return belowSpool("weight", weighing.grossG.value, weighing.emptyG.value);
    }
    if (whole <= 0) {
        return belowSpool("weight when new", newGrossG.value, weighing.emptyG.value);
    }
    const double byGross = weighing.grossG.sd / whole;
    const double byNew = left * newGrossG.sd / (whole * whole);
    const double byEmpty = (newGrossG.value - weighing.grossG.value) * weighing.emptyG.sd / (whole * whole);
    return Estimate{left / whole, std::hypot(byGross, byNew, byEmpty)};
}

double densityKgPerM3(Material material) {
    switch (material) {
    case Material::NaturalGut:
        return 1'300;
    case Material::Nylon:
    case Material::Multifilament:
        return 1'140;
    case Material::Polyester:
        return 1'380;
    case Material::Aramid:
        return 1'440;
    }
    return 0;
}
} // namespace

Estimate combined(const Estimate& one, const Estimate& other) {
    if (one.sd <= 0 || other.sd <= 0) {
        return one.sd <= other.sd ? one : other;
    }
    const double first = 1 / (one.sd * one.sd);
    const double second = 1 / (other.sd * other.sd);
    return {(first * one.value + second * other.value) / (first + second), 1 / std::sqrt(first + second)};
}

double scaleSdG(double stepG) { return stepG / std::sqrt(12.0); }

Result<Estimate> lengthAgainstNew(const Weighing& weighing, const NewReel& reel) {
    const auto share = shareLeft(weighing, reel.grossG);
    if (!share) {
        return tl::unexpected(share.error());
    }
    return Estimate{reel.lengthMm.value * share->value,
                    std::hypot(reel.lengthMm.value * share->sd, share->value * reel.lengthMm.sd)};
}

Result<Estimate> lengthByWeight(const Weighing& weighing, const Estimate& gramsPerMetre) {
    assert(gramsPerMetre.value > 0);
    const double left = weighing.grossG.value - weighing.emptyG.value;
    if (left < 0) {
        return belowSpool("weight", weighing.grossG.value, weighing.emptyG.value);
    }
    const double lengthMm = left / gramsPerMetre.value * kMmPerMetre;
    const double byWeights = std::hypot(weighing.grossG.sd, weighing.emptyG.sd) / gramsPerMetre.value * kMmPerMetre;
    return Estimate{lengthMm, std::hypot(byWeights, lengthMm * gramsPerMetre.sd / gramsPerMetre.value)};
}

Result<Estimate> lengthByWhatIsGone(const Estimate& grossG, const NewReel& reel, const Estimate& gramsPerMetre) {
    assert(gramsPerMetre.value > 0);
    const double goneMm = (reel.grossG.value - grossG.value) / gramsPerMetre.value * kMmPerMetre;
    if (goneMm > reel.lengthMm.value) {
        const double emptyG = reel.grossG.value - reel.lengthMm.value / kMmPerMetre * gramsPerMetre.value;
        return belowSpool("weight", grossG.value, emptyG);
    }
    const double byWeights = std::hypot(grossG.sd, reel.grossG.sd) / gramsPerMetre.value * kMmPerMetre;
    const double byMetre = goneMm * gramsPerMetre.sd / gramsPerMetre.value;
    return Estimate{reel.lengthMm.value - goneMm, std::hypot(reel.lengthMm.sd, byWeights, byMetre)};
}

Estimate gramsPerMetreOf(Material material, double diameterMm) {
    constexpr double kGramsPerMetre = 1e-3; // of kg/m3 times mm2
    const double value = densityKgPerM3(material) * std::numbers::pi * diameterMm * diameterMm / 4 * kGramsPerMetre;
    return {value, value * kMaterialSpread};
}

Estimate seenGramsPerMetre(const Estimate& beforeG, const Estimate& afterG, const Estimate& cutMm) {
    assert(cutMm.value > 0);
    const double metres = cutMm.value / kMmPerMetre;
    const double seen = (beforeG.value - afterG.value) / metres;
    const double byWeights = std::hypot(beforeG.sd, afterG.sd) / metres;
    return {seen, std::hypot(byWeights, seen * cutMm.sd / cutMm.value)};
}

Estimate learnedGramsPerMetre(const Estimate& known, const Estimate& beforeG, const Estimate& afterG,
                              const Estimate& cutMm) {
    return combined(known, seenGramsPerMetre(beforeG, afterG, cutMm));
}

Result<Estimate> newLengthFrom(const Weighing& weighing, const NewReel& nominal, const Estimate& cutMm) {
    assert(cutMm.value > 0);
    const auto share = shareLeft(weighing, nominal.grossG);
    if (!share) {
        return tl::unexpected(share.error());
    }
    const double gone = 1 - share->value;
    if (gone <= 0) {
        return nominal.lengthMm; // by its weight nothing was cut yet
    }
    const double lengthMm = cutMm.value / gone;
    return combined(nominal.lengthMm, {lengthMm, std::hypot(cutMm.sd / gone, lengthMm / gone * share->sd)});
}

WeighFinding compareWithBook(const Estimate& weighedMm, const Estimate& bookMm, Length perJob) {
    assert(perJob.isPositive());
    constexpr double kFindingSds = 3;
    constexpr double kJobSds = 2;
    constexpr int kMostJobs = 3;
    const double differenceMm = weighedMm.value - bookMm.value;
    const double sd = std::hypot(weighedMm.sd, bookMm.sd);
    WeighFinding finding{
        .differenceMm = differenceMm, .isFinding = std::abs(differenceMm) > kFindingSds * sd, .unbookedJobs = {}};
    for (int jobs = 1; finding.isFinding && !finding.unbookedJobs && jobs <= kMostJobs; ++jobs) {
        const double missing = static_cast<double>(perJob.millimetres()) * jobs;
        if (std::abs(differenceMm + missing) <= kJobSds * sd) {
            finding.unbookedJobs = jobs;
        }
    }
    return finding;
}

} // namespace rw::stock
