// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/holding_of.h"
#include "core/desk/lookups.h"
#include "core/desk/remnant_value_of.h"
#include "core/desk/settings.h"
#include "core/desk/stockroom.h"
#include "core/desk/usual_job.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>
#include <utility>

namespace rw::desk {

namespace {
/// A free packet is all there for the job that takes it.
Length usableOf(Transaction& ledger, const StringArticle& article, const std::vector<Lot>& lots,
                const std::vector<PlannedCut>& planned) {
    std::vector<Length> free;
    Length usable = Length::fromMillimetres(0);
    for (const Lot& lot : lots) {
        const Length left = std::max(uncommitted(lot, planned), Length::fromMillimetres(0));
        if (!lot.isFullPacket()) {
            free.push_back(left);
        } else if (isFreePacket(lot, planned)) {
            usable += left;
        }
    }
    return free.empty() ? usable
                        : usable + Length::fromMillimetres(static_cast<std::int64_t>(
                                       stock::usableMm(free, *remnantValueOf(ledger, article))));
}

bool areAlike(const Lot& one, const Lot& other) {
    return one.isFullPacket() && other.isFullPacket() && one.nominal == other.nominal && one.batch == other.batch &&
           one.price == other.price && one.length == other.length;
}

/// Puts a lot on the board, a full packet onto the pile that it belongs to.
void put(const Lot& lot, const std::vector<PlannedCut>& planned, Length perJob, std::vector<ShelfLot>& board) {
    const Length free = uncommitted(lot, planned);
    if (!lot.isFullPacket()) {
        board.push_back({lot, lot.length - free, wholeJobs(free, perJob)});
        return;
    }
    const bool isFree = isFreePacket(lot, planned);
    auto pile = std::ranges::find_if(board, [&](const ShelfLot& there) { return areAlike(there.lot, lot); });
    if (pile == board.end()) {
        board.push_back({lot, Length::fromMillimetres(0), {0, perJob}});
        pile = std::prev(board.end());
    } else if (isFree && pile->whole.jobs == 0) {
        pile->lot = lot;
    }
    ++pile->packets;
    pile->promised += lot.length - free;
    pile->whole.jobs += isFree ? 1 : 0;
}

/// One string of one owner, with what is planned of it.
ShelfString board(Transaction& ledger, StringArticle article, const std::vector<Lot>& lots,
                  const std::vector<PlannedCut>& planned, const std::optional<CustomerId>& owner,
                  const ShopSettings& settings) {
    std::vector<Lot> mine = lots;
    std::erase_if(mine, [&](const Lot& lot) { return lot.article != *article.id || lot.owner != owner; });
    std::vector<PlannedCut> promised = planned;
    std::erase_if(promised, [&](const PlannedCut& cut) { return cut.article != *article.id || cut.owner != owner; });
    ShelfString string{.article = std::move(article),
                       .lots = {},
                       .holding = {Length::fromMillimetres(0), Length::fromMillimetres(0)},
                       .perJob = Length::fromMillimetres(0),
                       .wholeJobsFree = 0};
    string.holding = holdingOf(mine, promised, *string.article.id, owner);
    string.perJob = usualJob(ledger, string.article, settings);
    for (const Lot& lot : mine) {
        put(lot, promised, string.perJob, string.lots);
    }
    string.wholeJobsFree = wholeJobsFree(mine, promised, string.perJob);
    string.usable = usableOf(ledger, string.article, mine, promised);
    return string;
}
} // namespace

Result<std::vector<ShelfString>> shelf(Transaction& ledger) {
    const ShopSettings settings = readSettings(ledger.shop());
    const std::vector<PlannedCut> planned = ledger.lots().plannedCuts();
    const std::vector<Lot> lots = ledger.lots().open();
    std::vector<ShelfString> strings;
    for (StringArticle& article : ledger.strings().all()) {
        strings.push_back(board(ledger, std::move(article), lots, planned, std::nullopt, settings));
    }
    return strings;
}

Result<std::vector<ShelfString>> keptForCustomers(Transaction& ledger) {
    const ShopSettings settings = readSettings(ledger.shop());
    const std::vector<PlannedCut> planned = ledger.lots().plannedCuts();
    std::vector<Lot> lots = ledger.lots().open();
    std::erase_if(lots, [](const Lot& lot) { return !lot.owner; });
    std::set<std::pair<CustomerId, StringArticleId>> kept;
    for (const Lot& lot : lots) {
        kept.emplace(*lot.owner, lot.article);
    }
    std::vector<ShelfString> strings;
    for (const auto& [owner, article] : kept) {
        auto string = articleOf(ledger, article);
        const auto customer = customerOf(ledger, owner);
        if (!string || !customer) {
            return tl::unexpected(string ? customer.error() : string.error());
        }
        strings.push_back(board(ledger, *std::move(string), lots, planned, owner, settings));
        strings.back().owner = customer->name;
    }
    std::ranges::stable_sort(strings, {}, [](const ShelfString& s) { return std::tie(s.owner, s.article.code); });
    return strings;
}

} // namespace rw::desk
