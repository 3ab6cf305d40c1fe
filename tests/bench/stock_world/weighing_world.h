// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace rw::world {

struct CoverageResult {
    int weighings = 0;
    int coveredAgainstNew = 0; ///< the truth lay in the 95 % interval of the reel against itself
    int coveredByWeight = 0;   ///< and of the grams per metre
};

/// Reels of 200 m that are truly so within 0.5 %, of a string whose grams per metre are what its material says within
/// 5 %, on spools of 150 g known within 1 g, weighed new and later on a scale with steps of 1 g, after any number of
/// cuts.
[[nodiscard]] CoverageResult runWeighing(int reels, std::uint64_t seed);

} // namespace rw::world
