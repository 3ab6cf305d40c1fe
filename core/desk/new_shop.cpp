// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/new_shop.h"

#include "core/desk/lookups.h"
#include "core/desk/settings.h"

namespace rw::desk {

namespace {
constexpr int kFinestStep = 1;
constexpr int kCoarsestStep = 1000;

tl::unexpected<Refusal> outOfRange(std::string_view what, std::int64_t value, std::int64_t lowest,
                                   std::int64_t highest) {
    return refuse(
        Code::OutOfRange,
        {{"what", std::string(what)}, {"text", std::to_string(value)}, {"lowest", lowest}, {"highest", highest}});
}

tl::unexpected<Refusal> mismatch(const Currency& left, const Currency& right) {
    return refuse(Code::CurrencyMismatch, {{"left", left.code()}, {"right", right.code()}});
}

PriceLine priceOf(ChargeKind kind, const Money& amount) {
    return {.kind = kind,
            .sport = std::nullopt,
            .method = std::nullopt,
            .article = std::nullopt,
            .label = {},
            .amount = amount};
}
} // namespace

Result<void> setUpShop(Transaction& ledger, const NewShop& wanted, Instant now) {
    Shop& shop = ledger.shop();
    if (!shop.staff().empty()) {
        return refuse(Code::ImpossibleValue, {{"key", std::string("ledger")},
                                              {"text", shop.staff().front().name},
                                              {"expected", std::string("a ledger in which nobody works yet")}});
    }
    const auto name = maybeWordsOf("shop name", wanted.name, kLongestName);
    if (!name) {
        return tl::unexpected<Refusal>(name.error());
    }
    const auto person = wordsOf("name", wanted.person, kLongestPlaceName);
    if (!person) {
        return tl::unexpected<Refusal>(person.error());
    }
    const auto machine = wordsOf("machine", wanted.machine, kLongestPlaceName);
    if (!machine) {
        return tl::unexpected<Refusal>(machine.error());
    }
    if (wanted.stepHundredths < kFinestStep || wanted.stepHundredths > kCoarsestStep) {
        return outOfRange("step", wanted.stepHundredths, kFinestStep, kCoarsestStep);
    }
    const Currency currency = wanted.labour.currency();
    for (const auto& amount : {wanted.ownStringLabour, wanted.rush}) {
        if (amount && !(amount->currency() == currency)) {
            return mismatch(amount->currency(), currency);
        }
    }
    if (!(currency == shop.currency())) {
        if (auto changed = shop.setCurrency(currency); !changed) {
            return changed;
        }
    }
    if (!name->empty()) {
        shop.set(setting::kShopName, *name);
    }
    if (!wanted.timeZone.empty()) {
        shop.set(setting::kTimeZone, wanted.timeZone);
    }
    shop.add(StaffMember{std::nullopt, *person});
    shop.add(
        Machine{.id = std::nullopt, .name = *machine, .unit = wanted.unit, .stepHundredths = wanted.stepHundredths});

    PriceList prices{.id = 0,
                     .validFrom = today(shop, now),
                     .currency = currency,
                     .taxRule = TaxRule::Included,
                     .lines = {}};
    prices.lines.push_back(priceOf(ChargeKind::Labour, wanted.labour));
    prices.lines.push_back(priceOf(ChargeKind::OwnStringLabour, wanted.ownStringLabour.value_or(wanted.labour)));
    prices.lines.push_back(priceOf(ChargeKind::Rush, wanted.rush.value_or(Money::zero(currency))));
    ledger.priceLists().add(prices);
    return {};
}

} // namespace rw::desk
