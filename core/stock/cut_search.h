// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/units/length.h"

#include <chrono>
#include <functional>
#include <optional>
#include <vector>

namespace rw::stock {

/// A lot in the search for the best plan.
struct SearchLot {
    Length room;                                  ///< how much may be cut off it at most
    std::function<double(Length)> cost;           ///< of cutting so much off it altogether; nothing cut costs nothing
    std::optional<JobId> pinnedTo = std::nullopt; ///< a piece pinned to the same job goes here
};

/// A piece that wants a lot.
struct SearchPiece {
    Length length;                              ///< positive
    int weight = 1;                             ///< how much it matters that it is placed; positive
    std::optional<JobId> pinned = std::nullopt; ///< goes only where this job is pinned; nothing: anywhere
};

/// Which lot each piece goes to, if any.
using Placing = std::vector<std::optional<std::size_t>>;

struct SearchResult {
    Placing placing;
    bool proven; ///< no placing is better; otherwise it is the best that was found in time
};

/// The placing that leaves out the least weight, and of those one that costs least (within a nanometre): depth first
/// over the lots from the least room to the most, for each the totals that can be cut off it from the cheapest on. A
/// branch is given up when even the cheapest reachable total on each lot to come could not make it better.
/// `start` is a placing that keeps to the rooms and pins; what is no better does not replace it.
[[nodiscard]] SearchResult searchCuts(const std::vector<SearchLot>& lots, const std::vector<SearchPiece>& pieces,
                                      const Placing& start, std::chrono::steady_clock::time_point deadline);

} // namespace rw::stock
