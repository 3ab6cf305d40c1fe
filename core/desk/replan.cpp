// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/replan.h"

#include "core/stock/shelf.h"

#include <algorithm>

namespace rw::desk {

namespace {
struct PlannedPiece {
    JobPiece piece;
    std::optional<CustomerId> owner;
};

bool waitsForItsCut(const JobPiece& piece, LotId lot) {
    return piece.lot == lot && piece.source != PieceSource::CustomersSet && !piece.isCut();
}

/// The uncut pieces planned on the lot, the pinned ones first, then by promise.
std::vector<PlannedPiece> piecesOn(Transaction& ledger, LotId lot) {
    std::vector<PlannedPiece> pieces;
    for (const JobLine& line : ledger.jobs().inStates({JobState::OnTheMachine, JobState::Logged, JobState::Waiting})) {
        const auto job = ledger.jobs().get(line.id);
        if (!job) {
            continue;
        }
        for (const JobPiece& piece : job->pieces) {
            if (waitsForItsCut(piece, lot)) {
                pieces.push_back({piece, ownerFor(*job, piece)});
            }
        }
    }
    std::stable_partition(pieces.begin(), pieces.end(),
                          [](const PlannedPiece& planned) { return planned.piece.pinned; });
    return pieces;
}
} // namespace

std::optional<CustomerId> ownerFor(const Job& job, const JobPiece& piece) {
    return piece.source == PieceSource::ShopLot ? std::nullopt : std::optional(job.customer);
}

std::optional<LotId> bestLot(Transaction& ledger, JobPieceId piece, StringArticleId article,
                             const std::optional<CustomerId>& owner, Length length) {
    std::vector<PlannedCut> others = ledger.lots().plannedCuts();
    std::erase_if(others, [&](const PlannedCut& cut) { return cut.piece == piece; });
    return proposeLot(ledger.lots().open(article), others, length, owner);
}

void replanLot(Transaction& ledger, LotId id) {
    const auto lot = ledger.lots().get(id);
    if (!lot || !uncommitted(*lot, ledger.lots().plannedCuts()).isNegative()) {
        return;
    }
    Length left = lot->length; // nothing, in a closed one
    for (const PlannedPiece& planned : piecesOn(ledger, id)) {
        const JobPiece& piece = planned.piece;
        if (piece.pinned || piece.planned <= left) {
            left -= piece.planned;
            continue;
        }
        ledger.jobs().plan(*piece.id, bestLot(ledger, *piece.id, piece.article, planned.owner, piece.planned),
                           piece.planned, false);
    }
}

} // namespace rw::desk
