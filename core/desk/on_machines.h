// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <vector>

namespace rw::desk {

/// A job that lies on a machine now.
struct OnMachine {
    MachineId machine;
    JobId job;
    std::int64_t number; ///< of the job
};
/// All of them, by promise.
[[nodiscard]] Result<std::vector<OnMachine>> jobsOnMachines(Transaction& ledger);

} // namespace rw::desk
