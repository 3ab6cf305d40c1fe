// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/finished_piece.h"

#include "core/length/impossible.h"

#include <cmath>
#include <limits>

namespace rw::length {

namespace {
constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// Of ln(cut), as one standard deviation.
double spreadOf(MeasuredWith measuredWith, double cutMm) {
    switch (measuredWith) {
    case MeasuredWith::Unsaid:
        return 0;
    case MeasuredWith::Tape:
        return 10 / 2.0 / cutMm;
    case MeasuredWith::HeadLengths:
        return 0.01 / 2;
    case MeasuredWith::ArmSpans:
        return 0.02 / 2;
    }
    return 0;
}

struct NeedRange {
    double low;
    double high;
};

NeedRange needOf(const FinishedPiece& piece, double backMm) {
    const double cut = piece.cutMm;
    switch (piece.outcome) {
    case FinishedPiece::Outcome::Tails:
        return piece.reelEnd ? NeedRange{0, cut}
                             : NeedRange{cut - piece.tailsHighMm + backMm, cut - piece.tailsLowMm + backMm};
    case FinishedPiece::Outcome::Enough:
        return {0, cut};
    case FinishedPiece::Outcome::Short:
        break;
    }
    return piece.shortByMm ? NeedRange{cut + *piece.shortByMm, cut + *piece.shortByMm} : NeedRange{cut, kInfinity};
}

double logRatio(double needMm, double predictedMm) { return needMm <= 0 ? -kInfinity : std::log(needMm / predictedMm); }

} // namespace

Result<Observation> observationOf(const FinishedPiece& piece, double predictedMm, double backMm, std::string_view key) {
    const NeedRange need = needOf(piece, backMm);
    constexpr double kMostOff = 2;
    const bool tails = piece.outcome == FinishedPiece::Outcome::Tails && !piece.reelEnd;
    if (need.high < predictedMm / kMostOff || need.low > predictedMm * kMostOff) {
        return impossible(std::string(key) + (tails ? ".tailsMm" : ".cutMm"), tails ? piece.tailsHighMm : piece.cutMm,
                          "what leaves a need of " +
                              between(std::round(predictedMm / kMostOff), std::round(predictedMm * kMostOff)) +
                              " mm; by the head's measurements the " + std::string(piece.partText()) + " needs " +
                              plainNumber(std::round(predictedMm)) + " mm");
    }
    return Observation{logRatio(need.low, predictedMm), logRatio(need.high, predictedMm),
                       std::hypot(kJobSpread, spreadOf(piece.measuredWith, piece.cutMm))};
}

} // namespace rw::length
