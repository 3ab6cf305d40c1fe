// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"

#include "core/length/impossible.h"
#include "core/length/need.h"
#include "core/length/outline.h"
#include "core/length/packet.h"
#include "core/length/piece_path.h"
#include "core/length/recommended_cut.h"
#include "core/length/request_limits.h"
#include "core/length/route_choice.h"
#include "core/length/sport_defaults.h"
#include "core/length/string_bed.h"

#include <algorithm>
#include <numeric>

namespace rw::length {

namespace {
double asMm(Length length) { return static_cast<double>(length.millimetres()); }

double endsOf(PieceRole role, const Ends& ends) {
    const bool knotted = role == PieceRole::Crosses && !ends.crossesStartClamped;
    return ends.reachMm + (knotted ? ends.startingKnotMm : ends.reachMm);
}

/// One piece on its way to a plan: what lies where, and what each part of it that can fail by itself will
/// need.
struct Draft {
    PiecePlan plan;
    std::vector<Need> parts; ///< the piece; of a one-piece job its short side and its long side
    Need whole;
};

Need needOf(const PathSums& sums, double endsMm) {
    const double median = sums.slackMm + endsMm;
    return Need::predicted(median, sums.spreadMm / median);
}

Draft draftOf(const PiecePath& path, const CutRequest& request) {
    const PathSums sums = path.sums();
    const double ends = endsOf(path.role, request.ends);
    Draft draft{.plan = {}, .parts = {}, .whole = needOf(sums, ends)};
    draft.plan.role = path.role;
    for (const ArmPath& arm : path.arms) {
        draft.plan.arms.push_back(arm.arm);
        if (path.role == PieceRole::Whole) {
            draft.parts.push_back(needOf(arm.sums, request.ends.reachMm));
        }
    }
    if (draft.parts.empty()) {
        draft.parts.push_back(draft.whole);
    }
    draft.plan.chordsMm = sums.chordsMm;
    draft.plan.wallsMm = sums.wallsMm;
    draft.plan.linksMm = sums.linksMm;
    draft.plan.crimpMm = sums.crimpMm;
    draft.plan.pathMm = sums.pathMm();
    draft.plan.stretchPercent = (sums.pathMm() / sums.slackMm - 1) * 100;
    draft.plan.endsMm = ends;
    draft.plan.needMm = draft.whole.medianMm();
    draft.plan.needSdLog = draft.whole.sdLog();
    return draft;
}

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
    draft.plan.shortSide = ShortSide{.side = draft.plan.arms.front().side,
                                     .needMm = draft.parts.front().medianMm(),
                                     .measure = measure,
                                     .headLengths = asMm(measure) / headLengthMm};
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
        if (holdsAtPacket(all, together, packet)) {
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

/// One piece is one string.
Result<void> checkOneString(const CutRequest& request) {
    if (request.mains.material != request.crosses.material) {
        return impossible("crosses.material", std::string(materialText(request.crosses.material)),
                          "the mains' material, " + std::string(materialText(request.mains.material)) +
                              ": one piece is one string; two pieces may differ");
    }
    if (request.mains.diameterMm != request.crosses.diameterMm) {
        return impossible("crosses.diameterMm", request.crosses.diameterMm,
                          "the mains' diameter, " + plainNumber(request.mains.diameterMm) +
                              " mm: one piece is one string; two pieces may differ");
    }
    return {};
}

void sayRoute(std::vector<Why>& why, const RouteChoice& route) {
    if (route.method == Method::OnePiece) {
        why.push_back({Why::Kind::RouteChosen, route.route});
        if (route.startAssumed) {
            why.push_back({Why::Kind::StartEndAssumed, std::string(hoopEndText(route.mainsStart))});
        }
        if (route.route.starts_with("plain") && route.shortCrosses > 0) {
            why.push_back({Why::Kind::TwoTopCrosses, {}, static_cast<double>(route.shortCrosses)});
        }
    }
    if (route.crossesFromThroat) {
        why.push_back({Why::Kind::CrossesFromThroat});
    }
}
} // namespace

std::string StringId::text() const {
    switch (kind) {
    case Kind::MainLeft:
        return std::to_string(number) + "L";
    case Kind::MainRight:
        return std::to_string(number) + "R";
    case Kind::MainCentre:
        return "C";
    case Kind::Cross:
        break;
    }
    return "X" + std::to_string(number);
}

std::string Arm::endsAtText() const {
    return std::string(hoopEndText(endsAtEnd)) + ", " + std::string(sideText(endsAtSide));
}

Result<CutPlan> planCut(const CutRequest& request) {
    if (const auto limits = checkLimits(request); !limits) {
        return tl::unexpected(limits.error());
    }
    const auto route = chooseRoute(request);
    if (!route) {
        return tl::unexpected(route.error());
    }
    if (route->method == Method::OnePiece) {
        if (const auto one = checkOneString(request); !one) {
            return tl::unexpected(one.error());
        }
    }
    auto found = findOutline(request);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Outline& outline = found->outline;
    const BedSpans spans =
        bedSpans(request.sport, request.hoop.openThroat, request.pattern, outline.lengthMm, outline.widthMm);
    const auto bed =
        StringBed::lay(outline, request.pattern, spans, std::max(request.mains.diameterMm, request.crosses.diameterMm));
    if (!bed) {
        return tl::unexpected(bed.error());
    }

    CutPlan plan{.hoop = outline,
                 .method = route->method,
                 .route = route->route,
                 .mainsStart = route->mainsStart,
                 .headLengthMm = bed->longestMain() + outline.wallMm,
                 .headWidthMm = bed->longestCross() + outline.wallMm,
                 .pieces = {},
                 .chanceShortJob = 0,
                 .why = std::move(found->why)};
    sayRoute(plan.why, *route);
    plan.why.push_back({Why::Kind::GeometryOnly});
    std::vector<Draft> drafts;
    for (const RoutedPiece& piece : route->pieces) {
        const PiecePath path = pathOf(piece, *bed, outline, request);
        for (const LongRun& run : path.longRuns) {
            plan.why.push_back(
                {Why::Kind::LongOutsideRun, run.from.text() + " to " + run.to.text(), run.lengthMm, kLongRunMm});
        }
        drafts.push_back(draftOf(path, request));
    }
    Cutting(request, plan).cut(drafts);
    for (Draft& draft : drafts) {
        plan.pieces.push_back(std::move(draft.plan));
    }
    return plan;
}

} // namespace rw::length
