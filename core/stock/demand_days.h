// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/demand.h"

#include <optional>
#include <span>
#include <vector>

// What a shop's days tell of all its strings together, and of each.
namespace rw::stock {

/// The jobs of one string on each of its days, the first day first, the last one yesterday. Halves count.
using DailyJobs = std::vector<double>;

/// What all strings say of a new one.
struct PooledDemand {
    double jobsPerDay; ///< of a string on a day; positive
    double dailyRatio; ///< how days clump; at least 1
};
/// Nothing where no string was ever wanted, or no day has gone by. Clumping is looked for within four weeks each, so
/// that a season is not taken for it.
[[nodiscard]] std::optional<PooledDemand> pooled(std::span<const DailyJobs> strings);

/// A string's demand after its days, like the others until they tell something.
[[nodiscard]] Demand demandAfter(const DailyJobs& days, const PooledDemand& others);

} // namespace rw::stock
