// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"

#include "core/desk/lookups.h"

namespace rw::desk {

namespace {
/// Records `kind` unless the job is in the state that it leads to.
Result<Job> step(Transaction& ledger, JobId id, JobEventKind kind, JobState leadsTo, const By& by) {
    auto job = jobOf(ledger, id);
    if (!job || job->state == leadsTo) {
        return job;
    }
    if (const auto may = mayHappen(*job, kind); !may) {
        return tl::unexpected(may.error());
    }
    ledger.jobs().record({std::nullopt, id, kind, by, std::nullopt, std::nullopt});
    return jobOf(ledger, id);
}
} // namespace

Result<std::vector<JobLine>> toBeStrung(Transaction& ledger) {
    return ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting});
}

Result<Job> letJobWait(Transaction& ledger, const LetWait& command) {
    const auto whatFor = wordsOf("reason", command.whatFor, kLongestNote);
    if (!whatFor) {
        return tl::unexpected(whatFor.error());
    }
    const auto job = step(ledger, command.job, JobEventKind::Waiting, JobState::Waiting, command.by);
    if (!job || job->note.ends_with(*whatFor)) {
        return job;
    }
    ledger.jobs().addNote(command.job, *whatFor);
    return jobOf(ledger, command.job);
}

Result<Job> resumeJob(Transaction& ledger, const JobStep& command) {
    return step(ledger, command.job, JobEventKind::Resumed, JobState::Logged, command.by);
}

Result<Job> withdrawJob(Transaction& ledger, const JobStep& command) {
    return step(ledger, command.job, JobEventKind::Withdrawn, JobState::Withdrawn, command.by);
}

} // namespace rw::desk
