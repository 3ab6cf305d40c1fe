// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/frames/pattern.h"

#include <string_view>

namespace rw {

/// Reads how many mains and crosses, mains first: "16x19", "16 × 19", "16/19", "16 19". Everything else of the
/// pattern stays unknown. Unreadable {what, text}; OutOfRange outside 6 to 30 mains or 6 to 34 crosses.
[[nodiscard]] Result<Pattern> patternFromText(std::string_view text);

} // namespace rw
