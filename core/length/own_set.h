// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/draft.h"
#include "core/length/packet.h"

#include <vector>

namespace rw::length {

/// Cuts the pieces from the request's set, a packet or a customer's own string, which is used up: it is halved, or the
/// mains are measured and the crosses get the rest, or it is used whole. The way is taken in which the worse-off part
/// is safest; the plan tells them all, how the set is judged, and what would be safer.
/// Precondition: the request has a set.
void cutFromSet(std::vector<Draft>& drafts, const CutRequest& request, CutPlan& plan);

} // namespace rw::length
