// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/bench/stock_world/cutters.h"

namespace rw::world {

/// How a shop cuts for a while.
struct CuttingShop {
    Work work;
    bool bothOffOneReel; ///< a job's pieces are cut as one length
    Length shortestUseful;
    int jobs;
    std::uint64_t seed;
};

struct CuttingResult {
    double cutMm = 0;
    double scrapMm = 0;
    int pieces = 0;
    int pastWhatIsThere = 0; ///< cuts planned on a lot that did not hold so much
    double openReels = 0;    ///< on average, after each job

    [[nodiscard]] double scrapPercent() const { return 100 * scrapMm / cutMm; }
    [[nodiscard]] double pastPer10000() const { return 10'000.0 * pastWhatIsThere / pieces; }
};

/// One job after the other. An end is kept while what the planner may use of it is useful; the rest is scrap, and so is
/// a reel that held less than was planned.
[[nodiscard]] CuttingResult runCutting(const CuttingShop& shop, Cutter& cutter);

} // namespace rw::world
