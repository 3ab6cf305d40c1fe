// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/frames/sport.h"
#include "core/jobs/tails.h"
#include "core/length/piece_role.h"
#include "core/stock/movement.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace rw::desk {

/// A length that was cut off a lot and came to its end: strung, or too short. Other losses, and cuts that were taken
/// back, tell nothing of a need and are none.
struct OwnCut {
    JobId job;
    std::int64_t number; ///< of the job
    FrameModelId frame;
    Instant at; ///< when it was cut
    Method method;
    std::string route;               ///< "" for two pieces
    std::optional<Length> shortSide; ///< what was to be measured off for it, of a one-piece job
    TensionPair pulled;              ///< as strung, else as asked
    PieceRole role;
    StringArticleId mains; ///< of the whole bed, whatever this piece is
    StringArticleId crosses;
    Length length;
    bool allThereWas = false; ///< the end of its lot, or a packet's rest: no habit
    bool cameShort = false;
    std::optional<Tails> tails; ///< the newest that were told
    std::optional<Tails> shortSideTails;
};

/// What the shop's own cuts tell of how much string a frame needs. core/sql implements it.
class OwnCuts {
public:
    virtual ~OwnCuts() = default;
    /// Keeps what came off the ends of an attempt; told again, the later counts. LedgerGuard for one that was never
    /// cut.
    virtual void keepTails(AttemptId attempt, const TailsOf& tails, const By& by) = 0;
    /// The cuts of the frame's newest `jobs` jobs, and beside them the newest `elsewhere` pieces of other frames of the
    /// sport of which tails were told; newest first.
    [[nodiscard]] virtual std::vector<OwnCut> cuts(FrameModelId frame, Sport sport, int jobs, int elsewhere) = 0;
};

} // namespace rw::desk
