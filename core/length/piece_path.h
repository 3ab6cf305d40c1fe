// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/route_choice.h"
#include "core/length/stretch.h"
#include "core/length/string_bed.h"

#include <vector>

namespace rw::length {

/// What a path is made of, in millimetres.
struct PathSums {
    double chordsMm = 0;
    double wallsMm = 0;
    double linksMm = 0;
    double crimpMm = 0;
    double slackMm = 0;  ///< the same string as it lies on the reel: every string, with its link, divided by 1 + e
    double spreadMm = 0; ///< of slackMm, from the material's own spread

    [[nodiscard]] double pathMm() const { return chordsMm + wallsMm + linksMm + crimpMm; }
    PathSums& operator+=(const PathSums& more);
};

/// A link of the path that is longer than a run along the outside of a hoop should be.
struct LongRun {
    StringId from;
    StringId to;
    double lengthMm;
    bool acrossThroat; ///< from one side to the other, below the middle
};

struct ArmPath {
    Arm arm;
    PathSums sums;
};

struct PiecePath {
    PieceRole role;
    std::vector<ArmPath> arms;
    std::vector<LongRun> longRuns;

    [[nodiscard]] PathSums sums() const;
};

/// An outside run over this is worth a warning: string that lies bare along the hoop.
constexpr double kLongRunMm = 60;

/// The path of one piece over the bed: chords, a wall at each end of each string, straight links between exit
/// points carried one wall further along the string, crimp where the request asks for it. Two arms that begin
/// in one centre loop have half of it each. Each string, with the link before it, stretches as its own half
/// does.
[[nodiscard]] PiecePath pathOf(const RoutedPiece& piece, const StringBed& bed, const CutRequest& request);

} // namespace rw::length
