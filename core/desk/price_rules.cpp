// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/price_rules.h"

#include "core/desk/lookups.h"
#include "core/desk/price_lists.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <array>

namespace rw::desk {

namespace {
constexpr int kWholeTax = 10'000; ///< hundredths of a percent

tl::unexpected<Refusal> impossible(std::string_view key, std::string text, std::string_view expected) {
    return refuse(Code::ImpossibleValue,
                  {{"key", std::string(key)}, {"text", std::move(text)}, {"expected", std::string(expected)}});
}

std::string nameOf(const PriceLine& line) {
    return line.label.empty() ? std::string(chargeKindText(line.kind)) : line.label;
}

bool isOfString(ChargeKind kind) {
    return kind == ChargeKind::FullBed || kind == ChargeKind::HalfBed || kind == ChargeKind::Packet;
}

Result<void> checkAmount(const PriceLine& line, const Currency& currency) {
    if (line.amount.currency() != currency) {
        return refuse(Code::CurrencyMismatch, {{"left", line.amount.currency().code()}, {"right", currency.code()}});
    }
    if (line.amount.minor() < 0) {
        return impossible("amount", line.amount.text(), "nothing or more");
    }
    if (line.cost && line.cost->currency() != currency) {
        return refuse(Code::CurrencyMismatch, {{"left", line.cost->currency().code()}, {"right", currency.code()}});
    }
    if (line.cost && line.cost->minor() < 0) {
        return impossible("cost", line.cost->text(), "nothing or more");
    }
    if (line.taxHundredthsPercent < 0 || line.taxHundredthsPercent > kWholeTax) {
        return refuse(Code::OutOfRange, {{"what", std::string("tax")},
                                         {"text", decimalText(line.taxHundredthsPercent, 2)},
                                         {"lowest", std::string("0")},
                                         {"highest", std::string("100")}});
    }
    return {};
}

Result<void> checkThing(Transaction& ledger, const PriceLine& line) {
    if (line.kind == ChargeKind::Discount || line.kind == ChargeKind::Tax) {
        return impossible("line", nameOf(line), "labour, string, an extra or rush");
    }
    if (line.cost && line.kind != ChargeKind::Extra) {
        return impossible("line", nameOf(line), "an extra to have a cost of its own");
    }
    if (line.article && !isOfString(line.kind)) {
        return impossible("line", nameOf(line), "for every string");
    }
    if (line.article) {
        const auto article = articleOf(ledger, *line.article);
        return article ? Result<void>() : tl::unexpected(article.error());
    }
    return {};
}

Result<std::string> labelAsKept(const PriceLine& line) {
    return line.kind == ChargeKind::Extra ? wordsOf("extra", line.label, kLongestName)
                                          : maybeWordsOf("extra", line.label, 0);
}

Result<void> checkEachOnce(const PriceList& list) {
    for (auto line = list.lines.begin(); line != list.lines.end(); ++line) {
        const auto same = [&](const PriceLine& other) { return isSameThing(*line, other); };
        if (std::any_of(list.lines.begin(), line, same)) {
            return impossible("line", nameOf(*line), "given once");
        }
    }
    return {};
}

constexpr std::array kSports{Sport::Tennis, Sport::Squash, Sport::Badminton};
constexpr std::array kMethods{Method::TwoPiece, Method::OnePiece};

Result<void> checkWork(const PriceList& list) {
    for (const ChargeKind kind : {ChargeKind::Labour, ChargeKind::OwnStringLabour, ChargeKind::Rush}) {
        for (const Sport sport : kSports) {
            for (const Method method : kMethods) {
                if (list.find(kind, sport, method) == nullptr) {
                    return refuse(Code::Missing, {{"what", std::string("price")},
                                                  {"kind", std::string(chargeKindText(kind))},
                                                  {"sport", std::string(sportText(sport))}});
                }
            }
        }
    }
    return {};
}

Result<void> checkStrings(Transaction& ledger, const PriceList& list) {
    for (const StringArticle& article : ledger.strings().all()) {
        const auto has = [&](ChargeKind kind) {
            return list.find(kind, article.sport, Method::TwoPiece, article.id) != nullptr;
        };
        if (!article.retired && !has(ChargeKind::FullBed) && !has(ChargeKind::Packet)) {
            return refuse(Code::Missing, {{"what", std::string("price")},
                                          {"kind", std::string(chargeKindText(ChargeKind::FullBed))},
                                          {"string", article.name}});
        }
    }
    return {};
}
} // namespace

Result<PriceList> soundPrices(Transaction& ledger, const PriceList& wanted) {
    PriceList list = wanted;
    list.currency = ledger.shop().currency();
    for (PriceLine& line : list.lines) {
        auto label = labelAsKept(line);
        if (!label) {
            return tl::unexpected<Refusal>(label.error());
        }
        line.label = *std::move(label);
        for (const auto& sound : {checkAmount(line, list.currency), checkThing(ledger, line)}) {
            if (!sound) {
                return tl::unexpected<Refusal>(sound.error());
            }
        }
    }
    for (const auto& sound : {checkEachOnce(list), checkWork(list), checkStrings(ledger, list)}) {
        if (!sound) {
            return tl::unexpected<Refusal>(sound.error());
        }
    }
    return list;
}

} // namespace rw::desk
