// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/sold_string.h"

#include "core/desk/lookups.h"
#include "core/desk/settings.h"
#include "core/strings/gauge.h"
#include "core/units/decimal.h"

#include <algorithm>

namespace rw::desk {

namespace {
constexpr std::int64_t kLightest = 100; ///< milligrams a metre; a string of 0.6 mm weighs some 400
constexpr std::int64_t kHeaviest = 10'000;
constexpr std::int64_t kLongestGaugeName = 10;
constexpr Length kShortestPacket = Length::fromMillimetres(1'000);
constexpr Length kLongestPacket = Length::fromMillimetres(50'000); ///< four beds; what holds more is a reel

Result<PriceList> todaysList(Transaction& ledger, Instant now) {
    const auto list = ledger.priceLists().validOn(today(ledger.shop(), now));
    if (!list) {
        return refuse(Code::Missing, {{"what", "price list"}});
    }
    return *list;
}

/// What the list says of one string: its beds and its packet.
bool isPriceOf(const PriceLine& line, StringArticleId article) {
    return line.article == article &&
           (line.kind == ChargeKind::FullBed || line.kind == ChargeKind::HalfBed || line.kind == ChargeKind::Packet);
}

Money halfOf(const SoldString& wanted) { return wanted.halfBed.value_or(wanted.fullBed->timesRatioHalfAway(1, 2)); }

/// Puts the string's prices on the list in place of those it has there. Its tax stays what it was, or is what the list
/// says of other strings.
void setPrices(PriceList& list, StringArticleId article, const SoldString& wanted) {
    const auto taxOfBeds = [&](auto which) {
        const auto line = std::ranges::find_if(list.lines, which);
        return line == list.lines.end() ? std::nullopt : std::optional(line->taxHundredthsPercent);
    };
    const auto own = taxOfBeds([&](const PriceLine& line) { return isPriceOf(line, article); });
    const auto others = taxOfBeds([](const PriceLine& line) { return line.kind == ChargeKind::FullBed; });
    std::erase_if(list.lines, [&](const PriceLine& line) { return isPriceOf(line, article); });
    std::vector<std::pair<ChargeKind, Money>> prices = {{ChargeKind::FullBed, *wanted.fullBed},
                                                        {ChargeKind::HalfBed, halfOf(wanted)}};
    if (wanted.packet) {
        prices.emplace_back(ChargeKind::Packet, *wanted.packet);
    }
    for (const auto& [kind, amount] : prices) {
        list.lines.push_back({.kind = kind,
                              .sport = std::nullopt,
                              .method = std::nullopt,
                              .article = article,
                              .label = {},
                              .amount = amount,
                              .taxHundredthsPercent = own ? *own : others.value_or(0)});
    }
}

Result<void> checkPrices(const SoldString& wanted, const Currency& currency) {
    if (!wanted.fullBed) {
        return refuse(Code::Missing, {{"what", "price"}, {"kind", "full-bed"}, {"string", wanted.article.name}});
    }
    for (const auto& amount : {wanted.fullBed, wanted.halfBed, wanted.packet}) {
        if (amount && amount->currency() != currency) {
            return refuse(Code::CurrencyMismatch, {{"left", amount->currency().code()}, {"right", currency.code()}});
        }
        if (amount && amount->minor() < 0) {
            return refuse(Code::ImpossibleValue,
                          {{"key", "price"}, {"text", amount->text()}, {"expected", "nothing or more"}});
        }
    }
    return {};
}

Result<void> outOfRange(std::string_view what, std::string text, std::string_view lowest, std::string_view highest) {
    return refuse(Code::OutOfRange, {{"what", std::string(what)},
                                     {"text", std::move(text)},
                                     {"lowest", std::string(lowest)},
                                     {"highest", std::string(highest)}});
}

Result<void> checkMeasures(const StringArticle& article) {
    if (article.diameterMicrometres < kThinnestString || article.diameterMicrometres > kThickestString) {
        return outOfRange("thickness", decimalText(article.diameterMicrometres, 3), "0.4 mm", "2 mm");
    }
    const auto weight = article.milligramsPerMetre;
    if (weight && (*weight < kLightest || *weight > kHeaviest)) {
        return outOfRange("weight", decimalText(*weight, 3), "0.1 g/m", "10 g/m");
    }
    if (article.packet && (*article.packet < kShortestPacket || *article.packet > kLongestPacket)) {
        return outOfRange("packet", article.packet->text(), "1 m", "50 m");
    }
    return {};
}

/// The article as it is kept: words without space around them, and a gauge name where nobody gave one.
Result<StringArticle> soundArticle(const StringArticle& wanted) {
    const auto code = wordsOf("code", wanted.code, kLongestTag);
    const auto name = wordsOf("name", wanted.name, kLongestFrameName);
    const auto colour = maybeWordsOf("colour", wanted.colour, kLongestMark);
    const auto gauge = maybeWordsOf("gauge", wanted.gaugeName, kLongestGaugeName);
    for (const auto* words : {&code, &name, &colour, &gauge}) {
        if (!*words) {
            return tl::unexpected(words->error());
        }
    }
    if (const auto measures = checkMeasures(wanted); !measures) {
        return tl::unexpected(measures.error());
    }
    StringArticle article = wanted;
    article.code = *code;
    article.name = *name;
    article.colour = *colour;
    article.gaugeName = gauge->empty() ? std::string(nearestGaugeName(wanted.diameterMicrometres)) : *gauge;
    return article;
}

struct Sound {
    StringArticle article;
    PriceList prices;
};

Result<Sound> soundString(Transaction& ledger, const SoldString& wanted, Instant now) {
    auto article = soundArticle(wanted.article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    auto prices = todaysList(ledger, now);
    if (!prices) {
        return tl::unexpected(prices.error());
    }
    if (const auto sound = checkPrices(wanted, prices->currency); !sound) {
        return tl::unexpected(sound.error());
    }
    return Sound{*std::move(article), *std::move(prices)};
}

/// A list that begins later and does not know the string yet must not leave the shop without a price for it.
void setPricesOnLaterLists(Transaction& ledger, StringArticleId article, const SoldString& wanted,
                           CivilDate after) {
    for (PriceList& list : ledger.priceLists().all()) {
        const bool known =
            std::ranges::any_of(list.lines, [&](const PriceLine& line) { return isPriceOf(line, article); });
        if (list.validFrom > after && !known) {
            setPrices(list, article, wanted);
            ledger.priceLists().replaceLines(list);
        }
    }
}
} // namespace

Result<SoldString> soldString(Transaction& ledger, StringArticleId id, Instant now) {
    auto article = articleOf(ledger, id);
    if (!article) {
        return tl::unexpected(article.error());
    }
    SoldString sold{*std::move(article), std::nullopt, std::nullopt};
    if (const auto list = todaysList(ledger, now)) {
        for (const PriceLine& line : list->lines) {
            if (isPriceOf(line, id)) {
                (line.kind == ChargeKind::FullBed   ? sold.fullBed
                 : line.kind == ChargeKind::HalfBed ? sold.halfBed
                                                    : sold.packet) = line.amount;
            }
        }
    }
    return sold;
}

Result<StringArticle> addString(Transaction& ledger, const SoldString& wanted, Instant now) {
    auto sound = soundString(ledger, wanted, now);
    if (!sound) {
        return tl::unexpected(sound.error());
    }
    StringArticle& article = sound->article;
    const auto strings = ledger.strings().all();
    if (std::ranges::find(strings, article.code, &StringArticle::code) != strings.end()) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "code"}, {"text", article.code}, {"expected", "a code that no other string has"}});
    }
    article.id = ledger.strings().add(article);
    setPrices(sound->prices, *article.id, wanted);
    ledger.priceLists().replaceLines(sound->prices);
    setPricesOnLaterLists(ledger, *article.id, wanted, today(ledger.shop(), now));
    return article;
}

Result<StringArticle> changeString(Transaction& ledger, const SoldString& wanted, Instant now) {
    const auto before = articleOf(ledger, *wanted.article.id);
    if (!before) {
        return before;
    }
    SoldString changed = wanted;
    changed.article.code = before->code;
    auto sound = soundString(ledger, changed, now);
    if (!sound) {
        return tl::unexpected(sound.error());
    }
    if (const auto updated = ledger.strings().update(sound->article); !updated) {
        return tl::unexpected(updated.error());
    }
    ++sound->article.version;
    PriceList& prices = sound->prices;
    setPrices(prices, *before->id, wanted);
    if (prices.validFrom == today(ledger.shop(), now)) {
        ledger.priceLists().replaceLines(prices);
    } else { // what was charged before today is read off the older list
        prices.validFrom = today(ledger.shop(), now);
        ledger.priceLists().add(prices);
    }
    setPricesOnLaterLists(ledger, *before->id, wanted, today(ledger.shop(), now));
    return sound->article;
}

} // namespace rw::desk
