// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_request.h"

namespace rw::length {

/// How much longer a string is under its pull than on the reel, as a share: 0.095 for 9.5 %.
struct Stretch {
    double share = 0;             ///< e
    double standardDeviation = 0; ///< of e: the material's range is two standard deviations either side
};

/// e = e55 sqrt(T / 55 lbf) (1.30 mm / d). The law follows from stress and from measured points at 55 and 65
/// lbf; it is derived, not published. An article's own measured e55 has no spread of its material left.
[[nodiscard]] Stretch stretchOf(const StringChoice& string);

} // namespace rw::length
