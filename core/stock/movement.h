// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/units/length.h"

#include <optional>
#include <string>
#include <string_view>

namespace rw {

/// Why a lot's length changed.
enum class MovementReason { Received, Cut, Lost, Measured, Weighed, Returned, ThrownAway };

/// Why a length was lost. Nobody is scolded.
enum class LostReason { CameShort, Kinked, Nicked, Snapped, MisWoven, WrongString, FaultyReel, Other };

[[nodiscard]] std::string_view movementReasonText(
    MovementReason reason); ///< "received", "cut", "lost", ... "thrown-away"
[[nodiscard]] std::optional<MovementReason> movementReasonFromText(std::string_view text);
[[nodiscard]] std::string_view lostReasonText(LostReason reason); ///< "came-short", "kinked", ... "other"
[[nodiscard]] std::optional<LostReason> lostReasonFromText(std::string_view text);

/// Who did it and where. Goes with everything that is written down.
struct By {
    StaffId staff;
    std::string station; ///< "counter", "bench", "stockroom", "books"
    Instant at;
};

/// One change of a lot's length. Never altered, never removed; a correction is a new one.
struct Movement {
    std::optional<MovementId> id;
    LotId lot;
    MovementReason reason;
    Length change;                        ///< signed; a cut is negative
    std::optional<AttemptId> attempt;     ///< for a cut, always
    std::optional<LostReason> lostReason; ///< for a loss that no attempt stands behind
    std::optional<MovementId> corrects;
    By by;
    std::string words{}; ///< why, as somebody said it; "" where nobody did; at most 2000 characters
};

} // namespace rw
