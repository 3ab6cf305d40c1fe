// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lessons.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace rw::desk {

namespace {
bool isMeasured(const ToldNeed& need) { return std::isfinite(need.seen.low) && std::isfinite(need.seen.high); }

/// Each group once, in the order in which a reader looks for it.
std::vector<NeedGroup> groupsIn(std::span<const ToldNeed> told) {
    std::vector<NeedGroup> groups;
    for (const ToldNeed& need : told) {
        if (std::ranges::find(groups, need.group) == groups.end()) {
            groups.push_back(need.group);
        }
    }
    std::ranges::stable_sort(groups, {}, [](const NeedGroup& group) {
        return std::tuple(group.role, group.shortSide, materialText(group.material), group.route);
    });
    return groups;
}

/// The mean and the spread of theta, from its grid.
length::Belief thetaOf(const length::Learnt& learnt, double materialSpread) {
    const length::Belief before = length::groupBelief(learnt.shopBias, materialSpread);
    const auto points = length::thetaAfter(before, learnt.seen);
    double mean = 0;
    double squares = 0;
    for (const length::ThetaPoint& point : points) {
        mean += point.weight * point.theta;
        squares += point.weight * point.theta * point.theta;
    }
    return {mean, std::sqrt(std::max(0.0, squares - mean * mean))};
}

FrameLesson lessonOf(const FrameModel& frame, const NeedGroup& group, std::span<const ToldNeed> told) {
    FrameLesson lesson{.frame = frame.name,
                       .sport = frame.sport,
                       .group = group,
                       .cuts = 0,
                       .measured = 0,
                       .cameShort = 0,
                       .bias = length::kUnknownShop,
                       .effect = 0,
                       .sd = 0};
    double materialSpread = 0;
    for (const ToldNeed& need : told) {
        if (need.group == group) {
            materialSpread = need.materialSpread;
            ++lesson.cuts;
            lesson.measured += isMeasured(need) ? 1 : 0;
            lesson.cameShort += std::isinf(need.seen.high) ? 1 : 0;
        }
    }
    const length::Learnt learnt = learntOf(told, group);
    const length::Belief theta = thetaOf(learnt, materialSpread);
    lesson.bias = learnt.shopBias;
    lesson.effect = theta.mean - learnt.shopBias.mean;
    lesson.sd = theta.sd;
    return lesson;
}

/// The parts of which anything exact is told.
std::vector<PartLesson> partsOf(Sport sport, std::span<const ToldNeed> told) {
    // A group that no cut belongs to: everything is the others'.
    const auto nobodys = [](PieceRole role, bool shortSide) {
        return NeedGroup{FrameModelId::of(0), role, shortSide, Material::Nylon, {}};
    };
    std::vector<PartLesson> parts;
    for (const auto& [role, shortSide] : {std::pair(PieceRole::Mains, false), std::pair(PieceRole::Crosses, false),
                                          std::pair(PieceRole::Whole, false), std::pair(PieceRole::Whole, true)}) {
        const NeedGroup nobody = nobodys(role, shortSide);
        const length::Learnt learnt = learntOf(told, nobody);
        if (learnt.shopCuts == 0) {
            continue;
        }
        std::vector<ToldNeed> exact;
        std::ranges::copy_if(told, std::back_inserter(exact), [&](const ToldNeed& need) {
            return need.group.isSamePart(nobody) && need.seen.isExact();
        });
        parts.push_back(
            {sport, role, shortSide, learnt.shopCuts, static_cast<int>(groupsIn(exact).size()), learnt.shopBias});
    }
    return parts;
}
} // namespace

std::vector<ToldNeed> toldOfFrame(Transaction& ledger, const FrameModel& frame,
                                  const std::vector<StringArticle>& articles, const ShopSettings& settings) {
    return toldBy(ledger, ledger.ownCuts().cuts(*frame.id, frame.sport, kJobsOfFrameInLessons, 0), articles, settings);
}

Result<Lessons> lessons(Transaction& ledger) {
    const std::vector<StringArticle> articles = ledger.strings().all();
    const ShopSettings settings = readSettings(ledger.shop());
    const std::vector<FrameModel> frames = ledger.frames().find("", std::numeric_limits<int>::max());
    Lessons lessons;
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        std::vector<ToldNeed> told;
        for (const FrameModel& frame : frames) {
            if (frame.sport == sport) {
                std::ranges::move(toldOfFrame(ledger, frame, articles, settings), std::back_inserter(told));
            }
        }
        std::ranges::move(partsOf(sport, told), std::back_inserter(lessons.parts));
        const std::vector<NeedGroup> groups = groupsIn(told);
        for (const FrameModel& frame : frames) {
            for (const NeedGroup& group : groups) {
                if (group.frame == frame.id) {
                    lessons.frames.push_back(lessonOf(frame, group, told));
                }
            }
        }
    }
    return lessons;
}

} // namespace rw::desk
