// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <functional>
#include <optional>
#include <string_view>

namespace rw::length {

/// A shape's exponent must lie here; below, the head has corners at its tips, above, it is a box.
constexpr double kLowestExponent = 1.2;
constexpr double kHighestExponent = 4.0;

/// The n = n_h = n_t of a head of this length and width with the area marked on it; nothing when it does not
/// land in 1.7 to 2.4: then the mark and the tape disagree.
[[nodiscard]] std::optional<double> exponentOfArea(double areaCm2, double lengthMm, double widthMm);

/// The exponent at which `measure` (growing with its argument) is `measuredMm`.
/// Refusal: ImpossibleValue {key, text, expected} when no exponent in range gives it.
[[nodiscard]] Result<double> exponentWhere(std::string_view key, double measuredMm,
                                           const std::function<double(double)>& measure);

} // namespace rw::length
