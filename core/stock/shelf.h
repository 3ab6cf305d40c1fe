// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/lot.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace rw {

/// A planned cut that has not happened yet: what "promised" is made of.
struct PlannedCut {
    JobPieceId piece;
    StringArticleId article;
    std::optional<LotId> lot;        ///< where it is planned, if anywhere
    std::optional<CustomerId> owner; ///< whose string it comes from; nothing: the shop's
    Length length;
};

/// What is left of one string or one lot, what is promised, what is free. Nothing else is called free.
struct Holding {
    Length left;
    Length promised;
    [[nodiscard]] Length free() const { return left - promised; } ///< negative when more is promised than is there
};

/// Whole jobs in a length and what the next one lacks: "2 jobs; a third would be 0.3 m short".
struct WholeJobs {
    std::int64_t jobs;
    Length nextShortBy; ///< what one more job would lack; positive
};
[[nodiscard]] WholeJobs wholeJobs(Length length, Length perJob); ///< perJob > 0

/// Whole jobs over several lots, each on its own: four ends of 6 m are not two jobs of 11.
[[nodiscard]] std::int64_t wholeJobsOver(const std::vector<Length>& lots, Length perJob);

/// What a lot still holds for a new plan: its length without what is planned on it.
[[nodiscard]] Length uncommitted(const Lot& lot, const std::vector<PlannedCut>& planned);

/// Which lot the next piece is proposed from: among the open lots of `owner` where it fits beside what is
/// planned there, the one that is left shortest; a sealed one only when no opened one serves; ties to the older.
/// Nothing when it fits nowhere.
[[nodiscard]] std::optional<LotId> proposeLot(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned,
                                              Length piece, const std::optional<CustomerId>& owner);

/// How the book's word on a tight cut is passed on.
enum class Fit { Fits, FitsIfBookIsRight, DoesNotFit };
/// FitsIfBookIsRight when what would be left is under twice the book's uncertainty or under a quarter metre.
[[nodiscard]] Fit fitOf(const Lot& lot, Length piece);

} // namespace rw
