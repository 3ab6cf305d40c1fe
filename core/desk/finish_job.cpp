// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/change_asked.h"
#include "core/desk/lookups.h"

namespace rw::desk {

namespace {
/// Nobody strings to what the customer has changed their mind about without knowing.
Result<void> checkNodded(Transaction& ledger, const Job& job) {
    const std::vector<AskedChange> changes = changesToNodTo(ledger, *job.id);
    if (changes.empty()) {
        return {};
    }
    return refuse(Code::ChangedMeanwhile, {{"what", "tension"},
                                           {"mine", pairText(changes.front().before)},
                                           {"theirs", pairText(job.asked)},
                                           {"nod", job.number}});
}

/// Who cuts off more than half of a piece has read the tape wrong, or told another piece's.
Result<void> checkTails(const Job& job, const std::vector<TailsOf>& told) {
    for (const TailsOf& of : told) {
        const auto piece = pieceOf(job, of.role);
        if (!piece) {
            return tl::unexpected(piece.error());
        }
        const Length cut = piece->current().cut->length;
        const Length part = of.shortSide ? job.shortSideLength.value_or(cut) : cut;
        if (of.tails.low * 2 > part) {
            return refuse(Code::OutOfRange, {{"what", "tails"},
                                             {"text", of.tails.low.text()},
                                             {"lowest", "0 m"},
                                             {"highest", Length::fromMillimetres(part.millimetres() / 2).text()}});
        }
    }
    return {};
}
} // namespace

Result<Job> finishJob(Transaction& ledger, const FinishJob& command) {
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    if (job->strung && job->state != JobState::OnTheMachine && job->strung->tensions == command.strung &&
        job->strung->machine == command.machine) {
        return job;
    }
    if (const auto may = mayHappen(*job, JobEventKind::Strung); !may) {
        return tl::unexpected(may.error());
    }
    if (const auto machine = machineOf(ledger, command.machine); !machine) {
        return tl::unexpected(machine.error());
    }
    for (const JobPiece& piece : job->pieces) {
        if (!piece.isCut()) {
            return refuse(Code::NotCut, {{"job", job->number}, {"piece", std::string(pieceRoleText(piece.role))}});
        }
    }
    if (const auto nodded = checkNodded(ledger, *job); !nodded) {
        return tl::unexpected(nodded.error());
    }
    const auto note = maybeWordsOf("note", command.note, kLongestNote);
    if (!note) {
        return tl::unexpected(note.error());
    }
    if (const auto tails = checkTails(*job, command.tails); !tails) {
        return tl::unexpected(tails.error());
    }
    const JobEventId event = ledger.jobs().record(
        {std::nullopt, command.job, JobEventKind::Strung, command.by, command.machine, std::nullopt});
    ledger.jobs().setBenchStep(command.job, BenchStep::Finish);
    ledger.jobs().setStrung(event, command.job, command.strung, command.machine);
    for (const TailsOf& of : command.tails) {
        ledger.ownCuts().keepTails(*pieceOf(*job, of.role)->current().id, of, command.by);
    }
    if (!note->empty()) {
        ledger.jobs().addNote(command.job, *note);
    }
    return jobOf(ledger, command.job);
}

} // namespace rw::desk
