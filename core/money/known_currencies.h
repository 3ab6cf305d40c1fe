// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

namespace rw {

/// Whether ISO 4217 gives `code` to the money of some country; what was withdrawn since 2025 counts as well.
[[nodiscard]] bool isKnownCurrency(std::string_view code);
[[nodiscard]] std::vector<std::string_view> knownCurrencies(); ///< their codes, by letter

} // namespace rw
