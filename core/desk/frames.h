// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <vector>

// What the shop knows of a frame: measurements, marks, notes for the bench, and the cuts that it usually makes.
namespace rw::desk {

struct KnownFrame {
    FrameModel frame;
    std::vector<UsualCut> usualCuts;
};
[[nodiscard]] Result<KnownFrame> knownFrame(Transaction& ledger, FrameModelId id); ///< NotFound

/// A frame as it is kept: words without space around them. Missing, TooLong {frame, bench note, mark, reason};
/// ImpossibleValue {key: marked range} with the higher value first, and what the length model names as no frame.
[[nodiscard]] Result<FrameModel> soundFrame(const FrameModel& wanted);

/// Adds a frame (without id) or changes one. What soundFrame() refuses; ImpossibleValue {key: pattern}
/// when a job that is still to be strung could not be laid on it any more; ChangedMeanwhile when another station
/// changed it since it was read; NotFound. The very same frame sent again is given back, not added twice. A logged job
/// keeps its pieces and cuts.
[[nodiscard]] Result<FrameModel> keepFrame(Transaction& ledger, const FrameModel& wanted);

/// A cut that the shop usually makes for a frame, in place of the one for the same role, material and route. OutOfRange
/// {cut} outside 1 m to 30 m; ImpossibleValue {key: short side} that is not shorter than the cut, or of a piece that
/// has none; ImpossibleValue {key: route} of a piece that is not the whole string, RouteUnknown; NotFound.
[[nodiscard]] Result<void> keepUsualCut(Transaction& ledger, const UsualCut& cut);
[[nodiscard]] Result<void> dropUsualCut(Transaction& ledger, const UsualCut& cut);

} // namespace rw::desk
