// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/own_sets.h"

#include <algorithm>

namespace rw::desk {

namespace {
using length::Need;
using length::PacketVerdict;

Need needOf(const length::PiecePlan& piece) { return Need::withSpread(piece.needMm, piece.needSdLog); }

Length together(const std::vector<Need>& needs) {
    double sum = 0;
    for (const Need& need : needs) {
        sum += need.medianMm();
    }
    return Length::roundedUp(sum);
}

OwnSet judged(PieceRole first, const std::vector<Need>& needs, Length length) {
    return {.first = first,
            .length = length,
            .need = together(needs),
            .verdict = length::judgePacket(needs, length),
            .better = std::nullopt};
}

class Better {
public:
    Better(const Intake& intake, const IntakeDraft& draft, OwnSet& set)
        : m_request(
              requestFor(intake.frame, intake.mainsArticle, intake.crossesArticle, draft.tensions, intake.settings))
        , m_set(set) {}

    void look(const length::CutPlan& wish) {
        if (wish.method == Method::TwoPiece) {
            m_request.method = Method::OnePiece;
            consider(SetAdvice::OnePiece, length::planCut(m_request));
        }
        m_request.method = Method::TwoPiece;
        m_request.ends.crossesStartClamped = true;
        consider(SetAdvice::StartingClamp, length::planCut(m_request));
        m_request.ends.crossesStartClamped = false;
        if (const auto plan = length::planCut(m_request)) {
            consider(SetAdvice::OtherCrosses, {needOf(plan->pieces.front())});
        }
    }

private:
    void consider(SetAdvice advice, const Result<length::CutPlan>& plan) {
        if (plan) {
            consider(advice, needsOf(*plan));
        }
    }
    void consider(SetAdvice advice, const std::vector<Need>& needs) {
        const PacketVerdict verdict = length::judgePacket(needs, m_set.length);
        const PacketVerdict best = m_set.better ? m_set.better->verdict : m_set.verdict;
        if (verdict < best) {
            m_set.better = OwnSet::Way{advice, together(needs), verdict};
        }
    }

    length::CutRequest m_request;
    OwnSet& m_set;
};
} // namespace

std::vector<Need> needsOf(const length::CutPlan& plan) {
    std::vector<Need> needs;
    std::ranges::transform(plan.pieces, std::back_inserter(needs), needOf);
    return needs;
}

std::vector<OwnSet> judgeOwnSets(const Intake& intake, const IntakeDraft& draft, const length::CutPlan& plan,
                                 const std::optional<Length>& packet) {
    const auto lengthOf = [](const WantedString& wanted) {
        return wanted.source == PieceSource::CustomersSet ? wanted.setLength : std::nullopt;
    };
    std::vector<OwnSet> sets;
    if (intake.oneString()) {
        if (const auto length = packet ? packet : lengthOf(intake.mains)) {
            OwnSet& set = sets.emplace_back(judged(plan.pieces.front().role, needsOf(plan), *length));
            set.shops = packet.has_value();
            if (set.verdict != PacketVerdict::Enough) {
                Better(intake, draft, set).look(plan);
            }
        }
        return sets;
    }
    for (const length::PiecePlan& piece : plan.pieces) {
        if (const auto length = lengthOf(piece.role == PieceRole::Crosses ? intake.crosses : intake.mains)) {
            sets.push_back(judged(piece.role, {needOf(piece)}, *length));
        }
    }
    return sets;
}

} // namespace rw::desk
