// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cutting.h"

#include "core/length/packet.h"
#include "core/length/recommended_cut.h"
#include "core/length/sport_defaults.h"

#include <algorithm>
#include <numeric>

namespace rw::length {

namespace {
double asMm(Length length) { return static_cast<double>(length.millimetres()); }

/// What to measure for the short side of a cut, near `wished`, both sides staying within the ceiling: on the
/// tape where that can be, else the next finer mark of a ruler. The cut leaves room for the whole millimetre
/// at least.
Length measureOf(const Draft& draft, Length cut, double wished, double ceilingPerPart, Length tapeStep) {
    const Length lowest = Length::roundedUp(draft.parts.front().exceededWith(ceilingPerPart));
    const Length highest = cut - Length::roundedUp(draft.parts.back().exceededWith(ceilingPerPart));
    const Length target = std::clamp(Length::roundedUp(wished), lowest, std::max(lowest, highest));
    for (const Length mark : {tapeStep, Length::fromMillimetres(10), Length::fromMillimetres(5)}) {
        const Length above = target.roundedUpTo(mark);
        if (above <= highest) {
            return above;
        }
        if (above - mark >= lowest) {
            return above - mark;
        }
    }
    return target;
}

void setShortSide(Draft& draft, Length measure, double headLengthMm) {
    draft.plan.shortSide->measure = measure;
    draft.plan.shortSide->headLengths = asMm(measure) / headLengthMm;
    draft.plan.shortSide->chanceShort = draft.parts.front().chanceAbove(asMm(measure));
}

/// The cuts of all pieces, held at the packet where that is due, with what decided them.
class Cutting {
public:
    Cutting(const CutRequest& request, CutPlan& plan)
        : m_request(request)
        , m_plan(plan) {}

    void cut(std::vector<Draft>& drafts) {
        const std::size_t parts =
            std::accumulate(drafts.begin(), drafts.end(), std::size_t{0},
                            [](std::size_t sum, const Draft& draft) { return sum + draft.parts.size(); });
        m_ceiling = m_request.ceiling / static_cast<double>(parts);
        const bool costDecided = recommend(drafts);
        const Length together = sumOfCuts(drafts);
        const Length packet = usualPacket(m_request.sport);
        std::vector<Need> all;
        for (const Draft& draft : drafts) {
            all.insert(all.end(), draft.parts.begin(), draft.parts.end());
        }
        if (m_request.experience.isEmpty() && holdsAtPacket(all, together, packet)) {
            hold(drafts, all, packet);
            m_plan.why.push_back({Why::Kind::HeldAtPacket, {}, asMm(packet), asMm(together)});
        } else {
            if (together > packet) {
                const Pattern& pattern = m_request.pattern;
                const std::string reason = std::to_string(pattern.mains) + " x " + std::to_string(pattern.crosses);
                m_plan.why.push_back({Why::Kind::AbovePacket, reason, asMm(together), asMm(packet)});
            }
            m_plan.why.push_back(costDecided ? Why{Why::Kind::LeastCost, {}, m_cost}
                                             : Why{Why::Kind::CeilingDecides, {}, m_ceiling});
        }
        judge(drafts);
    }

private:
    /// Every piece by its ceiling and costs. True when the costs decided any of them.
    bool recommend(std::vector<Draft>& drafts) {
        std::optional<JobCosts> costs;
        if (m_request.costPerMetre && m_request.spoiledJobCost) {
            costs = JobCosts{*m_request.costPerMetre, *m_request.spoiledJobCost};
        }
        bool costDecided = false;
        for (Draft& draft : drafts) {
            const RecommendedCut best = recommendCut(draft.parts, m_ceiling, m_request.tapeStep, costs);
            draft.plan.cut = best.cut;
            draft.plan.heldAtPacket = false;
            m_cost += best.cost;
            costDecided = costDecided || best.costDecided;
            if (draft.plan.role == PieceRole::Whole) {
                const double wished =
                    best.costDecided ? draft.parts.front().atSd(sharedSd(draft.parts, asMm(best.cut))) : 0;
                const Length measure = measureOf(draft, best.cut, wished, m_ceiling, m_request.tapeStep);
                setShortSide(draft, measure, m_plan.headLengthMm);
            }
        }
        return costDecided;
    }

    void hold(std::vector<Draft>& drafts, const std::vector<Need>& all, Length packet) const {
        const std::vector<Length> shares = shareOfPacket(all, packet, m_request.tapeStep);
        auto share = shares.begin();
        for (Draft& draft : drafts) {
            const auto end = share + static_cast<std::ptrdiff_t>(draft.parts.size());
            draft.plan.cut = std::accumulate(share, end, Length::fromMillimetres(0));
            draft.plan.heldAtPacket = true;
            if (draft.plan.role == PieceRole::Whole) {
                setShortSide(draft, *share, m_plan.headLengthMm);
            }
            share = end;
        }
    }

    void judge(std::vector<Draft>& drafts) const {
        double enough = 1;
        for (Draft& draft : drafts) {
            std::vector<Length> lengths{draft.plan.cut};
            if (draft.plan.shortSide) {
                lengths = {draft.plan.shortSide->measure, draft.plan.cut - draft.plan.shortSide->measure};
            }
            draft.plan.chanceShort = chanceAnyShort(draft.parts, lengths);
            enough *= 1 - draft.plan.chanceShort;
        }
        m_plan.chanceShortJob = 1 - enough;
    }

    static Length sumOfCuts(const std::vector<Draft>& drafts) {
        return std::accumulate(drafts.begin(), drafts.end(), Length::fromMillimetres(0),
                               [](Length sum, const Draft& draft) { return sum + draft.plan.cut; });
    }

    const CutRequest& m_request;
    CutPlan& m_plan;
    double m_ceiling = 0;
    double m_cost = 0;
};
} // namespace

void cutPieces(std::vector<Draft>& drafts, const CutRequest& request, CutPlan& plan) {
    Cutting(request, plan).cut(drafts);
}

} // namespace rw::length
