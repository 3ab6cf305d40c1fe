// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/desk/settings.h"

namespace rw::desk {

/// The earliest honest time for one more job now: behind everything that waits or lies on a machine; a rush job goes
/// as far ahead as every promise that would be kept without it is still kept, and never ahead of what lies on a
/// machine.
[[nodiscard]] Instant promiseFor(Transaction& ledger, const ShopSettings& settings, Instant now, bool rush);

/// The work of such a job can be done by `told`, the margin left out: that is there for the minutes between reading a
/// promise out and logging it.
[[nodiscard]] bool canBeDoneBy(Transaction& ledger, const ShopSettings& settings, Instant now, bool rush, Instant told);

} // namespace rw::desk
