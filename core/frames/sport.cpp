// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/sport.h"

namespace rw {

std::string_view sportText(Sport sport) {
    switch (sport) {
    case Sport::Tennis:
        return "tennis";
    case Sport::Squash:
        return "squash";
    case Sport::Badminton:
        return "badminton";
    }
    return {};
}

std::optional<Sport> sportFromText(std::string_view text) {
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        if (sportText(sport) == text) {
            return sport;
        }
    }
    return std::nullopt;
}

std::string_view hoopEndText(HoopEnd end) {
    return end == HoopEnd::Head ? "head" : "throat";
}

std::string_view sideText(Side side) {
    return side == Side::Left ? "left" : "right";
}

} // namespace rw
