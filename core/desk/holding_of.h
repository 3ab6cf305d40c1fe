// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/shelf.h"

#include <optional>
#include <vector>

namespace rw::desk {

/// What one owner (nothing: the shop) has of a string in open lots, and what is promised of it.
[[nodiscard]] Holding holdingOf(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned,
                                StringArticleId article, const std::optional<CustomerId>& owner);

} // namespace rw::desk
