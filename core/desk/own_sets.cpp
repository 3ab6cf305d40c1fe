// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/own_sets.h"

#include "core/length/own_set.h"

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

/// How the customer's sets of one wish are judged: by the length model, as a printed length.
class Judge {
public:
    Judge(const Intake& intake, const IntakeDraft& draft)
        : m_intake(intake)
        , m_draft(draft)
        , m_request(
              requestFor(intake.frame, intake.mainsArticle, intake.crossesArticle, draft.tensions, intake.settings)) {
        m_request.experience = experienceFor(intake.told, *intake.frame.id, intake.mainsArticle.material,
                                             intake.crossesArticle.material, {});
    }

    [[nodiscard]] OwnSet judged(PieceRole first, const std::vector<Need>& needs, Length length) const {
        return {.first = first,
                .length = length,
                .need = together(needs),
                .verdict = length::judgeSet(needs, length, false, m_request.ends),
                .better = std::nullopt};
    }

    /// What does better than a set that is meant for the whole bed and is not surely enough for it.
    void lookForBetter(const length::CutPlan& wish, OwnSet& set) {
        if (wish.method == Method::TwoPiece) {
            // By the route that the counter would take, which is the one whose cuts have told something.
            IntakeDraft inOne = m_draft;
            inOne.method = Method::OnePiece;
            inOne.route = std::nullopt;
            consider(set, SetAdvice::OnePiece, planIntake(m_intake, inOne).map(&PlannedIntake::plan));
        }
        m_request.method = Method::TwoPiece;
        m_request.ends.crossesStartClamped = true;
        consider(set, SetAdvice::StartingClamp, length::planCut(m_request));
        m_request.ends.crossesStartClamped = false;
        if (const auto plan = length::planCut(m_request)) {
            consider(set, SetAdvice::OtherCrosses, {needOf(plan->pieces.front())});
        }
    }

private:
    void consider(OwnSet& set, SetAdvice advice, const Result<length::CutPlan>& plan) const {
        if (plan) {
            consider(set, advice, needsOf(*plan));
        }
    }
    void consider(OwnSet& set, SetAdvice advice, const std::vector<Need>& needs) const {
        const OwnSet way = judged(set.first, needs, set.length);
        const PacketVerdict best = set.better ? set.better->verdict : set.verdict;
        if (way.verdict < best) {
            set.better = OwnSet::Way{advice, way.need, way.verdict};
        }
    }

    const Intake& m_intake;
    const IntakeDraft& m_draft;
    length::CutRequest m_request;
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
    Judge judge(intake, draft);
    std::vector<OwnSet> sets;
    if (intake.oneString()) {
        if (const auto length = packet ? packet : lengthOf(intake.mains)) {
            OwnSet& set = sets.emplace_back(judge.judged(plan.pieces.front().role, needsOf(plan), *length));
            set.shops = packet.has_value();
            if (set.verdict != PacketVerdict::Enough) {
                judge.lookForBetter(plan, set);
            }
        }
        return sets;
    }
    for (const length::PiecePlan& piece : plan.pieces) {
        if (const auto length = lengthOf(piece.role == PieceRole::Crosses ? intake.crosses : intake.mains)) {
            sets.push_back(judge.judged(piece.role, {needOf(piece)}, *length));
        }
    }
    return sets;
}

} // namespace rw::desk
