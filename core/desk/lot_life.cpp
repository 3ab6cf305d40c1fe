// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/stockroom.h"

#include <algorithm>

namespace rw::desk {

namespace {
/// Why the length that was cut in an attempt was lost; nothing for one that held, or that was taken back.
std::optional<LostReason> lostIn(const Job& job, const LotLife& life, const Movement& cut) {
    const auto isCorrection = [&](const Movement& other) { return other.corrects && other.corrects == cut.id; };
    if (std::ranges::any_of(life.movements, isCorrection)) {
        return std::nullopt;
    }
    for (const JobPiece& piece : job.pieces) {
        for (const Attempt& attempt : piece.attempts) {
            if (attempt.id == cut.attempt) {
                return attempt.lost;
            }
        }
    }
    return std::nullopt;
}
} // namespace

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
    for (const KeptWeighing& weighing : ledger.weighings().ofLot(id)) {
        if (weighing.booked) {
            life.onScale.emplace(*weighing.booked, weighing.gross.weight);
        }
    }
    for (Movement& movement : life.movements) {
        const auto jobId = movement.attempt ? ledger.jobs().ofAttempt(*movement.attempt) : std::nullopt;
        const auto job = jobId ? ledger.jobs().get(*jobId) : std::nullopt;
        life.jobNumbers.push_back(job ? job->number : 0);
        if (job) {
            movement.lostReason = lostIn(*job, life, movement);
        }
    }
    return life;
}

} // namespace rw::desk
