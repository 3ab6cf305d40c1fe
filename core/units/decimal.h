// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace rw {

/// A decimal number as somebody typed it: a sign that was written or not, and a whole number of
/// 10^-places. Comma and point both separate decimals; there are no thousands marks and no exponent.
struct Decimal {
    enum class Sign { None, Plus, Minus };
    Sign sign = Sign::None;
    std::int64_t scaled = 0; ///< without its sign
    int places = 0;          ///< how many decimals were written, trailing noughts dropped
    std::string_view rest;   ///< what follows the number, trimmed: a unit, or nothing
};

/// Reads a number from the start of `text`. Unreadable when there is none or it has over 12 digits.
[[nodiscard]] Result<Decimal> parseDecimal(std::string_view what, std::string_view text);

/// The decimal in units of 10^-places, sign applied. TooFine when more decimals were written.
[[nodiscard]] Result<std::int64_t> scaledTo(int places, const Decimal& decimal, std::string_view what,
                                            std::string_view text);

/// `scaled` units of 10^-places as text with a point: (5450, 2) is "54.5", (5400, 2) is "54".
[[nodiscard]] std::string decimalText(std::int64_t scaled, int places);
/// The same with every place written: (5400, 2) is "54.00".
[[nodiscard]] std::string fullDecimalText(std::int64_t scaled, int places);

/// White space removed at both ends. Understands ASCII space, tab and the no-break space.
[[nodiscard]] std::string_view trimmed(std::string_view text);

} // namespace rw
