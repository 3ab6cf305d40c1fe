// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_asked.h"

#include "core/desk/lookups.h"

#include <algorithm>

namespace rw::desk {

std::string pairText(const TensionPair& tensions) { return tensions.mains.text() + " / " + tensions.crosses.text(); }

Result<Job> changeAsked(Transaction& ledger, const ChangeAsked& command) {
    auto job = jobOf(ledger, command.job);
    if (!job || job->asked == command.wanted) {
        return job;
    }
    if (job->asked != command.seen) {
        return refuse(Code::ChangedMeanwhile,
                      {{"what", "tension"}, {"mine", pairText(command.wanted)}, {"theirs", pairText(job->asked)}});
    }
    if (const auto may = mayStillChange(*job); !may) {
        return tl::unexpected(may.error());
    }
    const bool begun = job->state == JobState::OnTheMachine || std::ranges::any_of(job->pieces, &JobPiece::isCut);
    const bool atTheBench = begun && command.by.station != "bench";
    ledger.jobs().setAsked(command.job, {.before = job->asked,
                                         .after = command.wanted,
                                         .by = command.by,
                                         .seen = atTheBench ? std::nullopt : std::optional(command.by.at)});
    return jobOf(ledger, command.job);
}

std::vector<AskedChange> changesToNodTo(Transaction& ledger, JobId job) {
    std::vector<AskedChange> changes = ledger.jobs().askedChanges(job);
    std::erase_if(changes, [](const AskedChange& change) { return change.seen.has_value(); });
    return changes;
}

Result<Job> nodToChanges(Transaction& ledger, const Nod& command) {
    auto job = jobOf(ledger, command.job);
    if (job) {
        ledger.jobs().seeAskedChanges(command.job, command.by);
    }
    return job;
}

} // namespace rw::desk
