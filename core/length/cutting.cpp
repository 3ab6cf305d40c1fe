// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cutting.h"

#include "core/length/own_set.h"
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

/// The cuts of all pieces, held at the packet where that is due, with what decided them.
class CuttingFromReel {
public:
    CuttingFromReel(const CutRequest& request, CutPlan& plan)
        : m_request(request)
        , m_plan(plan) {}

    void cut(std::vector<Draft>& drafts, bool firstCut) {
        const std::vector<Need> all = allParts(drafts);
        m_ceiling = m_request.ceiling / static_cast<double>(all.size());
        const bool costDecided = recommend(drafts);
        const Length together = sumOfCuts(drafts);
        const Length packet = usualPacket(m_request.sport);
        if (firstCut && holdsAtPacket(all, together, packet)) {
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

    void hold(std::vector<Draft>& drafts, std::span<const Need> all, Length packet) const {
        shareOut(drafts, shareOfPacket(all, packet, m_request.tapeStep), m_plan.headLengthMm);
        for (Draft& draft : drafts) {
            draft.plan.heldAtPacket = true;
        }
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

void judge(std::vector<Draft>& drafts, CutPlan& plan) {
    double enough = 1;
    for (Draft& draft : drafts) {
        std::vector<Length> lengths{draft.plan.cut};
        if (draft.plan.shortSide) {
            lengths = {draft.plan.shortSide->measure, draft.plan.cut - draft.plan.shortSide->measure};
        }
        draft.plan.chanceShort = chanceAnyShort(draft.parts, lengths);
        enough *= 1 - draft.plan.chanceShort;
    }
    plan.chanceShortJob = 1 - enough;
}
} // namespace

void cutPieces(std::vector<Draft>& drafts, const CutRequest& request, bool firstCut, CutPlan& plan) {
    if (request.set) {
        cutFromSet(drafts, request, plan);
    } else {
        CuttingFromReel(request, plan).cut(drafts, firstCut);
    }
    judge(drafts, plan);
}

} // namespace rw::length
