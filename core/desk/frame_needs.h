// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/told_needs.h"
#include "core/length/cut_plan.h"

#include <optional>
#include <vector>

// A frame with every cut that the shop has made for it, and what was learned of its need from one to the next.
namespace rw::desk {

/// One cut, and what was expected of the next job once it was known.
struct NeedStep {
    ToldNeed told;
    double lowMm;  ///< from where to where its need lay, for a job like the newest; may be 0
    double highMm; ///< may be infinite
    double learnedMm;
    double learnedSdMm; ///< of the next need: the frame's, the material's and one job's scatter
};

struct NeedStory {
    NeedGroup group;
    double predictedMm;          ///< by geometry alone, of the newest of its jobs: its tensions, its string
    double biasMm;               ///< the same with what the rest of the shop says
    std::vector<NeedStep> steps; ///< oldest first, at least one
};

struct FrameNeeds {
    FrameModel frame;
    std::optional<length::CutPlan> head; ///< in two pieces of the sport's usual string, to be drawn
    std::vector<NeedStory> stories;      ///< the one with most cuts first
};

/// Of the frame's newest jobs (kJobsOfFrameTold). NotFound.
[[nodiscard]] Result<FrameNeeds> frameNeeds(Transaction& ledger, FrameModelId frame);

} // namespace rw::desk
