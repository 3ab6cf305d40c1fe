// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <vector>

namespace rw::desk {

/// Another racket of the same customer, and the newest job on it.
struct OtherRacket {
    Racket racket;
    FrameModel frame;
    Job last;
};

/// What the shop remembers that speaks for a job on one racket. Withdrawn jobs say nothing.
struct PastWork {
    std::vector<Job> ofRacket;       ///< newest first
    std::vector<OtherRacket> others; ///< those of the same frame first, each newest first
    std::vector<Job> ofFrame;        ///< the frame's jobs, whoever's racket it was; see jobsOnFrame()
    std::vector<UsualCut> usualCuts; ///< of the frame
    std::vector<StringArticle> articles;

    [[nodiscard]] std::optional<Material> materialOf(StringArticleId article) const;
};

/// All but `ofFrame`. `before`: only jobs that came into the shop before this one, for the card of a job that is logged
/// already.
[[nodiscard]] PastWork recall(Transaction& ledger, const FrameModel& frame, const std::optional<Racket>& racket,
                              const std::optional<JobId>& before = std::nullopt);

/// The newest jobs on a frame, for what came short there.
[[nodiscard]] std::vector<Job> jobsOnFrame(Transaction& ledger, FrameModelId frame);

} // namespace rw::desk
