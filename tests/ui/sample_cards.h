// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"

namespace rw::ui::samples {

/// Petra Lindobi's Aldermoor 98 A, one piece of L at 52/50 lb, short side left, at Bench B (a dial in kg).
[[nodiscard]] desk::JobCard petra();
/// Tomas Ferreday's Aldermoor 98, K mains at 50 lb off a reel's end and L crosses at 52 lb, no machine yet.
[[nodiscard]] desk::JobCard tomas();

} // namespace rw::ui::samples
