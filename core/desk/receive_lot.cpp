// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/new_lots.h"
#include "core/desk/replan.h"
#include "core/desk/stockroom.h"

namespace rw::desk {

namespace {
Result<void> checkReceipt(Transaction& ledger, const ReceiveLot& command) {
    if (auto length = checkNominal(command.nominal); !length) {
        return length;
    }
    const Currency currency = ledger.shop().currency();
    if (auto price = checkPrice("price", command.price, currency); !price) {
        return price;
    }
    if (auto shipping = checkPrice("shipping", command.shipping, currency); !shipping) {
        return shipping;
    }
    if (auto weight = checkNewWeight(command.newWeight, command.kind, 1); !weight) {
        return weight;
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
    if (const auto before = ledger.lots().ofDelivery(command.requestKey); !before.empty()) {
        return lotOf(ledger, before.front());
    }
    const auto article = articleOf(ledger, command.article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    if (const auto sound = checkReceipt(ledger, command); !sound) {
        return tl::unexpected(sound.error());
    }
    auto batch = checkBatch(command.batch);
    auto tag = NextTags(ledger).of(*article, command.tag);
    if (!batch || !tag) {
        return tl::unexpected(batch ? tag.error() : batch.error());
    }
    const auto delivery =
        command.requestKey.empty()
            ? std::nullopt
            : std::optional(ledger.lots().addDelivery(command.requestKey, {}, command.shipping, command.by));
    const LotId id = addLot(ledger,
                            {.id = std::nullopt,
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
                             .closed = std::nullopt},
                            command.by);
    keepNewWeight(ledger, id, command.newWeight, command.by);
    replanString(ledger, command.article, command.by.at);
    return lotOf(ledger, id);
}

} // namespace rw::desk
