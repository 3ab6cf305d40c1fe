// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/desk/settings.h"
#include "core/length/cut_request.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

// What the shop's own cuts say to the length model. A cut is kept as it was made; what it says is worked out anew, with
// today's model and today's measurements of its frame.
namespace rw::desk {

/// Cuts that are looked at for one plan. It is made while somebody types, so both are bounded, whatever the ledger
/// holds: of the frame its newest jobs, and of the sport's other frames, which only say how far the shop as a whole is
/// off, the newest pieces of which tails were told.
constexpr int kJobsOfFrameTold = 60;
constexpr int kPiecesElsewhereTold = 120;

/// Cuts that are alike to the model: of one frame, one part of the job, one material. One-piece routes are pooled for
/// the whole string; a short side is told by its route.
struct NeedGroup {
    FrameModelId frame;
    PieceRole role;
    bool shortSide = false;
    Material material;
    std::string route; ///< "" but for a short side
    bool operator==(const NeedGroup&) const = default;
    /// What the shop's bias is pooled over, among frames of one sport.
    [[nodiscard]] bool isSamePart(const NeedGroup& other) const {
        return role == other.role && shortSide == other.shortSide;
    }
};

struct ToldNeed {
    NeedGroup group;
    JobId job;
    std::int64_t number; ///< of the job
    Instant at;
    Length cut;            ///< or what was measured off for the short side
    double predictedMm;    ///< by geometry alone
    double materialSpread; ///< see length::PredictedPart
    length::Observation seen;
};

/// What these cuts tell, in their order. Left out is what cannot have been: a need below half or above twice what is
/// predicted, and a job that could not be laid on its frame as it is known today. A cut that took all there was tells
/// no more than that it was enough, or was not.
[[nodiscard]] std::vector<ToldNeed> toldBy(Transaction& ledger, const std::vector<OwnCut>& cuts,
                                           const std::vector<StringArticle>& articles, const ShopSettings& settings);

/// What is told for a plan on this frame, within the bounds above.
[[nodiscard]] std::vector<ToldNeed> toldFor(Transaction& ledger, const FrameModel& frame,
                                            const std::vector<StringArticle>& articles, const ShopSettings& settings);

/// What is learned for one group from cuts of one sport: its own, and the bias by all others of the same part.
[[nodiscard]] length::Learnt learntOf(std::span<const ToldNeed> told, const NeedGroup& group);

/// The same for each part of a job on the frame. `route`: "" for two pieces, or where it is still open.
[[nodiscard]] length::Experience experienceFor(std::span<const ToldNeed> told, FrameModelId frame, Material mains,
                                               Material crosses, std::string_view route);

} // namespace rw::desk
