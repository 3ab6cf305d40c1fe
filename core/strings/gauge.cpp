// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strings/gauge.h"

#include <array>
#include <cstdlib>

namespace rw {

namespace {
constexpr std::array<Gauge, 10> kGauges{{{"15", 1410, 1490},
                                         {"15L", 1330, 1410},
                                         {"16", 1260, 1340},
                                         {"16L", 1220, 1300},
                                         {"17", 1160, 1240},
                                         {"18", 1060, 1160},
                                         {"19", 900, 1060},
                                         {"20", 800, 900},
                                         {"21", 700, 800},
                                         {"22", 600, 700}}};

bool holds(const Gauge& gauge, int micrometres) {
    return gauge.lowestMicrometres <= micrometres && micrometres <= gauge.highestMicrometres;
}
} // namespace

std::span<const Gauge> gauges() {
    return kGauges;
}

std::vector<std::string_view> gaugeNames(int micrometres) {
    std::vector<std::string_view> names;
    for (const Gauge& gauge : kGauges) {
        if (holds(gauge, micrometres)) {
            names.push_back(gauge.name);
        }
    }
    return names;
}

std::string_view nearestGaugeName(int micrometres) {
    std::string_view best;
    int nearest = 0;
    for (const Gauge& gauge : kGauges) {
        const int twiceAway = std::abs(gauge.lowestMicrometres + gauge.highestMicrometres - 2 * micrometres);
        if (holds(gauge, micrometres) && (best.empty() || twiceAway <= nearest)) {
            best = gauge.name;
            nearest = twiceAway;
        }
    }
    return best;
}

} // namespace rw
