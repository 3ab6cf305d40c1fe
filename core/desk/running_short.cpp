// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/running_short.h"

#include "core/desk/price_lists.h"
#include "core/desk/settings.h"
#include "core/pricing/quote.h"
#include "core/stock/demand_days.h"
#include "core/stock/order_point.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace rw::desk {

namespace {
using std::chrono::days;
using std::chrono::sys_days;

/// Sixteen times the 90 days after which half is forgotten: what lies further back counts 1 in 65 536.
constexpr days kLookBack{16 * 90};
constexpr double kHoldingRate = 0.20; ///< of its price a year, what keeping a reel costs
constexpr double kDaysOfAYear = 365;

/// Who wanted a string on which day.
struct History {
    std::optional<sys_days> first; ///< the day of its first lot or of the first who wanted it
    std::map<sys_days, double> jobsOn;
    bool wanted = false; ///< by anybody, today too
};

std::map<StringArticleId, History> historiesOf(Transaction& ledger, const OpeningHours& hours, sys_days today) {
    std::map<StringArticleId, History> histories;
    const sys_days from = today - kLookBack;
    for (const StringWish& wish : ledger.supply().wishes(toInstant(hours, from, std::chrono::minutes(0)))) {
        History& history = histories[wish.article];
        const sys_days day = std::max(from, sys_days(localDate(hours, wish.at)));
        history.first = std::min(day, history.first.value_or(day));
        if (wish.halfBeds > 0) {
            history.wanted = true;
            history.jobsOn[day] += wish.halfBeds / 2.0;
        }
    }
    return histories;
}

/// Each day from the first to yesterday.
stock::DailyJobs daily(const History& history, sys_days today) {
    stock::DailyJobs jobs;
    auto next = history.jobsOn.begin();
    for (sys_days day = *history.first; day < today; day += days(1)) {
        const bool hadJobs = next != history.jobsOn.end() && next->first == day;
        jobs.push_back(hadJobs ? (next++)->second : 0);
    }
    return jobs;
}

class Forecaster {
public:
    Forecaster(Transaction& ledger, Instant now, const ShopSettings& settings)
        : m_today(localDate(settings.hours, now))
        , m_prices(ledger.priceLists().validOn(m_today))
        , m_histories(historiesOf(ledger, settings.hours, m_today)) {
        for (LastSupply& supply : ledger.supply().lastSupplies()) {
            m_supplies.emplace(supply.article, std::move(supply));
        }
        std::vector<stock::DailyJobs> all;
        for (const auto& [article, history] : m_histories) {
            all.push_back(daily(history, m_today));
        }
        m_others = stock::pooled(all);
        m_service.dailyRatio = m_others ? m_others->dailyRatio : 1;
    }

    [[nodiscard]] StringAhead ahead(const ShelfString& string) const {
        StringAhead ahead;
        ahead.today = m_today;
        ahead.service = m_service.chance;
        ahead.jobsLeft = static_cast<int>(std::max<std::int64_t>(0, string.wholeJobsFree));
        if (!m_others) {
            return ahead;
        }
        const auto found = m_histories.find(*string.article.id);
        const bool wanted = found != m_histories.end() && found->second.wanted;
        const stock::Demand demand =
            stock::demandAfter(wanted ? daily(found->second, m_today) : stock::DailyJobs{}, *m_others);
        ahead.jobsPerDay = demand.jobsPerDay();
        ahead.onRequest = !wanted || sellsTooSeldom(string, ahead.jobsPerDay);
        ahead.s = stock::jobsUntilDelivery(demand, m_leadTimes, m_service);
        ahead.chanceOfNone = 1 - stock::chanceUntilDelivery(ahead.jobsLeft, demand, m_leadTimes, m_service.dailyRatio);
        ahead.runOut = stock::runOutDates(demand, ahead.jobsLeft, m_today);
        ahead.demand = demand;
        return ahead;
    }

private:
    /// Unless what a reel cost and what a job of it brings are both known, a string that is wanted is kept.
    [[nodiscard]] bool sellsTooSeldom(const ShelfString& string, double jobsPerDay) const {
        const auto supply = m_supplies.find(*string.article.id);
        if (!m_prices || supply == m_supplies.end() || supply->second.price.minor() <= 0) {
            return false;
        }
        const StringPrices prices = pricesOf(*m_prices, *string.article.id);
        if (!prices.fullBed) {
            return false;
        }
        const Money tax = taxOf(*prices.fullBed, prices.taxHundredthsPercent, m_prices->taxRule);
        const bool included = m_prices->taxRule == TaxRule::Included;
        const Money net = included ? *prices.fullBed - tax : *prices.fullBed;
        const auto landed = static_cast<double>(supply->second.landedCost().minor());
        const double jobsOfReel = supply->second.nominal.metres() / string.perJob.metres();
        const double margin = static_cast<double>(net.minor()) - landed / jobsOfReel;
        return margin > 0 && stock::isOnRequest(jobsPerDay * kDaysOfAYear, kHoldingRate, landed, margin);
    }

    CivilDate m_today;
    std::optional<PriceList> m_prices;
    std::map<StringArticleId, History> m_histories;
    std::map<StringArticleId, LastSupply> m_supplies;
    std::optional<stock::PooledDemand> m_others;
    stock::LeadTimes m_leadTimes{{}};
    stock::Service m_service;
};

/// What is to be done first; a day that nobody can tell lies behind all days.
auto urgency(const ShelfString& string) {
    const auto likely = string.ahead->runOut.p50;
    const bool soon = string.runningShort() && likely;
    return std::tuple(!string.runningShort(), !soon, soon ? sys_days(*likely) : sys_days());
}
} // namespace

Result<std::vector<ShelfString>> shelfAhead(Transaction& ledger, Instant now) {
    auto strings = shelf(ledger);
    if (!strings) {
        return strings;
    }
    const ShopSettings settings = readSettings(ledger.shop());
    const Forecaster forecaster(ledger, now, settings);
    for (ShelfString& string : *strings) {
        string.ahead = forecaster.ahead(string);
        const bool below = isRunningShort(string.wholeJobsFree, settings.runningShortJobs);
        const bool atOrderPoint = string.ahead->isKnown() &&
                                  stock::isRunningShort(static_cast<double>(string.wholeJobsFree), string.ahead->s);
        string.ahead->runningShort = !string.article.retired && !string.ahead->onRequest && (below || atOrderPoint);
    }
    std::ranges::stable_sort(*strings, {}, urgency);
    return strings;
}

} // namespace rw::desk
