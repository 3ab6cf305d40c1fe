// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <chrono>
#include <optional>

// A job's lot is a proposal until the bench takes it or somebody pins it.
namespace rw::desk {

/// How long a use case may look for a better plan: the other stations wait for their turn meanwhile. The best plan is
/// found by then nearly always (tests/bench), though not proven to be the best.
constexpr std::chrono::milliseconds kPlanningTime{50};

/// Where a piece of `length` is best planned now, beside everything else that is planned but for `piece` itself: off a
/// reel, else off a packet; nothing when no open lot of that owner holds it.
[[nodiscard]] std::optional<LotId> bestLot(Transaction& ledger, JobPieceId piece, StringArticleId article,
                                           const std::optional<CustomerId>& owner, Length length, Instant now);

/// Plans the queue of a string anew, in the transaction that changed its lots or its jobs. Pinned pieces are never
/// moved, whatever the book says; jobs that the bench has begun and what is planned on a packet only when the lot holds
/// them no more. When there is not enough for all, what is promised first comes first; a job that finds no reel for
/// both its pieces may have two, and one that finds none a packet, or nothing.
void replanString(Transaction& ledger, StringArticleId article, Instant now);

/// The same for every string of a job.
void replanStringsOf(Transaction& ledger, const Job& job, Instant now);

/// Whose lots a piece is planned on: its customer's, or nothing for the shop's.
[[nodiscard]] std::optional<CustomerId> ownerFor(const Job& job, const JobPiece& piece);

} // namespace rw::desk
