// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/replan.h"
#include "core/desk/stockroom.h"

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

Result<std::string> tagFor(Transaction& ledger, const StringArticle& article, const std::string& typed) {
    auto tag = maybeWordsOf("tag", typed, kLongestTag);
    if (!tag) {
        return tag;
    }
    if (tag->empty()) {
        std::int64_t number = highestNumber(ledger, article);
        do {
            *tag = article.code + "-" + std::to_string(++number);
        } while (ledger.lots().byTag(*tag));
    } else if (ledger.lots().byTag(*tag)) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "tag"}, {"text", *tag}, {"expected", "a tag that no other lot has"}});
    }
    return tag;
}

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

Result<void> checkDelivery(Transaction& ledger, const ReceiveLot& command) {
    if (auto length = checkLength("length", command.nominal, kShortestNew); !length) {
        return length;
    }
    const Currency currency = ledger.shop().currency();
    if (auto price = checkPrice("price", command.price, currency); !price) {
        return price;
    }
    if (auto shipping = checkPrice("shipping", command.shipping, currency); !shipping) {
        return shipping;
    }
    if (command.owner) {
        if (const auto owner = presentCustomerOf(ledger, *command.owner); !owner) {
            return tl::unexpected(owner.error());
        }
    }
    return {};
}
} // namespace

Result<Lot> receiveLot(Transaction& ledger, const ReceiveLot& command) {
    if (const auto before = ledger.lots().ofDelivery(command.requestKey)) {
        return lotOf(ledger, *before);
    }
    const auto article = articleOf(ledger, command.article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    if (const auto sound = checkDelivery(ledger, command); !sound) {
        return tl::unexpected(sound.error());
    }
    auto batch = maybeWordsOf("batch", command.batch, kLongestBatch);
    auto tag = tagFor(ledger, *article, command.tag);
    if (!batch || !tag) {
        return tl::unexpected(batch ? tag.error() : batch.error());
    }
    const auto delivery =
        command.requestKey.empty()
            ? std::nullopt
            : std::optional(ledger.lots().addDelivery(command.requestKey, command.shipping, command.by));
    const LotId id = ledger.lots().add({.id = std::nullopt,
                                        .tag = *std::move(tag),
                                        .article = command.article,
                                        .kind = command.kind,
                                        .owner = command.owner,
                                        .nominal = command.nominal,
                                        .price = command.price,
                                        .shipping = command.shipping,
                                        .batch = *std::move(batch),
                                        .received = command.by.at,
                                        .delivery = delivery,
                                        .closed = std::nullopt});
    ledger.lots().move({std::nullopt, id, MovementReason::Received, command.nominal, std::nullopt, std::nullopt,
                        std::nullopt, command.by});
    return lotOf(ledger, id);
}

Result<Lot> correctLot(Transaction& ledger, const CorrectLot& command) {
    auto lot = lotOf(ledger, command.lot);
    if (!lot) {
        return lot;
    }
    if (!lot->isOpen()) {
        return refuse(Code::LotClosed, {{"lot", lot->tag}});
    }
    const Length nothing = Length::fromMillimetres(0);
    if (const auto length = checkLength("measured", command.measured, nothing); !length) {
        return tl::unexpected(length.error());
    }
    ledger.lots().move({std::nullopt, command.lot, MovementReason::Measured, command.measured - lot->length,
                        std::nullopt, std::nullopt, std::nullopt, command.by});
    if (command.measured == nothing) {
        ledger.lots().close(command.lot, command.by.at);
    }
    replanLot(ledger, command.lot);
    return lotOf(ledger, command.lot);
}

} // namespace rw::desk
