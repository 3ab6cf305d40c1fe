// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/books.h"

#include "core/desk/lookups.h"
#include "core/desk/settings.h"
#include "core/pricing/quote.h"

#include <cassert>
#include <map>

namespace rw::desk {

namespace {
struct Span {
    Instant from;
    Instant to;
};

/// From the first moment of the first day to the first moment after the last, by the shop's clock.
Span spanOf(Transaction& ledger, const Period& period) {
    assert(period.first <= period.last);
    const OpeningHours hours = openingHours(ledger.shop());
    const CivilDate after = std::chrono::sys_days(period.last) + std::chrono::days(1);
    return {toInstant(hours, period.first, std::chrono::minutes(0)), toInstant(hours, after, std::chrono::minutes(0))};
}

Money stringCost(const StrungJob& job, Currency currency) {
    Money sum = Money::zero(currency);
    for (const StrungJob::Cut& cut : job.cuts) {
        sum += costOfCut(cut.landedCost, cut.nominal, cut.length);
    }
    return sum;
}
} // namespace

Period dayOf(CivilDate date) { return {date, date}; }

Period monthOf(CivilDate date) {
    const auto month = date.year() / date.month();
    return {month / 1, month / std::chrono::last};
}

CivilDate monthsOn(CivilDate date, int months) {
    const CivilDate wanted = date + std::chrono::months(months);
    return wanted.ok() ? wanted : monthOf(wanted).last;
}

Result<std::vector<OpenMatter>> openMatters(Transaction& ledger) { return ledger.reports().openMatters(); }

Result<Takings> takings(Transaction& ledger, const Period& period) {
    const Span span = spanOf(ledger, period);
    const Money nothing = Money::zero(ledger.shop().currency());
    Takings takings{.byWay = {}, .total = nothing};
    std::map<std::string, Money> byWay;
    for (const PaymentLine& payment : ledger.reports().payments(span.from, span.to)) {
        byWay.try_emplace(payment.way, nothing).first->second += payment.amount;
        takings.total += payment.amount;
    }
    takings.byWay.assign(byWay.begin(), byWay.end());
    return takings;
}

Result<Earned> earned(Transaction& ledger, const Period& period) {
    const Span span = spanOf(ledger, period);
    const Currency currency = ledger.shop().currency();
    Earned earned{.jobs = {},
                  .sum = Earnings::nothing(currency),
                  .labour = std::nullopt,
                  .scrap = {},
                  .scrapCost = Money::zero(currency)};
    for (const StrungJob& job : ledger.reports().strung(span.from, span.to)) {
        const Earnings earnings{withoutTax(job.charges, currency), stringCost(job, currency),
                                extrasCost(job.charges, currency)};
        earned.jobs.push_back({job.number, job.customer, job.frame, job.strung, earnings});
        earned.sum += earnings;
    }
    const ShopSettings settings = readSettings(ledger.shop());
    const auto jobs = static_cast<std::int64_t>(earned.jobs.size());
    earned.work = settings.minutesPerJob * jobs;
    if (settings.labourRate) {
        earned.labour = settings.labourRate->timesRatioHalfAway(earned.work.count(), 60);
    }
    for (const ScrappedEnd& end : ledger.reports().scrap(span.from, span.to)) {
        const Money cost = costOfCut(end.landedCost, end.nominal, end.length);
        earned.scrap.push_back({end.tag, end.string, end.length, cost});
        earned.scrapCost += cost;
    }
    return earned;
}

Result<Job> tellCustomer(Transaction& ledger, const TellCustomer& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return job;
    }
    if (const auto may = mayHappen(*job, JobEventKind::Collected); !may) {
        return tl::unexpected(may.error());
    }
    const auto how = wordsOf("how", command.how, kLongestMark);
    if (!how) {
        return tl::unexpected(how.error());
    }
    ledger.jobs().tell(command.job, *how, command.by);
    return job;
}

} // namespace rw::desk
