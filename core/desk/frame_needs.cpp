// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/frame_needs.h"

#include "core/desk/lookups.h"
#include "core/length/need.h"

#include <algorithm>
#include <cmath>

namespace rw::desk {

namespace {
NeedStory storyOf(const NeedGroup& group, std::span<const ToldNeed> told) {
    NeedStory story{.group = group, .predictedMm = 0, .biasMm = 0, .steps = {}};
    std::vector<ToldNeed> cuts;
    std::ranges::copy_if(told, std::back_inserter(cuts), [&](const ToldNeed& need) { return need.group == group; });
    std::ranges::reverse(cuts); // they are told newest first
    story.predictedMm = cuts.back().predictedMm;
    const length::Belief bias = learntOf(told, group).shopBias;
    const length::Belief before = length::groupBelief(bias, cuts.back().materialSpread);
    story.biasMm = story.predictedMm * std::exp(bias.mean);
    std::vector<length::Observation> seen;
    for (ToldNeed& cut : cuts) {
        seen.push_back(cut.seen);
        const length::Need need = length::Need::learned(story.predictedMm, before, seen);
        story.steps.push_back({.told = std::move(cut),
                               .lowMm = story.predictedMm * std::exp(seen.back().low),
                               .highMm = story.predictedMm * std::exp(seen.back().high),
                               .learnedMm = need.medianMm(),
                               .learnedSdMm = need.sdMm()});
    }
    return story;
}

std::optional<length::CutPlan> headOf(const FrameModel& frame) {
    length::CutRequest request = length::defaultRequest(frame.sport);
    request.hoop = frame.hoop;
    request.pattern = frame.pattern;
    request.method = Method::TwoPiece;
    request.route = std::nullopt;
    auto plan = length::planCut(request);
    return plan ? std::optional(*std::move(plan)) : std::nullopt;
}
} // namespace

Result<FrameNeeds> frameNeeds(Transaction& ledger, FrameModelId id) {
    auto frame = frameOf(ledger, id);
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    const std::vector<ToldNeed> told = toldFor(ledger, *frame, ledger.strings().all(), readSettings(ledger.shop()));
    std::vector<NeedGroup> groups;
    for (const ToldNeed& need : told) {
        if (need.group.frame == id && std::ranges::find(groups, need.group) == groups.end()) {
            groups.push_back(need.group);
        }
    }
    FrameNeeds needs{.frame = *std::move(frame), .head = std::nullopt, .stories = {}};
    needs.head = headOf(needs.frame);
    for (const NeedGroup& group : groups) {
        needs.stories.push_back(storyOf(group, told));
    }
    std::ranges::stable_sort(needs.stories, std::greater<>(),
                             [](const NeedStory& story) { return story.steps.size(); });
    return needs;
}

} // namespace rw::desk
