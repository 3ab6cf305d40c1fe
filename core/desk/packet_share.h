// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/proposed_cut.h"
#include "core/stock/lot.h"

#include <vector>

// A whole bed from one packet. The packet is used up by it: the mains are measured off and the crosses get the rest, or
// the whole of it is one piece. Planned so, the cuts add up to the packet, and nobody else's job is planned on it.
namespace rw::desk {

/// Whether a packet of that length does the bed, if only just: not when it is more likely than one in four that it
/// comes short.
[[nodiscard]] bool doesTheBed(const length::CutPlan& plan, Length packet);

/// The cuts as the packet gives them. Precondition: it does the bed.
[[nodiscard]] std::vector<ProposedCut> shareOut(const Lot& packet, const length::CutPlan& plan,
                                                const std::vector<ProposedCut>& cuts, Length tapeStep);

} // namespace rw::desk
