// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/replan.h"

#include "core/desk/string_queue.h"

#include <algorithm>
#include <set>

namespace rw::desk {

std::optional<CustomerId> ownerFor(const Job& job, const JobPiece& piece) {
    return piece.source == PieceSource::ShopLot ? std::nullopt : std::optional(job.customer);
}

std::optional<LotId> bestLot(Transaction& ledger, JobPieceId piece, StringArticleId article,
                             const std::optional<CustomerId>& owner, Length length, Instant now) {
    StringQueue queue(ledger, article, now);
    std::vector<WaitingCut> others = queue.cuts();
    std::erase_if(others, [&](const WaitingCut& cut) { return cut.piece == piece; });
    return queue.lotFor(others, length, owner);
}

void replanString(Transaction& ledger, StringArticleId article, Instant now) {
    StringQueue queue(ledger, article, now);
    for (const WaitingCut& cut : queue.replanned(kPlanningTime).moved) {
        ledger.jobs().plan(cut.piece, cut.lot, cut.length, false);
    }
}

void replanStringsOf(Transaction& ledger, const Job& job, Instant now) {
    std::set<StringArticleId> strings;
    for (const JobPiece& piece : job.pieces) {
        if (piece.source != PieceSource::CustomersSet) {
            strings.insert(piece.article);
        }
    }
    for (const StringArticleId string : strings) {
        replanString(ledger, string, now);
    }
}

} // namespace rw::desk
