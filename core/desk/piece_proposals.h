// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake_plan.h"
#include "core/desk/proposed_cut.h"

#include <vector>

namespace rw::desk {

/// Which lot each piece comes from and what that leaves, for cuts in the order of the plan's pieces: the reel that loses
/// least by it (chooseReel), one for both pieces of one string where a reel holds both. Refusals are about a pinned lot:
/// NotFound, WrongLot, LotClosed.
[[nodiscard]] Result<std::vector<PieceProposal>> proposePieces(Transaction& ledger, const Intake& intake,
                                                               const length::CutPlan& plan,
                                                               const std::vector<ProposedCut>& cuts, Instant now);

} // namespace rw::desk
