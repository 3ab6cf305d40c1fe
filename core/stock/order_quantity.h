// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

// How many reels to order at once. Amounts are in one unit of one currency.
namespace rw::stock {

/// What ordering and keeping cost.
struct OrderCosts {
    double perOrder;           ///< shipping and handling, K; of a parcel of several strings, this string's share
    double holdingRate = 0.20; ///< of its price, what keeping a reel for a year costs, h
};

/// From so many reels on each of them costs this.
struct PriceBreak {
    int from; ///< the first is 1
    double price;
};

struct OrderQuantity {
    int reels;
    double yearlyCost; ///< the reels themselves, the orders and the keeping
};

/// What a year costs when `reels` are ordered at a time: P D + K D / n + h P n / 2.
[[nodiscard]] double yearlyCost(int reels, double reelsPerYear, double price, const OrderCosts& costs);

/// The smallest n with n (n + 1) >= 2 K D / (h P), which costs the year least, and no more than are used up within the
/// shelf life (in years), but one. Preconditions: prices and rates are positive.
[[nodiscard]] int reelsPerOrder(double reelsPerYear, double price, const OrderCosts& costs,
                                std::optional<double> shelfLifeYears = std::nullopt);

/// The same where more reels are cheaper each: every break is compared. `breaks` begin with 1 and rise.
[[nodiscard]] OrderQuantity cheapestOrder(double reelsPerYear, std::span<const PriceBreak> breaks,
                                          const OrderCosts& costs, std::optional<double> shelfLifeYears = std::nullopt);

} // namespace rw::stock
