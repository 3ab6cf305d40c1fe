// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"

#include <functional>
#include <string>
#include <vector>

namespace rw::desk {

/// Whether a stored job is what the command wishes for. What the wish leaves to the shop may have become anything.
/// `note` is the command's as it would be kept; `frame` that of the racket.
/// `standsFor(wanted, planned)`: whether the lot that was wished for stands for the planned one, as a packet does for
/// those like it.
[[nodiscard]] bool isLoggedWish(const Job& job, const LogJob& command, const std::string& note, const FrameModel& frame,
                                const std::function<bool(LotId, LotId)>& standsFor);

/// Whether the yes that was kept when the job was logged is the one that the command brings, or neither has one.
[[nodiscard]] bool isLoggedYes(const std::vector<Consent>& consents, Instant logged, const LogJob& command,
                               const FrameModel& frame);

} // namespace rw::desk
