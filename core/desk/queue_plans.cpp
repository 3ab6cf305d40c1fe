// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/queue_plans.h"

#include "core/desk/reel_choice.h"
#include "core/desk/string_queue.h"

#include <algorithm>

namespace rw::desk {

namespace {
using Overfull = QueuePlanOfString::Overfull;

QueuePlanOfString planOf(const StringArticle& article, StringQueue& queue, Instant now,
                         std::chrono::milliseconds limit) {
    QueuePlanOfString plan{.article = article, .cuts = queue.cuts(), .lots = {}, .reasons = {}, .overfull = {}};
    const StringQueue::Replanned better = queue.replanned(limit);
    plan.proven = better.proven && better.moved.empty();
    std::vector<stock::QueueLot> lots;
    std::vector<double> uncertainties;
    for (const Lot& lot : queue.lots()) {
        const Length planned = queue.plannedOn(*lot.id);
        if (planned > lot.length) {
            plan.overfull.push_back({lot.tag, planned - lot.length});
        } else if (planned.isPositive() && lot.kind != LotKind::Packet) {
            plan.lots.push_back(lot);
            lots.push_back({cutSource(lot, Length::fromMillimetres(0), now), lot.owner, std::nullopt});
            uncertainties.push_back(static_cast<double>(bookUncertainty(lot).millimetres()));
        }
    }
    // What lies on a lot of which nothing is said has its place all the same.
    std::vector<std::size_t> said;
    std::vector<stock::QueuePiece> pieces;
    stock::QueuePlan placed{.placing = {}, .lostMm = 0, .proven = plan.proven};
    for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
        const WaitingCut& cut = plan.cuts[i];
        const auto lot = std::ranges::find(plan.lots, cut.lot, &Lot::id);
        if (cut.lot && lot == plan.lots.end()) {
            continue;
        }
        said.push_back(i);
        pieces.push_back({cut.length, cut.job, cut.owner});
        placed.placing.push_back(cut.lot ? std::optional(static_cast<std::size_t>(lot - plan.lots.begin()))
                                         : std::nullopt);
    }
    plan.reasons = stock::reasonsFor(placed, lots, pieces, uncertainties, queue.value());
    for (stock::QueueReason& reason : plan.reasons) {
        reason.piece = reason.piece ? std::optional(said[*reason.piece]) : std::nullopt;
    }
    return plan;
}
} // namespace

Result<std::vector<QueuePlanOfString>> queuePlans(Transaction& ledger, Instant now, std::chrono::milliseconds limit) {
    std::vector<QueuePlanOfString> plans;
    for (const StringArticle& article : ledger.strings().all()) {
        StringQueue queue(ledger, *article.id, now);
        if (!queue.cuts().empty()) {
            plans.push_back(planOf(article, queue, now, limit));
        }
    }
    return plans;
}

} // namespace rw::desk
