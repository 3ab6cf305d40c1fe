// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/bench/stock_world/dice.h"

#include <array>
#include <vector>

// Who comes through the door and how long parcels take, whatever a forecast believes.
namespace rw::world {

constexpr std::size_t kStrings = 30;

/// One customer: rackets that want the same string, each as a share of a whole job.
struct Arrival {
    std::size_t string;
    std::vector<double> jobs;
};

/// Thirty strings, wanted as often as one over their rank at first; each quarter their popularity moves by 25 % (one
/// standard deviation), the year swings by 40 %. 7 % of arrivals bring two to four rackets; one job in five takes half
/// the length. A parcel takes 3 to 10 days, each as likely.
class OrderingWorld {
public:
    OrderingWorld(double jobsPerMonth, std::uint64_t seed);

    [[nodiscard]] std::vector<Arrival> nextDay();
    [[nodiscard]] int leadDays() { return m_dice.wholeWithin(3, 10); }

private:
    [[nodiscard]] std::size_t popularString();

    Dice m_dice;
    double m_arrivalsPerDay;
    std::array<double, kStrings> m_popularity{};
    int m_day = 0;
};

} // namespace rw::world
