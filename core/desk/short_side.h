// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"
#include "core/desk/past_work.h"
#include "core/length/cut_plan.h"

#include <optional>
#include <string>

// Where the short side of a one-piece job is, and why: the first that speaks decides.
namespace rw::desk {

struct SideChoice {
    Side side;
    SideFrom from;
    std::string because;
    bool againstChoice = false;
};

/// The frame's force, then what somebody chose, then this racket's last job, then the customer's other rackets
/// (twins first), then the shop's habit. A side that another frame forced is no habit and is not taken over.
[[nodiscard]] SideChoice chooseSide(const FrameModel& frame, const PastWork& past, const std::optional<Side>& chosen,
                                    Side usual);

/// The short side of a planned one-piece job, measured at `measure` or else at the model's own safe length; nothing for
/// a job in two pieces.
[[nodiscard]] std::optional<ShortSideProposal> shortSideOf(const length::CutPlan& plan, const FrameModel& frame,
                                                           const SideChoice& choice,
                                                           const std::optional<Length>& measure);

} // namespace rw::desk
