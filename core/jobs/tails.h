// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/piece_role.h"
#include "core/units/length.h"

#include <optional>
#include <string_view>
#include <vector>

namespace rw {

/// What was cut off the ends of a piece when it was tied off, all of it together: measured, or told in words by
/// somebody with full hands, and then somewhere from `low` to `high` (0 <= low <= high).
struct Tails {
    Length low;
    Length high;

    [[nodiscard]] static constexpr Tails measured(Length length) { return {length, length}; }
    [[nodiscard]] bool isMeasured() const { return low == high; }
    Tails operator+(const Tails& other) const { return {low + other.low, high + other.high}; }
    bool operator==(const Tails&) const = default;
};

/// The tails of one piece, or of a one-piece job what came off its short side alone.
struct TailsOf {
    PieceRole role;
    bool shortSide = false;
    Tails tails;
    bool operator==(const TailsOf&) const = default;
};

/// Which part of a piece tails are kept for: "piece", "short-side".
[[nodiscard]] std::string_view tailsPartText(bool shortSide);

/// Reads the tails of a job as they are told when it is finished, part by part: the mains', then the crosses'; of a
/// one-piece job the short side's, then the long side's, or one for both together. "38 / 25", "38 cm", "a hand / -".
/// A bare number is centimetres, as on the tape that lies at the bench. In words: a hand, two hands, a head length,
/// more, each give or take a half (a stretched hand is taken as 180 mm, common practice; a head length is this
/// frame's); more is from one and a half head lengths to four. "-" or "enough" is a part of which nothing is told;
/// nothing at all is an empty answer. ImpossibleValue {key: tails, text, expected} for what is neither, for one number
/// where two pieces have tails of their own, and for a long side alone, of which nothing is learned.
[[nodiscard]] Result<std::vector<TailsOf>> tailsFromText(std::string_view text, Method method, Length headLength);

} // namespace rw
