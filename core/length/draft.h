// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "core/length/need.h"
#include "core/length/piece_path.h"

#include <span>
#include <vector>

namespace rw::length {

/// One piece on its way to a plan: what lies where, and what each part of it that can fail by itself will need.
struct Draft {
    PiecePlan plan;
    std::vector<Need> parts; ///< the piece; of a one-piece job its short side and its long side
    Need whole;
};

/// Everything of the piece but its cut. The long side of a one-piece job needs what the whole needs beyond the short
/// side, and is as sure as the whole.
[[nodiscard]] Draft draftOf(const PiecePath& path, const CutRequest& request, const Experience& experience);

/// The parts of all pieces, in their order.
[[nodiscard]] std::vector<Need> allParts(std::span<const Draft> drafts);

/// Gives every piece its cut from the shares of its parts, and a short side its measure.
void shareOut(std::vector<Draft>& drafts, std::span<const Length> shares, double headLengthMm);
/// Measures a one-piece job's short side off.
void setShortSide(Draft& draft, Length measure, double headLengthMm);

/// What the piece, or the short side of one piece, needs by geometry alone.
[[nodiscard]] PredictedPart predictedPart(const PiecePath& path, bool shortSide, const Ends& ends);

} // namespace rw::length
