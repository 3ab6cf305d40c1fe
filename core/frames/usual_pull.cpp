// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/usual_pull.h"

namespace rw {

namespace {
struct Pounds {
    double lowest;
    double highest;
};

Pounds usual(Sport sport) {
    switch (sport) {
    case Sport::Squash:
        return {15, 38};
    case Sport::Badminton:
        return {14, 40};
    case Sport::Tennis:
        break;
    }
    return {30, 75};
}
} // namespace

bool isUsualPull(const Tension& pull, Sport sport) {
    const auto [lowest, highest] = usual(sport);
    const double pounds = pull.in(TensionUnit::Pound);
    return pounds >= lowest && pounds <= highest;
}

} // namespace rw
