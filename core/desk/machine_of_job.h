// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>

namespace rw::desk {

/// Where the job was strung, or the machine it is lying on now; nothing for a job that is on none.
[[nodiscard]] std::optional<MachineId> machineOfJob(Transaction& ledger, const Job& job);

} // namespace rw::desk
