// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/frames/hoop.h"
#include "core/frames/pattern.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <cstdint>
#include <optional>
#include <string>

namespace rw {

/// The range its maker marked on the frame. Either end may be missing.
struct MarkedRange {
    std::optional<Tension> lowest;
    std::optional<Tension> highest;
    bool operator==(const MarkedRange&) const = default;
};

/// A side that the frame itself forces for the short side, with the reason, so that nobody argues at the bench.
struct ForcedSide {
    Side side;
    std::string reason; ///< "groove in the strip"
    bool operator==(const ForcedSide&) const = default;
};

/// What a stringer must know of a frame beyond its measurements.
struct BenchNote {
    std::optional<ForcedSide> forcedSide;
    std::string mountingMark = "butt-cap logo up"; ///< what left and right refer to; never empty
    bool crossesFromThroatAllowed = false;
    std::string text;
    bool operator==(const BenchNote&) const = default;
};

/// A frame as its maker sells it. A customer's own frame is a Racket (core/customers).
struct FrameModel {
    std::optional<FrameModelId> id; ///< nothing until the ledger has given one
    std::string name;               ///< 1 to 80 characters
    Sport sport = Sport::Tennis;
    Hoop hoop;
    Pattern pattern;
    MarkedRange marked;
    BenchNote note;
    std::int64_t version = 1; ///< row version, for changes from two stations
    bool operator==(const FrameModel&) const = default;
};

} // namespace rw
