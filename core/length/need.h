// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace rw::length {

/// Spread of ln(need / predicted need): how far geometry is off for a whole shop, for one frame, and how far
/// two jobs on the same frame lie apart. Guesses of the trade's own scatter until a ledger has enough
/// measured tails: a shop's tape, reach and knots move every cut by about 2.5 %, a frame's real outline by 2
/// %, one job by 1.5 %.
constexpr double kShopSpread = 0.025;
constexpr double kFrameSpread = 0.02;
constexpr double kJobSpread = 0.015;

/// What a piece will need, before it is strung: lognormal around the median, in millimetres.
class Need {
public:
    /// `materialSpread`: the material's own spread, as a share of the need.
    [[nodiscard]] static Need predicted(double medianMm, double materialSpread);
    [[nodiscard]] static Need withSpread(double medianMm, double sdLog);

    [[nodiscard]] double medianMm() const { return m_median; }
    /// Standard deviation of ln(need).
    [[nodiscard]] double sdLog() const { return m_sdLog; }
    /// P(need > lengthMm).
    [[nodiscard]] double chanceAbove(double lengthMm) const;
    /// The length that is exceeded with this chance (0 < chance < 1).
    [[nodiscard]] double exceededWith(double chance) const;
    /// The length `z` standard deviations above the median.
    [[nodiscard]] double atSd(double z) const;

private:
    Need(double median, double sdLog)
        : m_median(median)
        , m_sdLog(sdLog) {}
    double m_median;
    double m_sdLog;
};

} // namespace rw::length
