// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/sport.h"
#include "core/units/tension.h"

namespace rw {

/// Between which pulls rackets of a sport are strung by common practice, generously: tennis 30 to 75 lb, squash 15 to
/// 38 lb, badminton 14 to 40 lb. What lies outside was perhaps said in the other unit; it is asked about, never refused.
[[nodiscard]] bool isUsualPull(const Tension& pull, Sport sport);

} // namespace rw
