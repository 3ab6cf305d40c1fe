// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"

#include "core/desk/consent.h"
#include "core/desk/lookups.h"
#include "core/desk/replan.h"

namespace rw::desk {

namespace {
struct Stepped {
    JobState from;
    Job job;
};

/// Records `kind` unless the job is in the state that it leads to.
Result<Stepped> step(Transaction& ledger, JobId id, JobEventKind kind, JobState leadsTo, const By& by) {
    const auto before = jobOf(ledger, id);
    if (!before) {
        return tl::unexpected(before.error());
    }
    if (before->state != leadsTo) {
        if (const auto may = mayHappen(*before, kind); !may) {
            return tl::unexpected(may.error());
        }
        ledger.jobs().record({std::nullopt, id, kind, by, std::nullopt, std::nullopt});
    }
    return jobOf(ledger, id).map([&](Job job) { return Stepped{before->state, std::move(job)}; });
}

/// What was promised to the job was free for others meanwhile: it asks for it anew.
void promiseAgain(Transaction& ledger, const Job& job, const By& by) {
    for (const JobPiece& piece : job.pieces) {
        if (piece.source != PieceSource::CustomersSet && !piece.isCut() && !piece.pinned) {
            ledger.jobs().plan(*piece.id, std::nullopt, piece.planned, false);
        }
    }
    replanStringsOf(ledger, job, by.at);
}

bool endsWithLine(const std::string& note, const std::string& line) {
    return note == line || note.ends_with('\n' + line);
}

} // namespace

Result<std::vector<JobLine>> toBeStrung(Transaction& ledger) {
    std::vector<JobLine> lines =
        ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting});
    noteNotAgreed(ledger, lines);
    return lines;
}

Result<Job> letJobWait(Transaction& ledger, const LetWait& command) {
    const auto whatFor = wordsOf("reason", command.whatFor, kLongestNote);
    if (!whatFor) {
        return tl::unexpected(whatFor.error());
    }
    auto done = step(ledger, command.job, JobEventKind::Waiting, JobState::Waiting, command.by);
    if (!done) {
        return tl::unexpected(done.error());
    }
    if (done->from == JobState::Waiting && endsWithLine(done->job.note, *whatFor)) {
        return std::move(done->job);
    }
    ledger.jobs().addNote(command.job, *whatFor);
    return jobOf(ledger, command.job);
}

Result<Job> resumeJob(Transaction& ledger, const JobStep& command) {
    const auto job = jobOf(ledger, command.job);
    const auto owner = job ? presentCustomerOf(ledger, job->customer) : tl::unexpected(job.error());
    if (!owner) {
        return tl::unexpected(owner.error()); // whose racket would it be
    }
    auto done = step(ledger, command.job, JobEventKind::Resumed, JobState::Logged, command.by);
    if (!done) {
        return tl::unexpected(done.error());
    }
    if (done->from == JobState::Withdrawn) {
        promiseAgain(ledger, done->job, command.by);
    }
    return jobOf(ledger, command.job);
}

Result<Job> withdrawJob(Transaction& ledger, const JobStep& command) {
    auto done = step(ledger, command.job, JobEventKind::Withdrawn, JobState::Withdrawn, command.by);
    if (!done) {
        return tl::unexpected(done.error());
    }
    if (done->from != JobState::Withdrawn) {
        replanStringsOf(ledger, done->job, command.by.at);
    }
    return std::move(done->job);
}

} // namespace rw::desk
