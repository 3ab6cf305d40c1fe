// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/stock/cut_queue.h"

#include <chrono>
#include <memory>
#include <optional>
#include <vector>

namespace rw::desk {

/// All jobs that wait for a string, and the open lots that they may be cut from. Reads, never writes.
class StringQueue {
public:
    StringQueue(Transaction& ledger, StringArticleId article, Instant now);

    /// As they are planned, by promise.
    [[nodiscard]] const std::vector<WaitingCut>& cuts() const { return m_cuts; }
    [[nodiscard]] const std::vector<Lot>& lots() const { return m_lots; }

    /// Of the cuts, but for those of one job.
    [[nodiscard]] Length plannedOn(LotId lot, const std::optional<JobId>& butFor = std::nullopt) const;

    struct Replanned {
        std::vector<WaitingCut> moved; ///< what should be planned otherwise, as it should be
        bool proven = true;            ///< no plan is better by what is worth moving a job for
    };
    /// See replanString().
    [[nodiscard]] Replanned replanned(std::chrono::milliseconds limit);

    /// Where a piece is best cut beside `others`: off a reel, else off a full packet.
    [[nodiscard]] std::optional<LotId> lotFor(const std::vector<WaitingCut>& others, Length length,
                                              const std::optional<CustomerId>& owner);

    /// What the queue planner is asked: the reels with what is not fixed on them, and the cuts that it may move.
    struct Question {
        std::vector<stock::QueueLot> lots;
        std::vector<LotId> lotIds; ///< of `lots`
        std::vector<stock::QueuePiece> pieces;
        std::vector<std::size_t> cuts; ///< of `pieces`, by their place in cuts()
        stock::Placing asPlanned;      ///< of `pieces`
    };
    [[nodiscard]] Question question() const;
    /// What the string's ends are worth.
    [[nodiscard]] const stock::RemnantValue& value();

private:
    [[nodiscard]] std::vector<bool> fixedCuts() const;
    [[nodiscard]] const Lot* openLot(const std::optional<LotId>& id) const;

    Transaction& m_ledger;
    StringArticleId m_article;
    Instant m_now;
    std::vector<WaitingCut> m_cuts;
    std::vector<Lot> m_lots;
    std::shared_ptr<const stock::RemnantValue> m_value;
};

} // namespace rw::desk
