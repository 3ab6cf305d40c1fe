// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/proposed_cut.h"

#include <algorithm>
#include <array>

namespace rw::desk {

namespace {
const JobPiece* pieceFor(const Job& job, PieceRole role, Material material, const PastWork& past) {
    const auto piece = std::ranges::find(job.pieces, role, &JobPiece::role);
    return piece != job.pieces.end() && past.materialOf(piece->article) == material ? &*piece : nullptr;
}

std::optional<ProposedCut> lastTime(const length::CutPlan& plan, const length::PiecePlan& piece, Material material,
                                    const PastWork& past) {
    for (const Job& job : past.ofRacket) {
        const bool strung = job.state == JobState::Strung || job.state == JobState::Collected;
        const JobPiece* then = pieceFor(job, piece.role, material, past);
        if (!strung || job.method != plan.method || job.route != plan.route || then == nullptr || !then->isCut()) {
            continue;
        }
        const DoneCut& cut = *then->current().cut;
        if (cut.lot && !cut.allThereWas) {
            return ProposedCut{cut.length, CutFrom::LastTime, std::nullopt, job.shortSideLength};
        }
    }
    return std::nullopt;
}

std::optional<ProposedCut> usualCut(const length::CutPlan& plan, const length::PiecePlan& piece, Material material,
                                    const PastWork& past) {
    struct Wanted {
        std::optional<Material> material;
        bool sameRoute;
    };
    const std::array<Wanted, 4> order{
        {{material, true}, {material, false}, {std::nullopt, true}, {std::nullopt, false}}};
    for (const Wanted& wanted : order) {
        for (const UsualCut& usual : past.usualCuts) {
            if (usual.role == piece.role && usual.material == wanted.material &&
                (usual.route == plan.route) == wanted.sameRoute) {
                return ProposedCut{usual.cut, CutFrom::UsualCut, std::nullopt,
                                   wanted.sameRoute ? usual.shortSide : std::nullopt};
            }
        }
    }
    return std::nullopt;
}

ProposedCut modelsCut(const length::PiecePlan& piece) {
    const CutFrom from = piece.observations > 0 ? CutFrom::OwnCuts
                         : piece.shopCuts > 0   ? CutFrom::OtherFrames
                                                : CutFrom::Geometry;
    return {piece.cut, from, std::nullopt, std::nullopt};
}

/// The shortest cut of such a piece that was enough on this frame lately, and longer than one that was not.
std::optional<Length> heldAbove(Length cameShort, PieceRole role, Material material, const PastWork& past) {
    std::optional<Length> shortest;
    for (const Job& job : past.ofFrame) {
        const JobPiece* piece = pieceFor(job, role, material, past);
        const bool strung = job.state == JobState::Strung || job.state == JobState::Collected;
        if (piece == nullptr || !strung || !piece->isCut()) {
            continue;
        }
        const DoneCut& cut = *piece->current().cut;
        if (cut.lot && !cut.allThereWas && cut.length > cameShort) {
            shortest = std::min(shortest.value_or(cut.length), cut.length);
        }
    }
    return shortest;
}

/// The longest cut that came short on this frame lately in such a piece.
std::optional<Length> cameShort(PieceRole role, Material material, const PastWork& past) {
    std::optional<Length> longest;
    for (const Job& job : past.ofFrame) {
        const JobPiece* piece = pieceFor(job, role, material, past);
        if (piece == nullptr) {
            continue;
        }
        for (const Attempt& attempt : piece->attempts) {
            if (attempt.lost == LostReason::CameShort && attempt.cut && attempt.cut->lot) {
                longest = std::max(longest.value_or(attempt.cut->length), attempt.cut->length);
            }
        }
    }
    return longest;
}
} // namespace

Length raisedAbove(Length cameShort, Length tapeStep) {
    const Length fiftieth = Length::fromMillimetres(cameShort.millimetres() / 50);
    return (cameShort + std::max(tapeStep, fiftieth)).roundedUpTo(tapeStep);
}

ProposedCut proposeCut(const length::CutPlan& plan, const length::PiecePlan& piece, Material material,
                       const PastWork& past, Length tapeStep) {
    if (auto cut = lastTime(plan, piece, material, past)) {
        return *cut;
    }
    const auto usual = piece.measured < kToldInPlaceOfUsualCut ? usualCut(plan, piece, material, past) : std::nullopt;
    ProposedCut cut = usual.value_or(modelsCut(piece));
    const auto shortAt = cameShort(piece.role, material, past);
    if (shortAt && *shortAt >= cut.cut) {
        cut.cut = heldAbove(*shortAt, piece.role, material, past).value_or(raisedAbove(*shortAt, tapeStep));
        cut.cameShortAt = shortAt;
    }
    return cut;
}

} // namespace rw::desk
