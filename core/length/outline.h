// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"

#include <vector>

namespace rw::length {

struct FoundOutline {
    Outline outline;
    std::vector<Why> why; ///< what it stands on, a marked size that disagrees, rules it exceeds
};

/// The outline from whatever is known of the hoop, best first: tape measurements (the outermost main and the
/// last cross fix the exponents), the tape with the marked size (fixes n = n_h = n_t where that lands in 1.7
/// to 2.4; otherwise the size stays "marked" and n its default), the marked size alone, the sport alone. A
/// length or width that is missing comes from the marked size, or else from the sport's usual shape.
/// Exponents that the hoop gives outright are never changed.
/// Refusal: ImpossibleValue {key, text, expected} where measurements contradict one another.
[[nodiscard]] Result<FoundOutline> findOutline(const CutRequest& request);

} // namespace rw::length
