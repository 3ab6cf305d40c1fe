// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace rw::length {

/// A number as text with a point, at most three decimals (six for small ones), no trailing noughts: "329", "0.25",
/// "1e+30".
[[nodiscard]] std::string plainNumber(double value);

/// "150 to 450".
[[nodiscard]] std::string between(double lowest, double highest);

/// Code::ImpossibleValue with {key, text, expected}. A key is spelled as in a cut request file:
/// "hoop.lengthMm".
[[nodiscard]] tl::unexpected<Refusal> impossible(std::string_view key, std::string text, std::string expected);
[[nodiscard]] tl::unexpected<Refusal> impossible(std::string_view key, double value, std::string expected);

} // namespace rw::length
