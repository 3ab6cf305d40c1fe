// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/earnings.h"

#include "core/pricing/quote.h"

#include <map>

namespace rw {

Money withoutTax(const std::vector<Charge>& charges, Currency currency) {
    Money sum = Money::zero(currency);
    bool added = false;
    std::map<int, Money> sumOfRate;
    for (const Charge& charge : charges) {
        if (charge.kind == ChargeKind::Tax) {
            added = true;
            continue;
        }
        sum += charge.amount;
        sumOfRate.try_emplace(charge.taxHundredthsPercent, Money::zero(currency)).first->second += charge.amount;
    }
    if (added) {
        return sum;
    }
    for (const auto& [rate, amount] : sumOfRate) {
        sum = sum - taxOf(amount, rate, TaxRule::Included);
    }
    return sum;
}

Money extrasCost(const std::vector<Charge>& charges, Currency currency) {
    Money sum = Money::zero(currency);
    for (const Charge& charge : charges) {
        sum += charge.cost.value_or(Money::zero(currency));
    }
    return sum;
}

} // namespace rw
