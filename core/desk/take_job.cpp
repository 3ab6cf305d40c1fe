// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/consent.h"
#include "core/desk/lookups.h"
#include "core/desk/machine_of_job.h"
#include "core/desk/reel_on_machine.h"
#include "core/desk/replan.h"

namespace rw::desk {

Result<std::vector<JobLine>> benchQueue(Transaction& ledger) {
    std::vector<JobLine> lines = ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine});
    noteNotAgreed(ledger, lines);
    return lines;
}

std::optional<MachineId> machineOfJob(Transaction& ledger, const Job& job) {
    if (job.strung) {
        return job.strung->machine;
    }
    if (job.state != JobState::OnTheMachine) {
        return std::nullopt;
    }
    std::optional<MachineId> machine;
    for (const JobEvent& event : ledger.jobs().events(*job.id)) {
        if (event.kind == JobEventKind::Taken || event.kind == JobEventKind::Reopened) {
            machine = event.machine;
        }
    }
    return machine;
}

Result<Job> takeJob(Transaction& ledger, const TakeJob& command) {
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    if (const auto machine = machineOf(ledger, command.machine); !machine) {
        return tl::unexpected(machine.error());
    }
    if (job->state == JobState::OnTheMachine && machineOfJob(ledger, *job) == command.machine) {
        return job;
    }
    if (const auto may = mayHappen(*job, JobEventKind::Taken); !may) {
        return tl::unexpected(may.error());
    }
    const bool moved = preferReelOnMachine(ledger, *job, command.machine, command.by.at);
    ledger.jobs().record({std::nullopt, command.job, JobEventKind::Taken, command.by, command.machine, std::nullopt});
    if (moved) {
        replanStringsOf(ledger, *job, command.by.at);
    }
    return jobOf(ledger, command.job);
}

Result<Job> putDownJob(Transaction& ledger, const PutDown& command) {
    auto job = jobOf(ledger, command.job);
    if (!job || job->state == JobState::Logged) {
        return job;
    }
    if (const auto may = mayHappen(*job, JobEventKind::PutDown); !may) {
        return tl::unexpected(may.error());
    }
    ledger.jobs().record({std::nullopt, command.job, JobEventKind::PutDown, command.by, std::nullopt, std::nullopt});
    return jobOf(ledger, command.job);
}

} // namespace rw::desk
