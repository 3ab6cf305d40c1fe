// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/demand.h"

#include <span>
#include <vector>

namespace rw::stock {

/// How long a supplier takes, in days: each order it ever filled, and a prior worth one order each. Never its mean
/// alone, because the late ones are what a shop runs out in.
class LeadTimes {
public:
    /// Preconditions: not both empty, no day negative.
    explicit LeadTimes(std::span<const double> seen, std::span<const double> prior = kPrior);

    static constexpr double kPrior[] = {3, 5, 7, 10};

    struct Likely {
        double days;
        double chance;
        bool operator==(const Likely&) const = default;
    };
    [[nodiscard]] const std::vector<Likely>& mix() const { return m_mix; } ///< shortest first; chances add up to 1

private:
    std::vector<Likely> m_mix;
};

/// How sure the owner wants to be, and how the days clump.
struct Service {
    double chance = 0.98; ///< of not running out before the next delivery, 0.5 to 0.9999
    double dailyRatio = 1;
};

/// The chance that `jobs` (not negative) are enough until a delivery ordered now comes: the demand of each possible lead
/// time and one day of review, averaged.
[[nodiscard]] double chanceUntilDelivery(int jobs, const Demand& demand, const LeadTimes& leadTimes, double dailyRatio);

/// The fewest jobs s for which chanceUntilDelivery() reaches the chance of the service.
[[nodiscard]] int jobsUntilDelivery(const Demand& demand, const LeadTimes& leadTimes, const Service& service);

/// A string runs short when its position (usable, on order, less promised, in jobs) is at or below `s`.
[[nodiscard]] inline bool isRunningShort(double positionInJobs, int s) { return positionInJobs <= s; }

/// What the shelf's drawing and words show for it: max(1, s + 1/2), between having s and having one more.
[[nodiscard]] double orderPoint(int s);

/// Whether a string sells too seldom to be kept: fewer jobs a year than (holding rate * reel price) / margin of a job,
/// or none ever. Amounts in one unit of one currency; the margin is positive.
[[nodiscard]] bool isOnRequest(double jobsPerYear, double holdingRate, double reelPrice, double marginPerJob);

} // namespace rw::stock
