// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/rule_limits.h"

namespace rw {

RuleLimits ruleLimits(Sport sport, bool openThroat) {
    switch (sport) {
    case Sport::Tennis:
        return {.lengthMm = 394, .widthMm = 292, .areaCm2 = std::nullopt};
    case Sport::Squash:
        return {.lengthMm = 390, .widthMm = std::nullopt, .areaCm2 = 500};
    case Sport::Badminton:
        return {.lengthMm = openThroat ? 330 : 280, .widthMm = 220, .areaCm2 = std::nullopt};
    }
    return {};
}

} // namespace rw
