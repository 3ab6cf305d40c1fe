// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/stockroom.h"

namespace rw::desk {

Result<LotLife> lotLife(Transaction& ledger, LotId id) {
    auto lot = lotOf(ledger, id);
    if (!lot) {
        return tl::unexpected(lot.error());
    }
    auto article = articleOf(ledger, lot->article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    const auto owner = lot->owner ? ledger.customers().get(*lot->owner) : std::nullopt;
    LotLife life{*std::move(lot), *std::move(article), ledger.lots().movements(id), {}};
    life.delivery = life.lot.delivery ? ledger.lots().delivery(*life.lot.delivery) : std::nullopt;
    life.owner = owner ? owner->name : std::string();
    for (const Movement& movement : life.movements) {
        const auto jobId = movement.attempt ? ledger.jobs().ofAttempt(*movement.attempt) : std::nullopt;
        const auto job = jobId ? ledger.jobs().get(*jobId) : std::nullopt;
        life.jobNumbers.push_back(job ? job->number : 0);
    }
    return life;
}

} // namespace rw::desk
