// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/quote.h"

#include <algorithm>
#include <cassert>
#include <cstdint>

namespace rw {

Money costOfCut(Money landedCost, Length nominal, Length cut) {
    assert(nominal.isPositive());
    return landedCost.timesRatioHalfAway(cut.millimetres(), nominal.millimetres());
}

std::vector<Money> shareShipping(Money shipping, const std::vector<Money>& lotPrices) {
    if (lotPrices.empty()) {
        return {};
    }
    std::vector<std::int64_t> weights;
    weights.reserve(lotPrices.size());
    for (const Money& price : lotPrices) {
        assert(price.sameCurrency(shipping));
        weights.push_back(price.minor());
    }
    if (std::ranges::all_of(weights, [](std::int64_t weight) { return weight == 0; })) {
        return shipping.splitFairly(static_cast<int>(lotPrices.size()));
    }
    return shipping.splitByWeight(weights);
}

} // namespace rw
