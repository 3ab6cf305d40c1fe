// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/stretch.h"

#include <cmath>

namespace rw::length {

Stretch stretchOf(const StringChoice& string) {
    constexpr double kReferenceDiameter = 1.30;              // mm, of the measured strings
    constexpr double kReferencePull = 55 * kNewtonsPerPound; // N, of their e55
    const StretchRange range = stretchAt55(string.material);
    const double e55 = string.stretchPercent.value_or(range.middle()) / 100;
    const double pull = std::sqrt(string.tension.newtons() / kReferencePull);
    return {.share = e55 * pull * kReferenceDiameter / string.diameterMm,
            .standardDeviation = string.stretchPercent ? 0 : range.standardDeviation() / 100};
}

} // namespace rw::length
