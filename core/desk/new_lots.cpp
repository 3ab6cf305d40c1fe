// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/new_lots.h"

#include "core/desk/lookups.h"
#include "core/desk/settings.h"

#include <algorithm>
#include <charconv>

namespace rw::desk {

namespace {
constexpr Length kShortestNew = Length::fromMillimetres(1'000);
constexpr std::int64_t kLongestBatch = 80;

/// The highest n of the open lots that are called like "K-n".
std::int64_t highestNumber(Transaction& ledger, const StringArticle& article) {
    std::int64_t highest = 0;
    const std::string begin = article.code + "-";
    for (const Lot& lot : ledger.lots().open(*article.id)) {
        std::int64_t number = 0;
        const char* const end = lot.tag.data() + lot.tag.size();
        if (lot.tag.starts_with(begin) && std::from_chars(lot.tag.data() + begin.size(), end, number).ptr == end) {
            highest = std::max(highest, number);
        }
    }
    return highest;
}
} // namespace

std::string NextTags::next(const StringArticle& article) {
    const auto place = m_last.try_emplace(*article.id, -1).first;
    if (place->second < 0) {
        place->second = highestNumber(m_ledger, article);
    }
    std::string tag;
    do {
        tag = article.code + "-" + std::to_string(++place->second);
    } while (m_ledger.lots().byTag(tag));
    return tag;
}

Result<std::string> NextTags::of(const StringArticle& article, std::string_view typed) {
    auto tag = maybeWordsOf("tag", typed, kLongestTag);
    if (!tag) {
        return tag;
    }
    if (tag->empty()) {
        return next(article);
    }
    if (m_ledger.lots().byTag(*tag)) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "tag"}, {"text", *tag}, {"expected", "a tag that no other lot has"}});
    }
    return tag;
}

Result<void> checkNominal(Length nominal) { return checkLength("length", nominal, kShortestNew); }

Result<void> checkPrice(std::string_view what, const Money& price, const Currency& currency) {
    if (price.currency() != currency) {
        return refuse(Code::CurrencyMismatch, {{"left", price.currency().code()}, {"right", currency.code()}});
    }
    if (price.minor() < 0) {
        return refuse(Code::ImpossibleValue,
                      {{"key", std::string(what)}, {"text", price.text()}, {"expected", "nothing or more"}});
    }
    return {};
}

Result<std::string> checkBatch(std::string_view typed) { return maybeWordsOf("batch", typed, kLongestBatch); }

Result<void> checkNewWeight(const std::optional<Mass>& weight, LotKind kind, int count) {
    if (!weight) {
        return {};
    }
    if (!weight->isPositive()) {
        return refuse(Code::OutOfRange,
                      {{"what", "weight"}, {"text", weight->text()}, {"lowest", "0.001 g"}, {"highest", "100000 g"}});
    }
    if (count > 1 || kind == LotKind::Packet) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "weight"},
                       {"text", weight->text()},
                       {"expected", kind == LotKind::Packet ? "left open for packets, which are counted"
                                                            : "left open for several lots: each has its own"}});
    }
    return {};
}

void keepNewWeight(Transaction& ledger, LotId lot, const std::optional<Mass>& weight, const By& by) {
    if (weight) {
        ledger.weighings().setSpoolWeight(lot, SpoolWeight::New, {*weight, readSettings(ledger.shop()).scaleStep}, by);
    }
}

LotId addLot(Transaction& ledger, const Lot& lot, const By& by) {
    const LotId id = ledger.lots().add(lot);
    ledger.lots().move(
        {std::nullopt, id, MovementReason::Received, lot.nominal, std::nullopt, std::nullopt, std::nullopt, by});
    return id;
}

} // namespace rw::desk
