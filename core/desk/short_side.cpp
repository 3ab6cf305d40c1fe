// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/short_side.h"

#include <algorithm>

namespace rw::desk {

namespace {
int topCrossesOf(const length::Arm& arm, int crosses) {
    return static_cast<int>(std::ranges::count_if(arm.strings, [&](const length::LaidString& string) {
        return string.id.kind == length::StringId::Kind::Cross && string.id.number <= crosses / 2;
    }));
}

std::string nameOf(const OtherRacket& other) {
    return other.racket.mark.empty() ? other.frame.name : other.racket.mark;
}
} // namespace

SideChoice chooseSide(const FrameModel& frame, const PastWork& past, const std::optional<Side>& chosen, Side usual) {
    if (const auto& forced = frame.note.forcedSide) {
        return {forced->side, SideFrom::Frame, forced->reason, chosen && *chosen != forced->side};
    }
    if (chosen) {
        return {*chosen, SideFrom::Chosen, {}};
    }
    const auto inOnePiece = [](const Job& job) { return job.method == Method::OnePiece; };
    if (const auto job = std::ranges::find_if(past.ofRacket, inOnePiece); job != past.ofRacket.end()) {
        return {job->shortSide, SideFrom::LastTime, {}};
    }
    const auto speaks = [&](const OtherRacket& other) {
        return inOnePiece(other.last) && !other.frame.note.forcedSide;
    };
    if (const auto other = std::ranges::find_if(past.others, speaks); other != past.others.end()) {
        return {other->last.shortSide, SideFrom::Twin, nameOf(*other)};
    }
    return {usual, SideFrom::Usual, {}};
}

std::optional<ShortSideProposal> shortSideOf(const length::CutPlan& plan, const FrameModel& frame,
                                             const SideChoice& choice, const std::optional<Length>& measure) {
    if (plan.method != Method::OnePiece) {
        return std::nullopt;
    }
    const length::PiecePlan& whole = plan.pieces.front();
    if (!whole.shortSide || whole.arms.empty()) {
        return std::nullopt;
    }
    const Length length = measure.value_or(whole.shortSide->measure);
    return ShortSideProposal{.side = choice.side,
                             .from = choice.from,
                             .because = choice.because,
                             .againstChoice = choice.againstChoice,
                             .mountingMark = frame.note.mountingMark,
                             .measure = length,
                             .headLengths = static_cast<double>(length.millimetres()) / plan.headLengthMm,
                             .topCrosses = topCrossesOf(whole.arms.front(), frame.pattern.crosses)};
}

} // namespace rw::desk
