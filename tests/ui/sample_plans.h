// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"

#include <string>
#include <vector>

namespace rw::ui::samples {

/// A head drawn with compass and ruler, so that what words and pictures do is tested on plans that are known string
/// by string and do not move with the length model: superellipse, equal gaps, centred.
struct Head {
    double lengthMm = 329;
    double widthMm = 245;
    double widestFromThroat = 0.5;
    double throatExponent = 2;
    double wallMm = 11;
    int mains = 16;
    int crosses = 19;
    double mainsSpanMm = 181;
    double crossesSpanMm = 240;
    double crossesCentreMm = 0;
    HoopEnd mainsStart = HoopEnd::Head;
};

/// An arm written as "1L-8L X1-X2": runs of strings in the order laid; C is a centre main.
struct ArmText {
    Side side;
    std::string strings;
};

[[nodiscard]] length::CutPlan plan(const Head& head, const std::string& route,
                                   const std::vector<std::pair<PieceRole, std::vector<ArmText>>>& pieces);

[[nodiscard]] length::CutPlan twoPieces(const Head& head = {});
/// plain-1 on 16 x 19 from the head.
[[nodiscard]] length::CutPlan onePiece(Side shortSide, const Head& head = {});
/// wrap-first-2 on 16 x 19 from the throat.
[[nodiscard]] length::CutPlan wrapFirst(Side shortSide);
/// plain-2 in an open throat, 14 x 18.
[[nodiscard]] length::CutPlan squash(Side shortSide);

} // namespace rw::ui::samples
