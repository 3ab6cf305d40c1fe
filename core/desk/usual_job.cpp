// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/usual_job.h"

#include "core/length/cut_plan.h"

#include <algorithm>
#include <numeric>

namespace rw::desk {

namespace {
constexpr int kJobsCounted = 20; ///< what a job takes drifts with the frames that come in; this is about a month

/// What a job of the sport takes of a string before anything was strung with it: the model's plan of the usual head.
Length usualPlan(const StringArticle& article, const ShopSettings& settings) {
    length::CutRequest request = length::defaultRequest(article.sport);
    request.mains.material = request.crosses.material = article.material;
    request.mains.diameterMm = request.crosses.diameterMm = article.diameterMm();
    request.tapeStep = settings.tapeStep;
    request.ceiling = settings.ceiling;
    const auto plan = length::planCut(request);
    Length total = Length::fromMillimetres(0);
    if (plan) {
        for (const length::PiecePlan& piece : plan->pieces) {
            total += piece.cut;
        }
    }
    return std::max(total, settings.tapeStep);
}

} // namespace

Length usualJob(Transaction& ledger, const StringArticle& article, const ShopSettings& settings) {
    const std::vector<Length> takes = ledger.jobs().lastTakes(*article.id, kJobsCounted);
    if (takes.empty()) {
        return usualPlan(article, settings);
    }
    const Length sum = std::accumulate(takes.begin(), takes.end(), Length::fromMillimetres(0));
    return Length::roundedUp(static_cast<double>(sum.millimetres()) / static_cast<double>(takes.size()));
}

} // namespace rw::desk
