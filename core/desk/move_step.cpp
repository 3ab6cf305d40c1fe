// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/lookups.h"

namespace rw::desk {

Result<Job> moveStep(Transaction& ledger, const MoveStep& command) {
    auto job = jobOf(ledger, command.job);
    if (!job || job->benchStep == command.wanted) {
        return job;
    }
    if (job->benchStep != command.seen) {
        return refuse(Code::ChangedMeanwhile, {{"what", "step"},
                                               {"mine", std::string(benchStepText(command.wanted))},
                                               {"theirs", std::string(benchStepText(job->benchStep))}});
    }
    if (const auto may = mayHappen(*job, JobEventKind::Strung); !may) {
        return tl::unexpected(may.error());
    }
    ledger.jobs().setBenchStep(command.job, command.wanted);
    return jobOf(ledger, command.job);
}

} // namespace rw::desk
