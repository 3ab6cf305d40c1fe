// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

namespace rw::desk {

/// Fills an empty ledger with the invented shop Harbour Lane Strings: people, machines, strings, prices, frames, reels,
/// customers, and the jobs of the weeks before `now`, all through the use cases. ImpossibleValue when it is not empty.
[[nodiscard]] Result<void> stockDemoShop(Transaction& ledger, Instant now);

} // namespace rw::desk
