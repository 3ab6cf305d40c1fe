// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/money/money.h"

#include <optional>
#include <string>
#include <string_view>

namespace rw {

enum class ChargeKind { Labour, OwnStringLabour, FullBed, HalfBed, Packet, Extra, Rush, Discount, Tax };

[[nodiscard]] std::string_view chargeKindText(ChargeKind kind); ///< "labour", "own-string-labour", "full-bed", ...
[[nodiscard]] std::optional<ChargeKind> chargeKindFromText(std::string_view text);

/// One line of what a job costs its customer, copied from the price list when it was logged. Never altered.
/// Tax that prices include is not a charge; tax that is added on top is one, of kind Tax.
struct Charge {
    ChargeKind kind;
    std::optional<StringArticleId> article; ///< for string
    std::string label;                      ///< for extras and reasons of a discount: "grommet tube"
    int count = 1;
    Money amount;                             ///< for all of `count`; a discount is negative
    int taxHundredthsPercent = 0;             ///< 2000 is 20 %
    std::optional<Money> cost = std::nullopt; ///< of an extra: what all of `count` cost the shop; nothing: not known
};

} // namespace rw
