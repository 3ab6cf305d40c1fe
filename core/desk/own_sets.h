// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake_plan.h"

#include <vector>

namespace rw::desk {

/// Each customer's own set of the wish whose length was said, held against what it is meant for. One set is meant for
/// the whole bed when both halves are of it.
[[nodiscard]] std::vector<OwnSet> judgeOwnSets(const Intake& intake, const IntakeDraft& draft,
                                               const length::CutPlan& plan);

} // namespace rw::desk
