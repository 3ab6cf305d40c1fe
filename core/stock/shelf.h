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

/// Whether a full packet can still be had: nothing is planned on it.
[[nodiscard]] bool isFreePacket(const Lot& lot, const std::vector<PlannedCut>& planned);

/// Whole jobs still free in `lots` (of one string and owner, with the cuts `planned` for just those): of each
/// open lot what is not planned on it, a free packet being one job however long it is, less the jobs' worth of cuts
/// that are planned on none of them.
/// Negative when more is promised than is there.
[[nodiscard]] std::int64_t wholeJobsFree(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned,
                                         Length perJob); ///< perJob > 0

/// How many whole free jobs of a string a shop wants at least, until it says otherwise.
constexpr std::int64_t kFewestJobs = 2;
/// The fixed rule: a string runs short when fewer than `fewest` whole jobs of it are free.
[[nodiscard]] bool isRunningShort(std::int64_t jobsFree, std::int64_t fewest = kFewestJobs);

/// What planning leaves on a lot that the book may have wrong: 0.15 m on an opened lot below 25 m, nothing on
/// one that was measured since its last cut, that is sealed, or that holds more.
[[nodiscard]] Length plannersGap(const Lot& lot);

/// One standard deviation of a lot's booked length: 1 cm by tape; else 0.5 % of the nominal length and 2 cm
/// for each cut. A lot does not tell how many cuts it had: as many as pieces of 5 m are gone from it, at
/// least one.
[[nodiscard]] Length bookUncertainty(const Lot& lot);

/// The full packet that a piece is best cut off when no reel serves: the shortest of `owner` that holds it beside what
/// is planned there; ties to the older. Nothing when none does.
[[nodiscard]] std::optional<LotId> proposePacket(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned,
                                                 Length piece, const std::optional<CustomerId>& owner);

/// How the book's word on a tight cut is passed on.
enum class Fit { Fits, FitsIfBookIsRight, DoesNotFit };
/// By the book as it is, beside what else is planned there. FitsIfBookIsRight when what would be left is
/// under twice the book's uncertainty or under a quarter metre; a full packet, or the rest of one, is used up
/// and either fits or does not.
[[nodiscard]] Fit fitOf(const Lot& lot, Length piece, Length plannedThere = Length::fromMillimetres(0));

} // namespace rw
