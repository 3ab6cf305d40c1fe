// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/need.h"

#include <boost/math/distributions/normal.hpp>

#include <cassert>
#include <cmath>

namespace rw::length {

Need Need::predicted(double medianMm, double materialSpread) {
    const double theta = std::hypot(kShopSpread, kFrameSpread, materialSpread);
    return {medianMm, std::hypot(theta, kJobSpread)};
}

Need Need::withSpread(double medianMm, double sdLog) { return {medianMm, sdLog}; }

double Need::chanceAbove(double lengthMm) const {
    if (lengthMm <= 0) {
        return 1;
    }
    const double z = std::log(lengthMm / m_median) / m_sdLog;
    return boost::math::cdf(boost::math::complement(boost::math::normal(), z));
}

double Need::exceededWith(double chance) const {
    assert(0 < chance && chance < 1);
    return atSd(boost::math::quantile(boost::math::complement(boost::math::normal(), chance)));
}

double Need::atSd(double z) const { return m_median * std::exp(z * m_sdLog); }

} // namespace rw::length
