// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/cut_fit.h"

namespace rw::desk {

CutFit fitOfCut(Lot lot, Length cut, const std::optional<Length>& measured) {
    if (measured) {
        lot.length = *measured;
        lot.measuredSinceLastCut = true;
    }
    return {fitOf(lot, cut), lot.length - cut};
}

} // namespace rw::desk
