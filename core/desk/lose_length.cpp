// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/lookups.h"
#include "core/desk/proposed_cut.h"
#include "core/desk/replan.h"
#include "core/desk/settings.h"
#include "core/stock/shelf.h"

#include <algorithm>

namespace rw::desk {

namespace {
std::vector<Argument> whichAttempt(const Job& job, const LoseLength& command) {
    return {{"job", job.number},
            {"piece", std::string(pieceRoleText(command.role))},
            {"attempt", std::int64_t{command.attempt}}};
}

/// What to plan for the next try. A length that came short says that this frame needs more; other losses say nothing.
Length nextCut(const JobPiece& piece, LostReason reason, Length step) {
    const auto& cut = piece.current().cut;
    if (reason != LostReason::CameShort || !cut) {
        return piece.planned;
    }
    return std::max(piece.planned, raisedAbove(cut->length, step));
}

/// The next try comes off the reel that the lost one came off, as long as that holds it: same batch, same colour.
std::optional<LotId> nextLot(Transaction& ledger, const Job& job, const JobPiece& piece, Length length, Instant now) {
    if (piece.source == PieceSource::CustomersSet || piece.pinned) {
        return piece.lot;
    }
    if (const auto& cut = piece.current().cut; cut && cut->lot) {
        const auto lot = ledger.lots().get(*cut->lot);
        std::vector<PlannedCut> others = ledger.lots().plannedCuts();
        std::erase_if(others, [&](const PlannedCut& planned) { return planned.piece == *piece.id; });
        if (lot && lot->isOpen() && lot->owner == ownerFor(job, piece) && uncommitted(*lot, others) >= length) {
            return lot->id;
        }
    }
    return bestLot(ledger, *piece.id, piece.article, ownerFor(job, piece), length, now);
}
} // namespace

Result<Job> loseLength(Transaction& ledger, const LoseLength& command) {
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    const auto piece = pieceOf(*job, command.role);
    if (!piece) {
        return tl::unexpected(piece.error());
    }
    if (command.attempt != piece->current().number) {
        const auto meant = std::ranges::find(piece->attempts, command.attempt, &Attempt::number);
        if (meant != piece->attempts.end() && meant->lost == command.reason) {
            return job;
        }
        return refuse(Code::StaleAttempt, whichAttempt(*job, command));
    }
    if (!piece->isCut()) {
        return refuse(Code::NotCut, whichAttempt(*job, command));
    }
    if (const auto may = mayHappen(*job, JobEventKind::Lost); !may) {
        return tl::unexpected(may.error());
    }
    const Length length = nextCut(*piece, command.reason, readSettings(ledger.shop()).tapeStep);
    const auto lot = nextLot(ledger, *job, *piece, length, command.by.at);
    const AttemptId lost = *piece->current().id;
    ledger.jobs().record({std::nullopt, command.job, JobEventKind::Lost, command.by, std::nullopt, lost});
    ledger.jobs().loseAttempt(lost, command.reason, command.by.at);
    ledger.jobs().plan(*piece->id, lot, length, piece->pinned);
    if (piece->source != PieceSource::CustomersSet) {
        replanString(ledger, piece->article, command.by.at);
    }
    return jobOf(ledger, command.job);
}

} // namespace rw::desk
