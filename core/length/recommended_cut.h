// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/need.h"
#include "core/units/length.h"

#include <optional>
#include <span>
#include <vector>

namespace rw::length {

/// What a job costs the shop: string per metre, and a spoiled job beyond its string. In any one currency.
struct JobCosts {
    double perMetre;
    double spoiledJob;
};

struct RecommendedCut {
    Length cut;
    double cost;      ///< expected; 0 without costs
    bool costDecided; ///< the cut is longer than the ceiling alone asks
};

/// P(any of these needs exceeds its length): the parts fail independently of one another.
[[nodiscard]] double chanceAnyShort(std::span<const Need> needs, std::span<const Length> lengths);

/// How many standard deviations above its median each part is when they share `totalMm` (positive) equally
/// safely.
[[nodiscard]] double sharedSd(std::span<const Need> parts, double totalMm);

/// The cut of a piece whose parts (one for an ordinary piece; short side and long side of a one-piece job)
/// each stay within `ceilingPerPart`. Without costs the least such cut in tape steps; with them the one of
/// least m c + P(short)(S + m c) among those, the string being shared so that every part is equally safe.
[[nodiscard]] RecommendedCut recommendCut(std::span<const Need> parts, double ceilingPerPart, Length tapeStep,
                                          const std::optional<JobCosts>& costs);

/// `total` in parts that are as nearly equally safe as the tape step allows: no step moved from one part to
/// another makes the worse-off one safer. What does not fill a step goes to the last part.
[[nodiscard]] std::vector<Length> splitEvenly(std::span<const Need> parts, Length total, Length tapeStep);

} // namespace rw::length
