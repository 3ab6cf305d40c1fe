// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/own_set.h"

#include "core/length/recommended_cut.h"

#include <algorithm>

namespace rw::length {

namespace {
/// A length printed on a packet is right within 1 %, until it was measured once; as everywhere two standard deviations.
constexpr double kPrintedSpread = 0.01 / 2;

double asMm(Length length) { return static_cast<double>(length.millimetres()); }

void blurAsPrinted(std::vector<Need>& parts) {
    std::ranges::transform(parts, parts.begin(), [](const Need& need) { return need.blurred(kPrintedSpread); });
}

Length withClamp(Length set, const Ends& ends) { return set + Length::roundedUp(ends.reachMm); }

/// Above a quarter is still tight where a starting clamp and a bridge string, which save the last reach, bring it
/// below.
PacketVerdict judge(std::span<const Need> parts, Length set, const Ends& ends) {
    const PacketVerdict verdict = judgePacket(parts, set);
    const bool saved =
        verdict == PacketVerdict::NotEnough && judgePacket(parts, withClamp(set, ends)) != PacketVerdict::NotEnough;
    return saved ? PacketVerdict::Tight : verdict;
}

double worstChance(std::span<const Need> parts, std::span<const Length> shares) {
    double worst = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        worst = std::max(worst, parts[i].chanceAbove(asMm(shares[i])));
    }
    return worst;
}

SetWay wayOf(SetUse use, std::span<const Need> parts, std::vector<Length> shares) {
    const double worst = worstChance(parts, shares);
    return {use, std::move(shares), worst};
}

/// The set in parts that are as nearly equally safe as the tape allows; what fills no tape step goes to the last.
std::vector<Length> evenShares(std::span<const Need> parts, const CutRequest& request) {
    std::vector<Length> shares = shareOfPacket(parts, *request.set, request.tapeStep);
    shares.back() = *request.set - shares.front();
    return shares;
}

/// Every way in which a set becomes these parts, the safest for the worse-off part first.
std::vector<SetWay> waysOf(std::span<const Need> parts, bool onePiece, const CutRequest& request) {
    const Length set = *request.set;
    const std::vector<Length> even = evenShares(parts, request);
    if (onePiece) {
        return {wayOf(SetUse::Whole, parts, even)};
    }
    const Length half = Length::fromMillimetres(set.millimetres() / 2);
    const double ceiling = request.ceiling / static_cast<double>(parts.size());
    const Length safe = Length::roundedUp(parts.front().exceededWith(ceiling)).roundedUpTo(request.tapeStep);
    const Length mains = std::min(safe, even.front());
    std::vector<SetWay> ways{wayOf(SetUse::Halved, parts, {half, set - half}),
                             wayOf(SetUse::MainsAndRest, parts, {mains, set - mains})};
    std::ranges::stable_sort(ways, {}, &SetWay::chanceWorst);
    return ways;
}
} // namespace

std::string_view setUseText(SetUse use) {
    switch (use) {
    case SetUse::Halved:
        return "halved";
    case SetUse::MainsAndRest:
        return "mains and rest";
    case SetUse::Whole:
        return "whole";
    }
    return {};
}

PacketVerdict judgeSet(std::vector<Need> parts, Length set, bool measured, const Ends& ends) {
    if (!measured) {
        blurAsPrinted(parts);
    }
    return judge(parts, set, ends);
}

void cutFromSet(std::vector<Draft>& drafts, const CutRequest& request, CutPlan& plan) {
    const Length set = *request.set;
    if (!request.setMeasured) {
        for (Draft& draft : drafts) {
            blurAsPrinted(draft.parts);
        }
    }
    const std::vector<Need> parts = allParts(drafts);
    SetJudgement judgement{.length = set,
                           .verdict = judge(parts, set, request.ends),
                           .chanceNotEnough = chanceAllExceed(parts, set),
                           .enoughFrom = enoughFrom(parts),
                           .chanceWithClamp = chanceAllExceed(parts, withClamp(set, request.ends)),
                           .ways = waysOf(parts, plan.method == Method::OnePiece, request),
                           .alternative = {}};
    shareOut(drafts, judgement.ways.front().shares, plan.headLengthMm);
    const SetWay& way = judgement.ways.front();
    plan.why.push_back({Why::Kind::SetJudged, std::string(packetVerdictText(judgement.verdict)), asMm(set),
                        judgement.chanceNotEnough});
    plan.why.push_back(
        {Why::Kind::SetUsed, std::string(setUseText(way.use)), asMm(way.shares.front()), way.chanceWorst});
    plan.set = std::move(judgement);
}

} // namespace rw::length
