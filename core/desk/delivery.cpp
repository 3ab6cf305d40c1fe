// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/delivery.h"

#include "core/desk/lookups.h"
#include "core/desk/new_lots.h"
#include "core/desk/replan.h"
#include "core/pricing/quote.h"

#include <algorithm>

namespace rw::desk {

namespace {
/// Which line of the sheet a refusal is about.
Refusal atLine(const Refusal& refusal, std::size_t line) {
    std::vector<Argument> arguments = refusal.arguments();
    arguments.push_back({"line", static_cast<std::int64_t>(line)});
    return Refusal(refusal.code(), std::move(arguments));
}

Result<void> checkCount(const DeliveryLine& line) {
    if (line.count < 1 || line.count > kMostAlike) {
        return refuse(Code::OutOfRange, {{"what", "count"},
                                         {"text", std::to_string(line.count)},
                                         {"lowest", "1"},
                                         {"highest", std::to_string(kMostAlike)}});
    }
    if (line.count > 1 && !line.tag.empty()) {
        return refuse(Code::ImpossibleValue, {{"key", "tag"},
                                              {"text", line.tag},
                                              {"expected", "left open for several lots: each gets a tag of its own"}});
    }
    return {};
}

/// The lots of a line as they will be added; their share of the shipping comes later.
Result<std::vector<Lot>> lotsOf(Transaction& ledger, const DeliveryLine& line, NextTags& tags, const By& by) {
    const auto article = articleOf(ledger, line.article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    if (const auto count = checkCount(line); !count) {
        return tl::unexpected(count.error());
    }
    if (const auto length = checkNominal(line.nominal); !length) {
        return tl::unexpected(length.error());
    }
    if (const auto price = checkPrice("price", line.priceEach, ledger.shop().currency()); !price) {
        return tl::unexpected(price.error());
    }
    if (const auto weight = checkNewWeight(line.newWeight, line.kind, line.count); !weight) {
        return tl::unexpected(weight.error());
    }
    const auto batch = checkBatch(line.batch);
    if (!batch) {
        return tl::unexpected(batch.error());
    }
    std::vector<Lot> lots;
    for (int i = 0; i < line.count; ++i) {
        const auto tag = tags.of(*article, line.tag);
        if (!tag) {
            return tl::unexpected(tag.error());
        }
        lots.push_back({.id = std::nullopt,
                        .tag = *tag,
                        .article = line.article,
                        .kind = line.kind,
                        .owner = std::nullopt,
                        .nominal = line.nominal,
                        .price = line.priceEach,
                        .shipping = Money::zero(line.priceEach.currency()),
                        .batch = *batch,
                        .received = by.at,
                        .closed = std::nullopt});
    }
    return lots;
}

/// Two tags typed alike on one sheet: neither is in the ledger yet.
Result<void> checkNew(const std::vector<Lot>& lots, const std::vector<Lot>& before) {
    for (const Lot& lot : lots) {
        if (std::ranges::find(before, lot.tag, &Lot::tag) != before.end()) {
            return refuse(Code::ImpossibleValue,
                          {{"key", "tag"}, {"text", lot.tag}, {"expected", "a tag that no other lot has"}});
        }
    }
    return {};
}

Result<std::vector<Lot>> allLots(Transaction& ledger, const ReceiveDelivery& command) {
    std::vector<Lot> all;
    NextTags tags(ledger);
    for (std::size_t line = 0; line < command.lines.size(); ++line) {
        auto lots = lotsOf(ledger, command.lines[line], tags, command.by);
        const auto fresh = lots ? checkNew(*lots, all) : Result<void>();
        if (!lots || !fresh) {
            return tl::unexpected(atLine(lots ? fresh.error() : lots.error(), line));
        }
        std::ranges::move(*lots, std::back_inserter(all));
    }
    return all;
}

void shareOut(const Money& shipping, std::vector<Lot>& lots) {
    std::vector<Money> prices;
    std::ranges::transform(lots, std::back_inserter(prices), &Lot::price);
    const std::vector<Money> shares = shareShipping(shipping, prices);
    for (std::size_t i = 0; i < lots.size(); ++i) {
        lots[i].shipping = shares[i];
    }
}

/// A line with a weight is one lot.
void keepNewWeights(Transaction& ledger, const ReceiveDelivery& command, const std::vector<Lot>& lots) {
    std::size_t place = 0;
    for (const DeliveryLine& line : command.lines) {
        keepNewWeight(ledger, *lots[place].id, line.newWeight, command.by);
        place += static_cast<std::size_t>(line.count);
    }
}

bool isSameDelivery(const std::vector<Lot>& lots, const ReceiveDelivery& command) {
    std::size_t place = 0;
    for (const DeliveryLine& line : command.lines) {
        for (int i = 0; i < line.count; ++i, ++place) {
            if (place >= lots.size() || lots[place].article != line.article || lots[place].kind != line.kind ||
                lots[place].nominal != line.nominal || lots[place].price != line.priceEach) {
                return false;
            }
        }
    }
    return place == lots.size();
}

Result<std::vector<Lot>> receivedBefore(Transaction& ledger, const std::vector<LotId>& ids,
                                        const ReceiveDelivery& command) {
    std::vector<Lot> lots;
    for (const LotId id : ids) {
        lots.push_back(*ledger.lots().get(id));
    }
    if (!isSameDelivery(lots, command)) {
        return refuse(Code::ChangedMeanwhile, {{"what", "delivery"}});
    }
    return lots;
}
} // namespace

Result<std::vector<Lot>> receiveDelivery(Transaction& ledger, const ReceiveDelivery& command) {
    const auto key = wordsOf("request key", command.requestKey, kLongestRequestKey);
    const auto supplier = maybeWordsOf("supplier", command.supplier, kLongestName);
    if (!key || !supplier) {
        return tl::unexpected(key ? supplier.error() : key.error());
    }
    if (const auto before = ledger.lots().ofDelivery(*key); !before.empty()) {
        return receivedBefore(ledger, before, command);
    }
    if (command.lines.empty()) {
        return refuse(Code::Missing, {{"what", "delivery"}});
    }
    if (const auto shipping = checkPrice("shipping", command.shipping, ledger.shop().currency()); !shipping) {
        return tl::unexpected(shipping.error());
    }
    auto lots = allLots(ledger, command);
    if (!lots) {
        return lots;
    }
    shareOut(command.shipping, *lots);
    const DeliveryId delivery = ledger.lots().addDelivery(*key, *supplier, command.shipping, command.by);
    for (Lot& lot : *lots) {
        lot.delivery = delivery;
        lot = *ledger.lots().get(addLot(ledger, lot, command.by));
    }
    keepNewWeights(ledger, command, *lots);
    for (const DeliveryLine& line : command.lines) {
        replanString(ledger, line.article, command.by.at);
    }
    return lots;
}

Result<std::vector<std::vector<std::string>>> tagsFor(Transaction& ledger, const std::vector<DeliveryLine>& lines) {
    std::vector<std::vector<std::string>> all;
    NextTags tags(ledger);
    for (const DeliveryLine& line : lines) {
        const auto article = articleOf(ledger, line.article);
        if (!article) {
            return tl::unexpected(article.error());
        }
        std::vector<std::string>& ofLine = all.emplace_back();
        for (int i = 0; i < std::clamp(line.count, 0, kMostAlike); ++i) {
            ofLine.push_back(line.tag.empty() ? tags.next(*article) : line.tag);
        }
    }
    return all;
}

} // namespace rw::desk
