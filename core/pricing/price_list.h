// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/frames/sport.h"
#include "core/jobs/charge.h"
#include "core/length/piece_role.h"
#include "core/money/money.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rw {

/// How tax stands to the prices people see.
enum class TaxRule { Included, Added };

struct PriceLine {
    ChargeKind kind;
    std::optional<Sport> sport;             ///< nothing: every sport
    std::optional<Method> method;           ///< nothing: either; the more particular line wins
    std::optional<StringArticleId> article; ///< for full and half beds and packets
    std::string label;                      ///< for extras
    Money amount;
    int taxHundredthsPercent = 0;
    std::optional<Money> cost = std::nullopt; ///< of an extra: what one costs the shop, in the list's currency
    bool operator==(const PriceLine&) const = default;
};

struct PriceList {
    std::int64_t id = 0;
    CivilDate validFrom;
    Currency currency;
    TaxRule taxRule = TaxRule::Included;
    std::vector<PriceLine> lines;
    bool operator==(const PriceList&) const = default;

    /// The line for something asked: same kind and label, and no sport, method or string that differs. The
    /// most particular one: its own string before any string, its own sport before any, its own method before
    /// either; the earlier one among equals. Null when there is none.
    [[nodiscard]] const PriceLine* find(ChargeKind kind, Sport sport, Method method,
                                        const std::optional<StringArticleId>& article = std::nullopt,
                                        std::string_view label = {}) const;
};

} // namespace rw
