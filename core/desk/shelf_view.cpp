// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/holding_of.h"
#include "core/desk/settings.h"
#include "core/desk/stockroom.h"
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

Length perJobOf(Transaction& ledger, const StringArticle& article, const ShopSettings& settings) {
    const std::vector<Length> takes = ledger.jobs().lastTakes(*article.id, kJobsCounted);
    if (takes.empty()) {
        return usualPlan(article, settings);
    }
    const Length sum = std::accumulate(takes.begin(), takes.end(), Length::fromMillimetres(0));
    return Length::roundedUp(static_cast<double>(sum.millimetres()) / static_cast<double>(takes.size()));
}
} // namespace

Result<std::vector<ShelfString>> shelf(Transaction& ledger) {
    const ShopSettings settings = readSettings(ledger.shop());
    std::vector<PlannedCut> planned = ledger.lots().plannedCuts();
    std::erase_if(planned, [](const PlannedCut& cut) { return cut.owner.has_value(); });
    std::vector<Lot> lots = ledger.lots().open();
    std::erase_if(lots, [](const Lot& lot) { return lot.owner.has_value(); });

    std::vector<ShelfString> strings;
    for (StringArticle& article : ledger.strings().all()) {
        std::vector<Lot> mine = lots;
        std::erase_if(mine, [&](const Lot& lot) { return lot.article != *article.id; });
        std::vector<PlannedCut> promised = planned;
        std::erase_if(promised, [&](const PlannedCut& cut) { return cut.article != *article.id; });

        ShelfString string{.article = std::move(article),
                           .lots = {},
                           .holding = {Length::fromMillimetres(0), Length::fromMillimetres(0)},
                           .perJob = Length::fromMillimetres(0),
                           .wholeJobsFree = 0,
                           .runningShort = false};
        string.holding = holdingOf(mine, promised, *string.article.id, std::nullopt);
        string.perJob = perJobOf(ledger, string.article, settings);
        for (const Lot& lot : mine) {
            const Length free = uncommitted(lot, promised);
            string.lots.push_back({lot, lot.length - free, wholeJobs(free, string.perJob)});
        }
        string.wholeJobsFree = wholeJobsFree(mine, promised, string.perJob);
        string.runningShort = isRunningShort(string.wholeJobsFree, settings.runningShortJobs);
        strings.push_back(std::move(string));
    }
    return strings;
}

} // namespace rw::desk
