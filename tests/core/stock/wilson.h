// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

namespace rw::stock::test {

struct Interval {
    double low;
    double high;
};

/// Where a share lies with 95 %, when `hits` of `tries` were seen: E. B. Wilson, "Probable inference, the law of
/// succession, and statistical inference", 1927.
[[nodiscard]] inline Interval wilson95(double hits, double tries) {
    constexpr double kZ = 1.959963984540054;
    const double share = hits / tries;
    const double middle = share + kZ * kZ / (2 * tries);
    const double half = kZ * std::sqrt(share * (1 - share) / tries + kZ * kZ / (4 * tries * tries));
    const double whole = 1 + kZ * kZ / tries;
    return {(middle - half) / whole, (middle + half) / whole};
}

} // namespace rw::stock::test
