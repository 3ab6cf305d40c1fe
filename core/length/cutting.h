// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/draft.h"

#include <vector>

namespace rw::length {

/// Gives every piece its cut and its chance of coming short, and the plan the reason for both. A first cut, of a job
/// of which the shop has seen none, is held at the sport's usual packet where that is due. A set is used up.
void cutPieces(std::vector<Draft>& drafts, const CutRequest& request, bool firstCut, CutPlan& plan);

} // namespace rw::length
