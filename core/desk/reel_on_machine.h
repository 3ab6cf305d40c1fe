// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

namespace rw::desk {

/// When the job is about to be taken at a machine: plans its uncut pieces off the reel from which the last cut on that
/// machine came, when they are of its string and owner, it holds them beside what is planned there, and it loses at
/// most stock::kWorthChangingReelMm more than where they are planned. Pinned pieces stay; so does the second piece of a
/// bed whose first is cut, and what comes from a packet. Whether it moved any: the queue is to be planned anew then,
/// once the job is taken.
[[nodiscard]] bool preferReelOnMachine(Transaction& ledger, const Job& job, MachineId machine, Instant now);

} // namespace rw::desk
