// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pricing/quote.h"

#include <string>
#include <string_view>

namespace rw {

/// A discount as people say it: "10 %", or an amount of `currency` such as "3" or "2.50". Without a reason. Unreadable and
/// TooFine {what: discount}; OutOfRange outside 0 to 100 %, and of a negative amount.
[[nodiscard]] Result<Discount> discountFromText(std::string_view text, Currency currency);
/// "10 %", "2.50".
[[nodiscard]] std::string discountText(const Discount& discount);

} // namespace rw
