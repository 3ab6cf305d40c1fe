// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/book_uncertainty.h"

#include <cmath>

namespace rw::stock {

namespace {
constexpr double kTapeMm = 10;
constexpr double kTapeCutMm = 20;
constexpr double kHeadLengthsShare = 0.01;
constexpr double kArmSpansShare = 0.02;

double squared(double value) { return value * value; }

double cutSdMm(Length piece, CutMeasure by) {
    const auto mm = static_cast<double>(piece.millimetres());
    switch (by) {
    case CutMeasure::Tape:
        return kTapeCutMm;
    case CutMeasure::HeadLengths:
        return kHeadLengthsShare * mm;
    case CutMeasure::ArmSpans:
        return kArmSpansShare * mm;
    }
    return 0;
}
} // namespace

BookUncertainty BookUncertainty::ofNew(Length nominal, double share) {
    return BookUncertainty(squared(share * static_cast<double>(nominal.millimetres())));
}

BookUncertainty BookUncertainty::measured() { return BookUncertainty(squared(kTapeMm)); }

BookUncertainty BookUncertainty::weighed(double sdMm) { return BookUncertainty(squared(sdMm)); }

BookUncertainty BookUncertainty::afterCut(Length piece, CutMeasure by) const {
    return BookUncertainty(m_varianceMm2 + squared(cutSdMm(piece, by)));
}

double BookUncertainty::sdMm() const { return std::sqrt(m_varianceMm2); }

} // namespace rw::stock
