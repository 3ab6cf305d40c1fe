// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/stock/estimate.h"
#include "core/stock/movement.h"
#include "core/stock/weigh_basis.h"
#include "core/units/mass.h"

#include <optional>

namespace rw {

/// What a scale showed, and the step in which it shows.
struct ScaleReading {
    Mass weight;
    Mass step; ///< positive
    bool operator==(const ScaleReading&) const = default;
};

/// What of a lot is weighed once: its spool without string, and the reel when it was new.
enum class SpoolWeight { Empty, New };
struct SpoolWeights {
    std::optional<ScaleReading> empty;
    std::optional<ScaleReading> fresh;
};

/// A shelf that is weighed through, on one day or over several.
struct StockTake {
    StockTakeId id;
    By started;
    std::optional<Instant> ended;
    std::optional<StaffId> endedBy;
    [[nodiscard]] bool isGoingOn() const { return !ended.has_value(); }
};

/// A lot on the scale, and what that said then. Never altered; the lot is weighed again instead.
struct KeptWeighing {
    std::optional<WeighingId> id;
    LotId lot;
    std::optional<StockTakeId> stockTake; ///< nothing: a single weighing
    ScaleReading gross;
    std::optional<ScaleReading> empty; ///< that it was held against; one of these two is there
    std::optional<ScaleReading> fresh;
    stock::Estimate gramsPerMetre;
    stock::WeighBasis basis;
    stock::Estimate weighedMm;                ///< whole millimetres, as they are booked
    stock::Estimate bookMm;                   ///< what the book said then
    std::optional<stock::Estimate> whenNewMm; ///< how long the reel was when new, by this weighing
    By by;
    std::optional<MovementId> booked = std::nullopt; ///< the movement that was booked by it and stands
};

} // namespace rw
