// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/stock/cut_search.h"
#include "core/stock/next_cut.h"
#include "core/stock/remnant_value.h"

#include <chrono>
#include <optional>
#include <span>

namespace rw::stock {

/// A lot that the queue may be cut from. All lots of one question hold one string.
struct QueueLot {
    CutSource source;
    std::optional<CustomerId> owner; ///< nothing: the shop's
    std::optional<JobId> pinnedTo;   ///< this job's pieces come off it and off no other
};

/// A piece of a job that waits to be cut.
struct QueuePiece {
    Length length; ///< positive
    JobId job;
    std::optional<CustomerId> owner; ///< whose string it comes from; nothing: the shop's
};

struct QueueRules {
    bool sameReel = true; ///< all pieces of a job off one lot, so that they are one batch and colour; the remnant
                          ///< values are then of whole jobs
    std::chrono::milliseconds limit{500};
    /// Where each piece is planned now; empty: nowhere. It stays so unless that is impossible or loses kWorthMovingMm
    /// more than the best plan, and what is moved is as little as the plan allows.
    Placing asPlanned = {};
};

/// What one more piece of waiting costs an end: for less no planned job is sent to another reel.
constexpr double kWorthMovingMm = 50;

struct QueuePlan {
    Placing placing;     ///< the lot of each piece, by its place in the list; nothing: it fits on none
    double lostMm = 0;   ///< what all cuts together lose; may be negative
    bool proven = false; ///< nothing is better (by what is worth moving a job for, where one was planned already);
                         ///< otherwise it is the best that was found within the limit
};

/// Where each piece of the queue is best cut: the jobs that are pinned first, then as many pieces as possible, then as
/// few sealed lots opened as possible (while no open lot is above kFullEnough, opening one may also save more than
/// kWorthOpeningMm), then the least sum of what is lost. Nobody's piece comes off somebody else's lot.
/// It starts from the queue cut one by one where each job loses least. Only the first job of a plan is carried out;
/// after every cut there is a new one, because the ends were not measured.
[[nodiscard]] QueuePlan planQueue(std::span<const QueueLot> lots, std::span<const QueuePiece> pieces,
                                  const RemnantValue& value, const QueueRules& rules = {});

} // namespace rw::stock
