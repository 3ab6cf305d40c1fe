// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <vector>

// When each string runs short, by the ledger's own days.
namespace rw::desk {

/// The shop's shelf with what will become of each string, those that run short first, the one that likely runs out
/// soonest before the others; the rest by code.
///
/// A job counts on the day it was logged, a half bed as half a job, a string that was asked for in vain as a job; a
/// string's days begin with its first lot or its first job and end yesterday. Days further back than four years count
/// for nothing by then. A string runs short when its whole jobs free are at or below s, or below the fewest that the
/// shop always wants (setting, default 2); one on request or retired never does. While no string was ever wanted that
/// setting speaks alone. As no order is kept, a supplier's days are those that the stock model begins with.
[[nodiscard]] Result<std::vector<ShelfString>> shelfAhead(Transaction& ledger, Instant now);

} // namespace rw::desk
