// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/recommended_cut.h"

#include "core/length/standard_normal.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace rw::length {

namespace {
double sumAt(std::span<const Need> parts, double z) {
    return std::accumulate(parts.begin(), parts.end(), 0.0,
                           [&](double sum, const Need& need) { return sum + need.atSd(z); });
}

double chanceShort(std::span<const Need> parts, double totalMm) {
    return parts.size() == 1 ? parts.front().chanceAbove(totalMm)
                             : 1 - std::pow(normalAbove(-sharedSd(parts, totalMm)), static_cast<double>(parts.size()));
}

double chanceShort(const Need& need, Length length) {
    return need.chanceAbove(static_cast<double>(length.millimetres()));
}

std::size_t worstOff(std::span<const Need> parts, std::span<const Length> lengths) {
    std::size_t worst = 0;
    for (std::size_t i = 1; i < parts.size(); ++i) {
        if (chanceShort(parts[i], lengths[i]) > chanceShort(parts[worst], lengths[worst])) {
            worst = i;
        }
    }
    return worst;
}

/// Gives the worst-off part a step of another's if all are safer for it than it was.
bool moveStepToWorst(std::span<const Need> parts, std::vector<Length>& lengths, Length tapeStep) {
    const std::size_t worst = worstOff(parts, lengths);
    const double before = chanceShort(parts[worst], lengths[worst]);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const bool canGive = i != worst && chanceShort(parts[i], lengths[i] - tapeStep) < before;
        if (canGive && chanceShort(parts[worst], lengths[worst] + tapeStep) < before) {
            lengths[i] -= tapeStep;
            lengths[worst] += tapeStep;
            return true;
        }
    }
    return false;
}
} // namespace

double sharedSd(std::span<const Need> parts, double totalMm) {
    // The sum of exponentials is convex and growing in z: Newton from any start settles in a few steps.
    double z = std::log(totalMm / sumAt(parts, 0)) / parts.front().sdLog();
    for (int step = 0; step < 20; ++step) {
        double value = -totalMm;
        double slope = 0;
        for (const Need& need : parts) {
            value += need.atSd(z);
            slope += need.atSd(z) * need.sdLog();
        }
        const double change = value / slope;
        z -= change;
        if (std::abs(change) < 1e-12) {
            break;
        }
    }
    return z;
}

double chanceAnyShort(std::span<const Need> needs, std::span<const Length> lengths) {
    assert(needs.size() == lengths.size());
    double enough = 1;
    for (std::size_t i = 0; i < needs.size(); ++i) {
        enough *= 1 - needs[i].chanceAbove(static_cast<double>(lengths[i].millimetres()));
    }
    return 1 - enough;
}

RecommendedCut recommendCut(std::span<const Need> parts, double ceilingPerPart, Length tapeStep,
                            const std::optional<JobCosts>& costs) {
    assert(!parts.empty());
    // All parts but the last are measured off in whole millimetres.
    Length least = Length::fromMillimetres(0);
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        least += Length::roundedUp(parts[i].exceededWith(ceilingPerPart));
    }
    const double last = parts.back().exceededWith(ceilingPerPart);
    least = Length::roundedUp(static_cast<double>(least.millimetres()) + last).roundedUpTo(tapeStep);
    if (!costs) {
        return {least, 0, false};
    }
    const auto costOf = [&](Length cut) {
        const double string = costs->perMetre * cut.metres();
        const double chance = chanceShort(parts, static_cast<double>(cut.millimetres()));
        return string + chance * (costs->spoiledJob + string);
    };
    RecommendedCut best{least, costOf(least), false};
    // The string alone soon costs more than the best so far; nothing longer can be cheaper.
    for (Length cut = least + tapeStep; costs->perMetre * cut.metres() < best.cost; cut += tapeStep) {
        const double cost = costOf(cut);
        if (cost < best.cost) {
            best = {cut, cost, true};
        }
    }
    return best;
}

std::vector<Length> splitEvenly(std::span<const Need> parts, Length total, Length tapeStep) {
    assert(!parts.empty());
    const double z = sharedSd(parts, static_cast<double>(total.millimetres()));
    std::vector<Length> lengths;
    lengths.reserve(parts.size());
    Length left = total;
    for (const Need& need : parts) {
        const auto steps =
            static_cast<std::int64_t>(std::floor(need.atSd(z) / static_cast<double>(tapeStep.millimetres())));
        lengths.push_back(tapeStep * steps);
        left -= lengths.back();
    }
    while (left >= tapeStep) {
        lengths[worstOff(parts, lengths)] += tapeStep;
        left -= tapeStep;
    }
    lengths.back() += left;
    while (moveStepToWorst(parts, lengths, tapeStep)) {
    }
    return lengths;
}

} // namespace rw::length
