// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/evidence.h"

#include <span>
#include <vector>

namespace rw::length {

/// What a piece will need, before it is strung, in millimetres: predicted * exp(theta + one job's scatter). Theta is
/// known as points with weights; where nothing of the group's own is known yet the whole is one normal, and the need
/// lognormal.
class Need {
public:
    /// Never strung here: theta as `before` has it (see groupBelief).
    [[nodiscard]] static Need predicted(double predictedMm, const Belief& before);
    /// With the group's own observations.
    [[nodiscard]] static Need learned(double predictedMm, const Belief& before, std::span<const Observation> seen);
    [[nodiscard]] static Need withSpread(double medianMm, double sdLog);

    /// The same distribution of need / predicted over another prediction.
    [[nodiscard]] Need over(double predictedMm) const;
    /// As it looks beside a length that is itself known to this share only (independent, normal).
    [[nodiscard]] Need blurred(double share) const;

    [[nodiscard]] double predictedMm() const { return m_predicted; }
    [[nodiscard]] double medianMm() const { return m_median; }
    /// What theta is on average: how far the need lies from its prediction, as a logarithm.
    [[nodiscard]] double thetaMean() const { return m_meanLog; }
    /// Standard deviation of ln(need), and of the need in millimetres.
    [[nodiscard]] double sdLog() const { return m_sdLog; }
    [[nodiscard]] double sdMm() const;
    /// P(need > lengthMm).
    [[nodiscard]] double chanceAbove(double lengthMm) const;
    /// The length that is exceeded with this chance (0 < chance < 1).
    [[nodiscard]] double exceededWith(double chance) const;
    /// The length that is exceeded as a normal value is `z` standard deviations above its mean.
    [[nodiscard]] double atSd(double z) const;

private:
    Need(double predictedMm, std::vector<ThetaPoint> points, double jobSd);
    [[nodiscard]] double ratioAtSd(double z) const;

    double m_predicted;
    std::vector<ThetaPoint> m_points;
    double m_jobSd; ///< around each point
    double m_meanLog = 0;
    double m_sdLog = 0;
    double m_median = 0;
};

} // namespace rw::length
