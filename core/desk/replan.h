// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>

// A job's lot is a proposal until the bench takes it or somebody pins it.
namespace rw::desk {

/// Where a piece of `length` is best planned now, beside everything else that is planned but for `piece` itself;
/// nothing when no open lot of that owner holds it.
[[nodiscard]] std::optional<LotId> bestLot(Transaction& ledger, JobPieceId piece, StringArticleId article,
                                           const std::optional<CustomerId>& owner, Length length);

/// Puts planned cuts that the lot cannot hold any more onto another lot, or onto none. Earlier promises keep their
/// place; pinned pieces are never moved, whatever the book says.
void replanLot(Transaction& ledger, LotId lot);

/// Whose lots a piece is planned on: its customer's, or nothing for the shop's.
[[nodiscard]] std::optional<CustomerId> ownerFor(const Job& job, const JobPiece& piece);

} // namespace rw::desk
