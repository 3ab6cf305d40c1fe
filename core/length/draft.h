// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "core/length/need.h"
#include "core/length/piece_path.h"

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
[[nodiscard]] Draft draftOf(const PiecePath& path, const CutRequest& request);

/// How many ends of a piece (`shortSide`: of the short side alone) are pulled by the machine and then tied off.
[[nodiscard]] int pulledEnds(PieceRole role, bool shortSide, const Ends& ends);

/// What the plan's pieces stand on.
[[nodiscard]] std::vector<Why> whyOfNeeds(const std::vector<Draft>& drafts, const Experience& experience);

} // namespace rw::length
