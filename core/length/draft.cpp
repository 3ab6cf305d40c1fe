// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/draft.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rw::length {

namespace {
/// How many of its ends are pulled by the machine and then tied off.
int pulledEnds(PieceRole role, bool shortSide, const Ends& ends) {
    return shortSide || (role == PieceRole::Crosses && !ends.crossesStartClamped) ? 1 : 2;
}

double endsOf(PieceRole role, const Ends& ends) {
    const bool knotted = role == PieceRole::Crosses && !ends.crossesStartClamped;
    return pulledEnds(role, false, ends) * ends.reachMm + (knotted ? ends.startingKnotMm : 0);
}

Need needOf(const PredictedPart& part, const Learnt& learnt) {
    return Need::learned(part.needMm, groupBelief(learnt.shopBias, part.materialSpread), learnt.seen);
}

Need longSide(const Need& whole, const Need& shortSide) {
    // Tails of the short side and of the whole that contradict one another still leave a long side.
    const double rest = whole.predictedMm() - shortSide.predictedMm();
    const double median = std::max(whole.medianMm() - shortSide.medianMm(), rest / 2);
    return whole.over(whole.predictedMm() * median / whole.medianMm());
}

int countOf(const std::vector<Observation>& seen) { return static_cast<int>(seen.size()); }

int countMeasured(const std::vector<Observation>& seen) {
    return static_cast<int>(std::ranges::count_if(
        seen, [](const Observation& one) { return std::isfinite(one.low) && std::isfinite(one.high); }));
}

} // namespace

PredictedPart predictedPart(const PiecePath& path, bool shortSide, const Ends& ends) {
    const PathSums sums = shortSide ? path.arms.front().sums : path.sums();
    const double need = sums.slackMm + (shortSide ? ends.reachMm : endsOf(path.role, ends));
    return {.role = path.role,
            .shortSide = shortSide,
            .needMm = need,
            .backMm = pulledEnds(path.role, shortSide, ends) * (ends.reachMm - ends.knotUseMm),
            .materialSpread = sums.spreadMm / need};
}

std::vector<Need> allParts(std::span<const Draft> drafts) {
    std::vector<Need> parts;
    for (const Draft& draft : drafts) {
        parts.insert(parts.end(), draft.parts.begin(), draft.parts.end());
    }
    return parts;
}

void setShortSide(Draft& draft, Length measure, double headLengthMm) {
    const auto mm = static_cast<double>(measure.millimetres());
    draft.plan.shortSide->measure = measure;
    draft.plan.shortSide->headLengths = mm / headLengthMm;
    draft.plan.shortSide->chanceShort = draft.parts.front().chanceAbove(mm);
}

void shareOut(std::vector<Draft>& drafts, std::span<const Length> shares, double headLengthMm) {
    for (Draft& draft : drafts) {
        const auto own = shares.first(draft.parts.size());
        draft.plan.cut = std::accumulate(own.begin(), own.end(), Length::fromMillimetres(0));
        if (draft.plan.shortSide) {
            setShortSide(draft, own.front(), headLengthMm);
        }
        shares = shares.subspan(own.size());
    }
}

Draft draftOf(const PiecePath& path, const CutRequest& request, const Experience& experience) {
    const PathSums sums = path.sums();
    const Learnt& learnt = experience.*experienceOf(path.role);
    Draft draft{
        .plan = {}, .parts = {}, .whole = needOf(predictedPart(path, false, request.ends), learnt)};
    PiecePlan& plan = draft.plan;
    plan.role = path.role;
    for (const ArmPath& arm : path.arms) {
        plan.arms.push_back(arm.arm);
    }
    if (path.role == PieceRole::Whole) {
        const Learnt& ofShortSide = experience.shortSide;
        const Need shortSide = needOf(predictedPart(path, true, request.ends), ofShortSide);
        plan.shortSide = ShortSide{.side = plan.arms.front().side,
                                   .needMm = shortSide.medianMm(),
                                   .measure = Length::fromMillimetres(0),
                                   .headLengths = 0,
                                   .predictedMm = shortSide.predictedMm(),
                                   .observations = countOf(ofShortSide.seen)};
        draft.parts = {shortSide, longSide(draft.whole, shortSide)};
    } else {
        draft.parts = {draft.whole};
    }
    plan.chordsMm = sums.chordsMm;
    plan.wallsMm = sums.wallsMm;
    plan.linksMm = sums.linksMm;
    plan.crimpMm = sums.crimpMm;
    plan.pathMm = sums.pathMm();
    plan.stretchPercent = (sums.pathMm() / sums.slackMm - 1) * 100;
    plan.endsMm = endsOf(path.role, request.ends);
    plan.predictedMm = draft.whole.predictedMm();
    plan.needMm = draft.whole.medianMm();
    plan.needSdLog = draft.whole.sdLog();
    plan.needSdMm = draft.whole.sdMm();
    plan.quantilesMm = {plan.needMm, draft.whole.exceededWith(0.1), draft.whole.exceededWith(0.01)};
    plan.observations = countOf(learnt.seen);
    plan.measured = countMeasured(learnt.seen);
    plan.shopBias = learnt.shopBias.mean;
    plan.shopCuts = learnt.shopCuts;
    plan.frameEffect = draft.whole.thetaMean() - learnt.shopBias.mean;
    return draft;
}

} // namespace rw::length
