// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/order_quantity.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace rw::stock {

namespace {
/// As many as are used up before they are too old, but one.
int mostWithin(double reelsPerYear, std::optional<double> shelfLifeYears) {
    constexpr double kMost = 1e9;
    return shelfLifeYears ? std::max(1, static_cast<int>(std::min(kMost, reelsPerYear * *shelfLifeYears)))
                          : std::numeric_limits<int>::max();
}
} // namespace

double yearlyCost(int reels, double reelsPerYear, double price, const OrderCosts& costs) {
    return price * reelsPerYear + costs.perOrder * reelsPerYear / reels + costs.holdingRate * price * reels / 2;
}

int reelsPerOrder(double reelsPerYear, double price, const OrderCosts& costs, std::optional<double> shelfLifeYears) {
    assert(reelsPerYear > 0 && price > 0 && costs.perOrder >= 0 && costs.holdingRate > 0);
    const double least = 2 * costs.perOrder * reelsPerYear / (costs.holdingRate * price);
    // the root of n (n + 1) = least, rounded up
    const int reels = std::max(1, static_cast<int>(std::ceil(std::sqrt(least + 0.25) - 0.5)));
    return std::min(reels, mostWithin(reelsPerYear, shelfLifeYears));
}

OrderQuantity cheapestOrder(double reelsPerYear, std::span<const PriceBreak> breaks, const OrderCosts& costs,
                            std::optional<double> shelfLifeYears) {
    assert(!breaks.empty() && breaks.front().from == 1);
    const int most = mostWithin(reelsPerYear, shelfLifeYears);
    std::optional<OrderQuantity> best;
    for (std::size_t i = 0; i < breaks.size() && breaks[i].from <= most; ++i) {
        const double price = breaks[i].price;
        const int below = i + 1 < breaks.size() ? breaks[i + 1].from - 1 : most;
        const int reels = std::min({std::max(breaks[i].from, reelsPerOrder(reelsPerYear, price, costs)), below, most});
        const OrderQuantity quantity{reels, yearlyCost(reels, reelsPerYear, price, costs)};
        if (!best || quantity.yearlyCost < best->yearlyCost) {
            best = quantity;
        }
    }
    return *best;
}

} // namespace rw::stock
