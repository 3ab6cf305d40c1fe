// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/draft.h"
#include "core/length/packet.h"

#include <vector>

namespace rw::length {

/// Whether a set does what is meant to come from it. `measured`: its length is not only the printed one. A set that a
/// starting clamp and a bridge string would bring round is tight, not too short.
[[nodiscard]] PacketVerdict judgeSet(std::vector<Need> parts, Length set, bool measured, const Ends& ends);

/// Cuts the pieces from the request's set, a packet or a customer's own string, which is used up: it is halved, or the
/// mains are measured and the crosses get the rest, or it is used whole. The way is taken in which the worse-off part
/// is safest; the plan tells them all, how the set is judged, and what would be safer.
/// Precondition: the request has a set.
void cutFromSet(std::vector<Draft>& drafts, const CutRequest& request, CutPlan& plan);

} // namespace rw::length
