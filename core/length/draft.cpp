// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/draft.h"

#include <algorithm>
#include <numeric>

namespace rw::length {

namespace {
double endsOf(PieceRole role, const Ends& ends) {
    const bool knotted = role == PieceRole::Crosses && !ends.crossesStartClamped;
    return pulledEnds(role, false, ends) * ends.reachMm + (knotted ? ends.startingKnotMm : 0);
}

Need needOf(double predicted, const PathSums& sums, const Learnt& learnt) {
    return Need::learned(predicted, groupBelief(learnt.shopBias, sums.spreadMm / predicted), learnt.seen);
}

Need longSide(const Need& whole, const Need& shortSide) {
    // Tails of the short side and of the whole that contradict one another still leave a long side.
    const double rest = whole.predictedMm() - shortSide.predictedMm();
    const double median = std::max(whole.medianMm() - shortSide.medianMm(), rest / 2);
    return whole.over(whole.predictedMm() * median / whole.medianMm());
}

int countOf(const std::vector<Observation>& seen) { return static_cast<int>(seen.size()); }

} // namespace

int pulledEnds(PieceRole role, bool shortSide, const Ends& ends) {
    return shortSide || (role == PieceRole::Crosses && !ends.crossesStartClamped) ? 1 : 2;
}

double predictedNeed(const PiecePath& path, bool shortSide, const Ends& ends) {
    return shortSide ? path.arms.front().sums.slackMm + ends.reachMm : path.sums().slackMm + endsOf(path.role, ends);
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
    Draft draft{.plan = {}, .parts = {}, .whole = needOf(predictedNeed(path, false, request.ends), sums, learnt)};
    PiecePlan& plan = draft.plan;
    plan.role = path.role;
    for (const ArmPath& arm : path.arms) {
        plan.arms.push_back(arm.arm);
    }
    if (path.role == PieceRole::Whole) {
        const Learnt& ofShortSide = experience.shortSide;
        const Need shortSide = needOf(predictedNeed(path, true, request.ends), path.arms.front().sums, ofShortSide);
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
    return draft;
}

} // namespace rw::length
