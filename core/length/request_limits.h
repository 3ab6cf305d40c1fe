// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/cut_request.h"

namespace rw::length {

// Wide enough for any racket of the three sports, a child's too; what is outside is a slip of the tape or of
// the unit. Millimetres.
constexpr double kShortestHead = 150;
constexpr double kLongestHead = 450;
constexpr double kNarrowestHead = 120;
constexpr double kWidestHead = 350;

/// Every number of the request in the range that its field names. Contradictions between numbers are found
/// later, where they meet. Refusal: ImpossibleValue {key, text, expected}, key as in a cut request file.
[[nodiscard]] Result<void> checkLimits(const CutRequest& request);

} // namespace rw::length
