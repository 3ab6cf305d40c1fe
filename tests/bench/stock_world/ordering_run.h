// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace rw::world {

/// When a shop orders.
enum class OrderRule {
    BelowTwoJobs,      ///< a reel when fewer than two jobs are left and on the way
    ReelByReel,        ///< a reel at the order point, each string a parcel of its own
    OrderPointAlone,   ///< at the order point, each string a parcel of its own
    OrderPointTogether ///< at the order point, with what is due soon in one parcel
};

struct OrderingResult {
    double jobs = 0;
    double without = 0;     ///< jobs that found no string
    double stockMetres = 0; ///< on the shelf, on an average day
    double parcels = 0;

    [[nodiscard]] double withoutPercent() const { return 100 * without / jobs; }
};

/// Five years of ordering, after two years in which the shop comes to know its strings. Every string is kept from the
/// first day on.
[[nodiscard]] OrderingResult runOrdering(OrderRule rule, double jobsPerMonth, std::uint64_t seed);

} // namespace rw::world
