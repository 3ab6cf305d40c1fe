// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/undo.h"

#include "core/desk/lookups.h"
#include "core/desk/replan.h"

#include <algorithm>

namespace rw::desk {

namespace {
/// When that last happened to the job.
std::optional<Instant> lastTime(Transaction& ledger, JobId job, JobEventKind kind) {
    std::optional<Instant> at;
    for (const JobEvent& event : ledger.jobs().events(job)) {
        at = event.kind == kind ? event.by.at : at;
    }
    return at;
}

/// What is not corrected yet of the payments of that moment.
void takeBackPayments(Transaction& ledger, JobId job, Instant at, const By& by) {
    const std::vector<Payment> payments = ledger.jobs().payments(job);
    for (const Payment& payment : payments) {
        const bool corrected = std::ranges::any_of(
            payments, [&](const Payment& other) { return other.corrects && other.corrects == payment.id; });
        if (payment.by.at == at && !payment.corrects && !corrected) {
            ledger.jobs().pay(
                job,
                {.id = std::nullopt, .amount = -payment.amount, .way = payment.way, .by = by, .corrects = payment.id});
        }
    }
}

/// What booked an attempt's cut off its lot, among the lot's movements.
auto cutIn(const std::vector<Movement>& movements, AttemptId attempt) {
    return std::ranges::find(movements, std::optional(attempt), &Movement::attempt);
}

/// Puts the length of an attempt's cut back on the lot that it was booked off.
Result<void> bookBack(Transaction& ledger, const DoneCut& cut, AttemptId attempt, const By& by) {
    if (!cut.lot) {
        return {}; // a customer's own set comes off no lot
    }
    const auto lot = lotOf(ledger, *cut.lot);
    if (!lot) {
        return tl::unexpected(lot.error());
    }
    const auto movements = ledger.lots().movements(*cut.lot);
    if (!lot->isOpen()) {
        // Closed by this very cut, it is opened again; thrown away or given back since, it is not here any more.
        if (movements.back().attempt != attempt) {
            return refuse(Code::LotClosed, {{"lot", lot->tag}});
        }
        ledger.lots().reopen(*cut.lot);
    }
    ledger.lots().move({.id = std::nullopt,
                        .lot = *cut.lot,
                        .reason = MovementReason::Measured,
                        .change = cut.length,
                        .attempt = std::nullopt,
                        .lostReason = std::nullopt,
                        .corrects = cutIn(movements, attempt)->id,
                        .by = by});
    return {};
}

/// Whether the cut of that attempt was taken back before: its movement stands corrected.
bool wasTakenBack(Transaction& ledger, const JobPiece& piece, int number) {
    const auto attempt = std::ranges::find(piece.attempts, number, &Attempt::number);
    if (attempt == piece.attempts.end() || !attempt->cut || !attempt->cut->lot) {
        return false;
    }
    const auto movements = ledger.lots().movements(*attempt->cut->lot);
    const auto booked = cutIn(movements, *attempt->id);
    return booked != movements.end() &&
           std::ranges::find(movements, booked->id, &Movement::corrects) != movements.end();
}
} // namespace

Result<Job> bringBack(Transaction& ledger, const BringBack& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    const auto handedOver = lastTime(ledger, command.job, JobEventKind::Collected);
    if (job->state == JobState::Strung && handedOver) {
        return job;
    }
    if (const auto may = mayHappen(*job, JobEventKind::BroughtBack); !may) {
        return tl::unexpected(may.error());
    }
    if (const auto owner = presentCustomerOf(ledger, job->customer); !owner) {
        return tl::unexpected(owner.error()); // nobody could be told that it hangs here again
    }
    takeBackPayments(ledger, command.job, *handedOver, command.by);
    ledger.jobs().record(
        {std::nullopt, command.job, JobEventKind::BroughtBack, command.by, std::nullopt, std::nullopt});
    return jobOf(ledger, command.job);
}

Result<Job> reopenJob(Transaction& ledger, const Reopen& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    if (job->state == JobState::OnTheMachine &&
        ledger.jobs().events(command.job).back().kind == JobEventKind::Reopened) {
        return job;
    }
    if (const auto may = mayHappen(*job, JobEventKind::Reopened); !may) {
        return tl::unexpected(may.error());
    }
    // It lies where it was strung.
    ledger.jobs().record(
        {std::nullopt, command.job, JobEventKind::Reopened, command.by, job->strung->machine, std::nullopt});
    return jobOf(ledger, command.job);
}

Result<Job> takeBackCut(Transaction& ledger, const TakeBackCut& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    const auto piece = pieceOf(*job, command.role);
    if (!piece) {
        return tl::unexpected(piece.error());
    }
    const std::vector<Argument> which = {{"job", job->number},
                                         {"piece", std::string(pieceRoleText(command.role))},
                                         {"attempt", std::int64_t{command.attempt}}};
    if (command.attempt != piece->current().number) {
        return wasTakenBack(ledger, *piece, command.attempt) ? job : refuse(Code::StaleAttempt, which);
    }
    if (!piece->isCut()) {
        return refuse(Code::NotCut, which);
    }
    if (const auto may = mayHappen(*job, JobEventKind::Lost); !may) {
        return tl::unexpected(may.error());
    }
    const Attempt& attempt = piece->current();
    if (const auto back = bookBack(ledger, *attempt.cut, *attempt.id, command.by); !back) {
        return tl::unexpected(back.error());
    }
    ledger.jobs().record({std::nullopt, command.job, JobEventKind::Lost, command.by, std::nullopt, attempt.id});
    ledger.jobs().loseAttempt(*attempt.id, LostReason::Other, command.by.at);
    if (piece->source != PieceSource::CustomersSet) {
        replanString(ledger, piece->article, command.by.at);
    }
    return jobOf(ledger, command.job);
}

Result<std::optional<LastDone>> lastDone(Transaction& ledger, JobId id) {
    auto job = jobOf(ledger, id);
    if (!job) {
        return tl::unexpected(job.error());
    }
    if (job->state == JobState::Strung) {
        return LastDone{*std::move(job), std::nullopt};
    }
    if (job->state != JobState::OnTheMachine) {
        return std::optional<LastDone>();
    }
    const JobPiece* last = nullptr;
    for (const JobPiece& piece : job->pieces) {
        // Two that were cut in one moment: the later piece was cut later.
        if (piece.isCut() && (last == nullptr || piece.current().cut->at >= last->current().cut->at)) {
            last = &piece;
        }
    }
    if (last == nullptr) {
        return std::optional<LastDone>();
    }
    const PieceRole role = last->role;
    return LastDone{*std::move(job), role};
}

} // namespace rw::desk
