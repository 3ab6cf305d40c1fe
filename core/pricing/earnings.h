// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/jobs/charge.h"
#include "core/money/money.h"

#include <vector>

namespace rw {

/// What the shop keeps of `charges` (of one job, in `currency`) when the tax is taken out: without the tax lines where
/// tax was added; else less the tax that each rate contains, rounded once a rate.
[[nodiscard]] Money withoutTax(const std::vector<Charge>& charges, Currency currency);

/// What the extras among `charges` cost the shop, as far as it is known.
[[nodiscard]] Money extrasCost(const std::vector<Charge>& charges, Currency currency);

/// What one job earned: its charges without tax, less the string that was cut for it and what its extras cost.
struct Earnings {
    Money charged; ///< without tax
    Money string;  ///< landed cost of every length that was cut, lost ones too
    Money extras;  ///< their cost
    [[nodiscard]] static Earnings nothing(Currency currency) {
        return {Money::zero(currency), Money::zero(currency), Money::zero(currency)};
    }
    [[nodiscard]] Money margin() const { return charged - string - extras; }
    Earnings& operator+=(const Earnings& other) {
        charged += other.charged;
        string += other.string;
        extras += other.extras;
        return *this;
    }
    bool operator==(const Earnings&) const = default;
};

} // namespace rw
