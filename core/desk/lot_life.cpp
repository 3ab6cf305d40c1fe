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
    LotLife life{*std::move(lot), *std::move(article), ledger.lots().movements(id), {}};
    for (const Movement& movement : life.movements) {
        const auto jobId = movement.attempt ? ledger.jobs().ofAttempt(*movement.attempt) : std::nullopt;
        const auto job = jobId ? ledger.jobs().get(*jobId) : std::nullopt;
        life.jobNumbers.push_back(job ? job->number : 0);
    }
    return life;
}

} // namespace rw::desk
