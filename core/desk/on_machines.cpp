// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/on_machines.h"

#include "core/desk/machine_of_job.h"

namespace rw::desk {

Result<std::vector<OnMachine>> jobsOnMachines(Transaction& ledger) {
    std::vector<OnMachine> lying;
    for (const JobLine& line : ledger.jobs().inStates({JobState::OnTheMachine})) {
        const auto job = ledger.jobs().get(line.id);
        if (const auto machine = job ? machineOfJob(ledger, *job) : std::nullopt) {
            lying.push_back({*machine, line.id, line.number});
        }
    }
    return lying;
}

} // namespace rw::desk
