// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/cut_plan.h"

#include <string>

namespace rw::cli {

struct PlannedInput {
    length::CutRequest request;
    length::CutPlan plan;
};

/// The cut plan that a file, or standard input as "-", asks for. Refusals of readInput, of reading a cut request and of
/// planning it.
[[nodiscard]] Result<PlannedInput> planInput(const std::string& path);

} // namespace rw::cli
