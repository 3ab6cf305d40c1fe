// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"
#include "core/desk/past_work.h"
#include "core/desk/settings.h"
#include "core/desk/short_side.h"
#include "core/desk/told_needs.h"
#include "core/length/cut_plan.h"

namespace rw::desk {

/// A draft with what its ids stand for.
struct Intake {
    FrameModel frame;
    std::optional<Racket> racket;
    WantedString mains;
    WantedString crosses;
    StringArticle mainsArticle;
    StringArticle crossesArticle;
    PastWork past;
    ShopSettings settings;
    std::optional<double> costPerMetre = {}; ///< of its string, in minor units; nothing while nobody knows it
    std::vector<ToldNeed> told = {};         ///< what the shop's own cuts say

    [[nodiscard]] bool oneString() const { return isOneString(mains, crosses); }
};
[[nodiscard]] Result<Intake> readDraft(Transaction& ledger, const IntakeDraft& draft);

/// The request for these strings on this frame. Its tape step, ceiling and reach are the shop's; method, route and side
/// are still to be chosen.
[[nodiscard]] length::CutRequest requestFor(const FrameModel& frame, const StringArticle& mains,
                                            const StringArticle& crosses, const TensionPair& tensions,
                                            const ShopSettings& settings);

/// The plan of a request, its method and route chosen, with what the shop's own cuts say; by geometry alone where they
/// say nothing.
[[nodiscard]] Result<length::CutPlan> planWithOwnCuts(length::CutRequest request, const FrameModel& frame,
                                                      std::span<const ToldNeed> told);

struct PlannedIntake {
    length::CutPlan plan;
    SideChoice side;
};
/// The plan of a draft. Method and route: as chosen, else as last time on this racket, else as on its twin, else (the
/// route) that of the frame's usual cut, else the model's default. What is only remembered never stops a job: a route
/// that does not fit the frame is passed over, one that somebody chose is refused.
[[nodiscard]] Result<PlannedIntake> planIntake(const Intake& intake, const IntakeDraft& draft);

} // namespace rw::desk
