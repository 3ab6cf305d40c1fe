// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"

#include <cassert>
#include <cmath>

namespace rw::desk {

DialSetting dialSetting(const Tension& asked, TensionUnit unit, int stepHundredths) {
    assert(stepHundredths > 0);
    const double exact = asked.in(unit);
    const double steps = exact * 100 / stepHundredths;
    // A number that was asked in the machine's unit is on a step or is not; a hair of floating point decides nothing.
    const double nearest = std::round(steps);
    const bool onStep = std::abs(steps - nearest) < 1e-9;
    const auto below = static_cast<std::int64_t>(onStep ? nearest : std::floor(steps)) * stepHundredths;
    const auto above = onStep ? below : below + stepHundredths;
    const auto lower = Tension::fromHundredths(below, unit);
    const auto upper = Tension::fromHundredths(above, unit);
    assert(lower || upper); // a step is at most ten of the unit, the range is far wider
    return {asked, exact, lower ? *lower : *upper, upper ? *upper : *lower};
}

} // namespace rw::desk
