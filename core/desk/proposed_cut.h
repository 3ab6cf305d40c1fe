// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"
#include "core/desk/past_work.h"
#include "core/length/cut_plan.h"

#include <optional>

namespace rw::desk {

/// How much to cut for a piece, and what that stands on.
struct ProposedCut {
    Length cut;
    CutFrom from;
    std::optional<Length> cameShortAt; ///< set when the cut was raised above a length that came short on this frame
    std::optional<Length> shortSide;   ///< of a whole piece, when the same source says that too
};

/// Cuts whose tails were told, after which the model knows a frame better than the shop's old book. Jobs of which
/// nobody noted more than that it was enough only say that the usual cut was; they replace nothing.
constexpr int kToldInPlaceOfUsualCut = 5;

/// The first that speaks: what was cut last time on this racket, with this method and route and a string of this
/// material, when it was enough; the frame's usual cut for the role, material and route; one for any material, both
/// until kToldInPlaceOfUsualCut; the model's. Totals of one-piece routes lie close together, so a usual cut of another
/// route serves, but its short side does not. A cut that came short on the frame is not proposed again: it is what held
/// on the frame since, else raised above it.
[[nodiscard]] ProposedCut proposeCut(const length::CutPlan& plan, const length::PiecePlan& piece, Material material,
                                     const PastWork& past, Length tapeStep);

/// What to cut after a length that came short by nobody knows how much: a fiftieth more, and a tape step at the least
/// (common practice: who re-cuts adds a hand, not a finger).
[[nodiscard]] Length raisedAbove(Length cameShort, Length tapeStep);

} // namespace rw::desk
