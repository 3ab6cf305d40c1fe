// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/evidence.h"
#include "core/length/piece_role.h"

#include <optional>
#include <string_view>

namespace rw::length {

/// What a cut was measured with. A "plus or minus" of the trade is taken as two standard deviations, as a material's
/// range of stretch is.
enum class MeasuredWith {
    Unsaid,      ///< nothing is known of it; one job's scatter is all there is
    Tape,        ///< within 1 cm
    HeadLengths, ///< within 1 %
    ArmSpans     ///< within 2 %
};

/// One finished piece as it was noted, in millimetres. It is kept so; what it says of r is worked out anew with
/// today's model.
struct FinishedPiece {
    enum class Outcome {
        Tails, ///< the trimmed tails were measured, or told in words: their sum lies from tailsLowMm to tailsHighMm
        Enough,
        Short
    };
    PieceRole role = PieceRole::Whole;
    bool shortSide = false; ///< of a one-piece job only what was measured off for its short side
    double cutMm = 0;       ///< positive
    Outcome outcome = Outcome::Enough;
    double tailsLowMm = 0;
    double tailsHighMm = 0;
    std::optional<double> shortByMm = {}; ///< for Short, where it was measured
    bool reelEnd = false;                 ///< cut so "because that was all there was": it is no habit
    MeasuredWith measuredWith = MeasuredWith::Unsaid;

    [[nodiscard]] std::string_view partText() const { return shortSide ? kShortSideText : pieceRoleText(role); }
};

/// What a finished piece says of r = ln(need / predictedMm).
/// - Tails: need = cut - tails + `backMm`, what the machine's reach gave back beyond the knots; exact when both ends of
///   the interval are equal.
/// - Enough: need <= cut. Short: need > cut, or exact where the shortfall was measured.
/// - From a reel's end nothing but "enough" or "short" is taken, whatever was left of it.
/// Refusal: ImpossibleValue {key, text, expected} where that is below half or above twice what is predicted: a slip of
/// the unit or of the piece. The key begins with `key`: "evidence[2]" gives "evidence[2].cutMm".
[[nodiscard]] Result<Observation> observationOf(const FinishedPiece& piece, double predictedMm, double backMm,
                                                std::string_view key);

} // namespace rw::length
