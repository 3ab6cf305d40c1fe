// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/price_lists.h"

#include "core/calendar/civil_date_text.h"
#include "core/desk/price_rules.h"
#include "core/desk/settings.h"

#include <algorithm>
#include <array>
#include <utility>

namespace rw::desk {

namespace {
tl::unexpected<Refusal> impossibleDate(CivilDate date, std::string_view expected) {
    return refuse(Code::ImpossibleValue,
                  {{"key", std::string("date")}, {"text", civilDateText(date)}, {"expected", std::string(expected)}});
}

tl::unexpected<Refusal> changedMeanwhile() {
    return refuse(Code::ChangedMeanwhile, {{"what", std::string("price list")}});
}

std::optional<PriceList> beginningOn(const std::vector<PriceList>& lists, CivilDate date) {
    const auto found = std::ranges::find(lists, date, &PriceList::validFrom);
    return found == lists.end() ? std::nullopt : std::optional(*found);
}

/// A list as the ledger has it now; ChangedMeanwhile when that is not what somebody saw.
Result<void> checkUnchanged(const std::vector<PriceList>& lists, const PriceList& seen) {
    const auto stored = std::ranges::find(lists, seen.id, &PriceList::id);
    if (stored == lists.end() || *stored != seen) {
        return changedMeanwhile();
    }
    return {};
}

Result<PriceList> added(Transaction& ledger, PriceList list) {
    list.id = 0;
    ledger.priceLists().add(list);
    return *beginningOn(ledger.priceLists().all(), list.validFrom);
}
} // namespace

Result<std::vector<DatedPrices>> datedPrices(Transaction& ledger, Instant now) {
    const CivilDate day = today(ledger.shop(), now);
    std::vector<DatedPrices> dated;
    Holds begun = Holds::Now; // the first that has begun is the one that holds
    for (PriceList& list : ledger.priceLists().all()) {
        const Holds holds = list.validFrom > day ? Holds::Later : std::exchange(begun, Holds::Past);
        dated.push_back({std::move(list), holds});
    }
    return dated;
}

Result<PriceList> pricesToBegin(Transaction& ledger, CivilDate from) {
    auto list = ledger.priceLists().validOn(from);
    if (!list) {
        return refuse(Code::Missing, {{"what", std::string("price list")}});
    }
    list->id = 0;
    list->validFrom = from;
    return *std::move(list);
}

Result<PriceList> addPriceList(Transaction& ledger, const PriceList& wanted, Instant now) {
    auto list = soundPrices(ledger, wanted);
    if (!list) {
        return list;
    }
    if (list->validFrom < today(ledger.shop(), now)) {
        return impossibleDate(list->validFrom, "today or later");
    }
    if (auto other = beginningOn(ledger.priceLists().all(), list->validFrom)) {
        list->id = other->id;
        return *other == *list
                   ? *std::move(other)
                   : Result<PriceList>(impossibleDate(list->validFrom, "a day on which no other list begins"));
    }
    return added(ledger, *std::move(list));
}

Result<PriceList> changePriceList(Transaction& ledger, const PriceList& before, const PriceList& wanted, Instant now) {
    auto sound = soundPrices(ledger, wanted);
    if (!sound) {
        return sound;
    }
    const CivilDate day = today(ledger.shop(), now);
    const auto inForce = ledger.priceLists().validOn(day);
    if (const auto unchanged = checkUnchanged(ledger.priceLists().all(), before); !unchanged) {
        return tl::unexpected<Refusal>(unchanged.error());
    }
    PriceList list = before;
    list.lines = std::move(sound->lines);
    list.taxRule = sound->taxRule;
    if (list.validFrom >= day) {
        ledger.priceLists().replaceLines(list);
        return list;
    }
    if (!inForce || inForce->id != before.id) {
        return changedMeanwhile();
    }
    list.validFrom = day;
    return added(ledger, std::move(list));
}

Result<void> dropPriceList(Transaction& ledger, const PriceList& before, Instant now) {
    if (const auto unchanged = checkUnchanged(ledger.priceLists().all(), before); !unchanged) {
        return unchanged;
    }
    if (before.validFrom <= today(ledger.shop(), now)) {
        return impossibleDate(before.validFrom, "later than today: people were quoted from it");
    }
    ledger.priceLists().remove(before.id);
    return {};
}

bool isSameThing(const PriceLine& one, const PriceLine& other) {
    return one.kind == other.kind && one.sport == other.sport && one.method == other.method &&
           one.article == other.article && one.label == other.label;
}

void putLine(PriceList& list, const PriceLine& line, const std::optional<PriceLine>& insteadOf) {
    const auto same = std::ranges::find_if(
        list.lines, [&](const PriceLine& other) { return insteadOf && isSameThing(*insteadOf, other); });
    if (same != list.lines.end()) {
        *same = line;
        return;
    }
    const auto last = std::find_if(list.lines.rbegin(), list.lines.rend(),
                                   [&](const auto& other) { return other.kind == line.kind; });
    list.lines.insert(last == list.lines.rend() ? list.lines.end() : last.base(), line);
}

StringPrices pricesOf(const PriceList& list, StringArticleId article) {
    StringPrices prices;
    for (const PriceLine& line : list.lines) {
        if (line.article != article) {
            continue;
        }
        prices.taxHundredthsPercent = line.taxHundredthsPercent;
        switch (line.kind) {
        case ChargeKind::FullBed:
            prices.fullBed = line.amount;
            break;
        case ChargeKind::HalfBed:
            prices.halfBed = line.amount;
            break;
        case ChargeKind::Packet:
            prices.packet = line.amount;
            break;
        default:
            break;
        }
    }
    return prices;
}

void setPricesOf(PriceList& list, StringArticleId article, const StringPrices& prices) {
    const auto half =
        prices.halfBed || !prices.fullBed ? prices.halfBed : std::optional(prices.fullBed->timesRatioHalfAway(1, 2));
    const std::array beds{std::pair(ChargeKind::FullBed, prices.fullBed), std::pair(ChargeKind::HalfBed, half),
                          std::pair(ChargeKind::Packet, prices.packet)};
    for (const auto& [kind, amount] : beds) {
        const PriceLine line{.kind = kind,
                             .sport = std::nullopt,
                             .method = std::nullopt,
                             .article = article,
                             .label = {},
                             .amount = amount.value_or(Money::zero(list.currency)),
                             .taxHundredthsPercent = prices.taxHundredthsPercent};
        if (amount) {
            putLine(list, line, line);
        } else {
            std::erase_if(list.lines, [&](const PriceLine& other) { return isSameThing(line, other); });
        }
    }
}

} // namespace rw::desk
