// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/reel_choice.h"

#include <algorithm>

namespace rw::desk {

stock::CutSource cutSource(const Lot& lot, Length committed, Instant now) {
    const bool untouched = lot.isUntouched() && !committed.isPositive();
    const bool isEnd = !lot.isUntouched() && lot.length <= stock::kFullEnough;
    return {.length = std::max(lot.length - committed, Length::fromMillimetres(0)),
            .gap = plannersGap(lot),
            .sealed = untouched,
            .received = lot.received,
            .pullMm = isEnd ? stock::agePullMm(lot.received, now) : 0};
}

std::optional<ReelChoice> chooseReel(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned, Length piece,
                                     const std::optional<CustomerId>& owner, const stock::RemnantValue& value,
                                     Instant now) {
    std::vector<stock::CutSource> sources;
    std::vector<const Lot*> lotOf;
    for (const Lot& lot : lots) {
        if (lot.isOpen() && lot.owner == owner && !lot.isFullPacket()) {
            sources.push_back(cutSource(lot, lot.length - uncommitted(lot, planned), now));
            lotOf.push_back(&lot);
        }
    }
    const auto best = stock::nextCut(sources, piece, value);
    if (!best) {
        return std::nullopt;
    }
    if (best->opens) {
        return ReelChoice{*lotOf[*best->opens]->id, CutReason::Spared{lotOf[best->lot]->tag, best->lostMm}};
    }
    return ReelChoice{*lotOf[best->lot]->id};
}

} // namespace rw::desk
