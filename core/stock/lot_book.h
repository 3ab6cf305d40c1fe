// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/estimate.h"
#include "core/stock/movement.h"

#include <iterator>
#include <map>
#include <optional>
#include <vector>

// What a lot's movements say, oldest first: how sure the book is, and how much was cut between two moments.
namespace rw::stock {

/// Those that stand: not taken back, and not what took another back.
[[nodiscard]] std::vector<Movement> standing(const std::vector<Movement>& movements);

/// The booked length with its uncertainty, in millimetres, from the lot's whole life: its nominal length, each cut by
/// tape, what a tape or a scale corrected. `weighedSdMm`: how sure the weighings were that were booked. A movement of
/// no length is one too: it says that the book was right.
[[nodiscard]] Estimate bookEstimate(const std::vector<Movement>& movements,
                                    const std::map<MovementId, double>& weighedSdMm);

/// What was cut after `from` and until `to`, in millimetres by tape; nothing when nothing was, or when the book was
/// found to be wrong between: then what was really cut is not known.
[[nodiscard]] std::optional<Estimate> knownCut(const std::vector<Movement>& movements, Instant from, Instant to);

} // namespace rw::stock
