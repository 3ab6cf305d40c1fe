// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/draft.h"

#include <span>
#include <vector>

namespace rw::length {

/// What the request's finished pieces say, beside what it knew already. Refusals: those of observationOf, and
/// ImpossibleValue for a piece that the job does not have; keys begin with "evidence[0]", the first finished piece.
[[nodiscard]] Result<Experience> learnFrom(std::span<const PiecePath> paths, const CutRequest& request);

/// What each piece's need stands on.
[[nodiscard]] std::vector<Why> whyOfNeeds(std::span<const Draft> drafts, const Experience& experience);

} // namespace rw::length
