// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/draft.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rw::length {

namespace {
double endsOf(PieceRole role, const Ends& ends) {
    const bool knotted = role == PieceRole::Crosses && !ends.crossesStartClamped;
    return pulledEnds(role, false, ends) * ends.reachMm + (knotted ? ends.startingKnotMm : 0);
}

Need needOf(const PathSums& sums, double endsMm, const Learnt& learnt) {
    const double predicted = sums.slackMm + endsMm;
    return Need::learned(predicted, groupBelief(learnt.shopBias, sums.spreadMm / predicted), learnt.seen);
}

Need longSide(const Need& whole, const Need& shortSide) {
    // Tails of the short side and of the whole that contradict one another still leave a long side.
    const double rest = whole.predictedMm() - shortSide.predictedMm();
    const double median = std::max(whole.medianMm() - shortSide.medianMm(), rest / 2);
    return whole.over(whole.predictedMm() * median / whole.medianMm());
}

int countOf(const std::vector<Observation>& seen) { return static_cast<int>(seen.size()); }

void sayOwnJobs(std::vector<Why>& why, const std::string& piece, const std::vector<Observation>& seen,
                double predictedMm, double needMm) {
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    int exact = 0;
    for (const Observation& one : seen) {
        if (one.isExact()) {
            ++exact;
            least = std::min(least, one.low);
            most = std::max(most, one.high);
        }
    }
    why.push_back({Why::Kind::OwnJobs, piece, static_cast<double>(seen.size()), static_cast<double>(exact)});
    if (exact > 0) {
        why.push_back({Why::Kind::OwnNeeds, piece, predictedMm * std::exp(least), predictedMm * std::exp(most)});
    }
    why.push_back({Why::Kind::Corrected, piece, predictedMm, needMm});
}
} // namespace

int pulledEnds(PieceRole role, bool shortSide, const Ends& ends) {
    return shortSide || (role == PieceRole::Crosses && !ends.crossesStartClamped) ? 1 : 2;
}

Draft draftOf(const PiecePath& path, const CutRequest& request) {
    const PathSums sums = path.sums();
    const double ends = endsOf(path.role, request.ends);
    const Learnt& learnt = request.experience.*experienceOf(path.role);
    Draft draft{.plan = {}, .parts = {}, .whole = needOf(sums, ends, learnt)};
    PiecePlan& plan = draft.plan;
    plan.role = path.role;
    for (const ArmPath& arm : path.arms) {
        plan.arms.push_back(arm.arm);
    }
    if (path.role == PieceRole::Whole) {
        const Learnt& ofShortSide = request.experience.shortSide;
        const Need shortSide = needOf(path.arms.front().sums, request.ends.reachMm, ofShortSide);
        plan.shortSide = ShortSide{.side = plan.arms.front().side,
                                   .predictedMm = shortSide.predictedMm(),
                                   .needMm = shortSide.medianMm(),
                                   .measure = Length::fromMillimetres(0),
                                   .headLengths = 0,
                                   .chanceShort = 0,
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
    plan.endsMm = ends;
    plan.predictedMm = draft.whole.predictedMm();
    plan.needMm = draft.whole.medianMm();
    plan.needSdLog = draft.whole.sdLog();
    plan.needSdMm = draft.whole.sdMm();
    plan.quantilesMm = {plan.needMm, draft.whole.exceededWith(0.1), draft.whole.exceededWith(0.01)};
    plan.observations = countOf(learnt.seen);
    return draft;
}

std::vector<Why> whyOfNeeds(const std::vector<Draft>& drafts, const Experience& experience) {
    std::vector<Why> why;
    if (experience.isEmpty()) {
        why.push_back({Why::Kind::GeometryOnly});
        return why;
    }
    for (const Draft& draft : drafts) {
        const PiecePlan& plan = draft.plan;
        const std::string piece(pieceRoleText(plan.role));
        if (plan.observations == 0) {
            why.push_back({Why::Kind::GeometryOnly, piece});
        } else {
            sayOwnJobs(why, piece, (experience.*experienceOf(plan.role)).seen, plan.predictedMm, plan.needMm);
        }
        if (plan.shortSide && plan.shortSide->observations > 0) {
            sayOwnJobs(why, std::string(kShortSideText), experience.shortSide.seen, plan.shortSide->predictedMm,
                       plan.shortSide->needMm);
        }
    }
    return why;
}

} // namespace rw::length
