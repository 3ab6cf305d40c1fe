// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/frame_model.h"

#include <optional>

namespace rw {

/// The higher pull of a pair, as a force; the mains' where both are the same.
[[nodiscard]] const Tension& highestPull(const TensionPair& tensions);

/// A pull above what the frame's maker marked as its highest: what an informed yes is needed for.
struct AboveMarked {
    Tension pull;
    Tension marked;
    bool operator==(const AboveMarked&) const = default;
};
/// Nothing when the pair keeps to the marked maximum, or none is marked.
[[nodiscard]] std::optional<AboveMarked> aboveMarked(const MarkedRange& range, const TensionPair& tensions);

} // namespace rw
