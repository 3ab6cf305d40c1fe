// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/sport.h"

#include <optional>

namespace rw {

/// How many strings, and where they lie. What was not measured is left out and takes the model's default.
struct Pattern {
    int mains = 16;                        ///< 6 to 30
    int crosses = 19;                      ///< 6 to 34
    std::optional<double> mainsSpanMm;     ///< between the outermost mains
    std::optional<double> crossesSpanMm;   ///< between the first and the last cross
    std::optional<double> crossesCentreMm; ///< positive toward the head
    std::optional<double> spread;          ///< q: the edge gap is (1 + q) times the centre gap; 0 to 2
    std::optional<HoopEnd> mainsStart;     ///< nothing: nobody knows yet
    bool operator==(const Pattern&) const = default;
};

} // namespace rw
