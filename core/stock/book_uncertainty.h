// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"

namespace rw::stock {

/// How a cut was measured off.
enum class CutMeasure { Tape, HeadLengths, ArmSpans };

/// How sure the booked length of a lot is, from its whole life: a new reel by its nominal length, each cut by how it
/// was measured off, until a tape measures what is left. Variances add.
class BookUncertainty {
public:
    static constexpr double kNewReelShare = 0.005;

    [[nodiscard]] static BookUncertainty ofNew(Length nominal, double share = kNewReelShare);
    [[nodiscard]] static BookUncertainty measured(); ///< with a tape, just now: 1 cm

    /// By a scale, just now: as sure as that weighing was, one standard deviation in millimetres.
    [[nodiscard]] static BookUncertainty weighed(double sdMm);

    /// One more cut: 2 cm by tape, 1 % of it in head lengths, 2 % of it in arm spans.
    [[nodiscard]] BookUncertainty afterCut(Length piece, CutMeasure by) const;

    /// One standard deviation in millimetres.
    [[nodiscard]] double sdMm() const;

private:
    explicit BookUncertainty(double varianceMm2)
        : m_varianceMm2(varianceMm2) {}
    double m_varianceMm2;
};

} // namespace rw::stock
