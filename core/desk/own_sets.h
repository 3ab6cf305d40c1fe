// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake_plan.h"

#include <vector>

namespace rw::desk {

/// Each customer's own set of the wish whose length was said, held against what it is meant for, or the shop's packet
/// that the whole bed comes from. One set is meant for the whole bed when both halves are of it.
[[nodiscard]] std::vector<OwnSet> judgeOwnSets(const Intake& intake, const IntakeDraft& draft,
                                               const length::CutPlan& plan, const std::optional<Length>& packet);

/// What the pieces are expected to need.
[[nodiscard]] std::vector<length::Need> needsOf(const length::CutPlan& plan);

} // namespace rw::desk
