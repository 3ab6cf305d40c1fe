// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/shelf.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>
#include <tuple>

namespace rw {

namespace {
// Stock model, "Uncertainty of the book": one standard deviation each.
constexpr double kNewReelShare = 0.005;
constexpr double kTapeMm = 10;
constexpr double kOneCutMm = 20;
constexpr double kUsualPieceMm =
    5'000; // a lot does not say how many cuts it had: the shortest usual piece, so the most

constexpr Length kGap = Length::fromMillimetres(150);
constexpr Length kGapBelow = Length::fromMillimetres(25'000);
constexpr Length kTightBelow = Length::fromMillimetres(250);

Length plannedOn(const Lot& lot, const std::vector<PlannedCut>& planned) {
    return std::accumulate(
        planned.begin(), planned.end(), Length::fromMillimetres(0),
        [&](Length sum, const PlannedCut& cut) { return cut.lot == lot.id ? sum + cut.length : sum; });
}
} // namespace

WholeJobs wholeJobs(Length length, Length perJob) {
    assert(perJob.isPositive());
    const std::int64_t jobs = length.wholeTimes(perJob);
    return {.jobs = jobs, .nextShortBy = perJob * (jobs + 1) - length};
}

std::int64_t wholeJobsOver(const std::vector<Length>& lots, Length perJob) {
    return std::accumulate(lots.begin(), lots.end(), std::int64_t{0},
                           [&](std::int64_t sum, Length lot) { return sum + wholeJobs(lot, perJob).jobs; });
}

Length uncommitted(const Lot& lot, const std::vector<PlannedCut>& planned) {
    return lot.length - plannedOn(lot, planned);
}

bool isFreePacket(const Lot& lot, const std::vector<PlannedCut>& planned) {
    return lot.isOpen() && lot.isFullPacket() && uncommitted(lot, planned) == lot.length;
}

std::int64_t wholeJobsFree(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned, Length perJob) {
    std::vector<Length> left;
    std::int64_t packets = 0;
    for (const Lot& lot : lots) {
        if (isFreePacket(lot, planned)) {
            ++packets;
        } else if (lot.isOpen()) {
            left.push_back(uncommitted(lot, planned));
        }
    }
    const Length nowhere = std::accumulate(
        planned.begin(), planned.end(), Length::fromMillimetres(0), [&](Length sum, const PlannedCut& cut) {
            const bool placed = std::ranges::any_of(lots, [&](const Lot& lot) { return cut.lot == lot.id; });
            return cut.lot && placed ? sum : sum + cut.length;
        });
    const std::int64_t owed = (nowhere.millimetres() + perJob.millimetres() - 1) / perJob.millimetres();
    return packets + wholeJobsOver(left, perJob) - owed;
}

bool isRunningShort(std::int64_t jobsFree, std::int64_t fewest) { return jobsFree < fewest; }

Length plannersGap(const Lot& lot) {
    const bool sure = lot.sealed || lot.measuredSinceLastCut || lot.length >= kGapBelow;
    return sure ? Length::fromMillimetres(0) : kGap;
}

Length bookUncertainty(const Lot& lot) {
    if (lot.measuredSinceLastCut) {
        return Length::roundedUp(kTapeMm);
    }
    const double start = kNewReelShare * static_cast<double>(lot.nominal.millimetres());
    if (lot.sealed) {
        return Length::roundedUp(start);
    }
    const double used = static_cast<double>((lot.nominal - lot.length).millimetres());
    const double cuts = std::max(1.0, std::ceil(used / kUsualPieceMm));
    return Length::roundedUp(std::sqrt(start * start + cuts * kOneCutMm * kOneCutMm));
}

std::optional<LotId> proposePacket(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned, Length piece,
                                   const std::optional<CustomerId>& owner) {
    const Lot* best = nullptr;
    const auto rank = [&](const Lot& lot) { return std::tuple(uncommitted(lot, planned), lot.received, lot.id); };
    for (const Lot& lot : lots) {
        const bool serves = lot.isOpen() && lot.isFullPacket() && lot.owner == owner;
        if (serves && uncommitted(lot, planned) >= piece && (best == nullptr || rank(lot) < rank(*best))) {
            best = &lot;
        }
    }
    return best == nullptr ? std::nullopt : best->id;
}

Fit fitOf(const Lot& lot, Length piece, Length plannedThere) {
    const Length left = lot.length - plannedThere - piece;
    if (left.isNegative()) {
        return Fit::DoesNotFit;
    }
    const bool usedUp = lot.kind == LotKind::Packet && left == Length::fromMillimetres(0);
    if (lot.isFullPacket() || usedUp) {
        return Fit::Fits;
    }
    const bool tight = left < kTightBelow || left < bookUncertainty(lot) * 2;
    return tight ? Fit::FitsIfBookIsRight : Fit::Fits;
}

} // namespace rw
