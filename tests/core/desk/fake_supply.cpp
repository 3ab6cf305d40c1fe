// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_supply.h"

#include "core/base/world_error.h"

namespace rw::desk::test {

std::vector<StringWish> FakeSupply::wishes(Instant since) {
    std::vector<StringWish> wishes;
    for (const Job& row : m_rows.jobs) {
        const Job job = *m_jobs.get(*row.id);
        if (job.state == JobState::Withdrawn || job.logged < since) {
            continue;
        }
        for (const JobPiece& piece : job.pieces) {
            if (piece.source == PieceSource::ShopLot) {
                wishes.push_back({piece.article, job.logged, piece.role == PieceRole::Whole ? 2 : 1});
            }
        }
    }
    for (const AskedForNone& asked : m_rows.askedForNone) {
        if (asked.by.at >= since) {
            wishes.push_back({asked.article, asked.by.at, 2});
        }
    }
    std::map<StringArticleId, Instant> firsts;
    for (const Lot& lot : m_rows.lots) {
        if (!lot.owner) {
            const auto first = firsts.emplace(lot.article, lot.received).first;
            first->second = std::min(first->second, lot.received);
        }
    }
    for (const auto& [article, at] : firsts) {
        wishes.push_back({article, at, 0});
    }
    std::ranges::sort(wishes, {}, [](const StringWish& w) { return std::tuple(w.article, w.at, w.halfBeds); });
    return wishes;
}

std::vector<LastSupply> FakeSupply::lastSupplies() {
    std::map<StringArticleId, const Lot*> newest;
    for (const Lot& lot : m_rows.lots) {
        if (lot.owner || lot.kind == LotKind::Remnant) {
            continue;
        }
        const auto last = newest.emplace(lot.article, &lot).first;
        if (std::tuple(lot.received, lot.id) > std::tuple(last->second->received, last->second->id)) {
            last->second = &lot;
        }
    }
    std::vector<LastSupply> supplies;
    for (const auto& [article, lot] : newest) {
        const auto parcel =
            std::ranges::find(m_rows.deliveries, lot->delivery, [](const Delivery& d) { return std::optional(d.id); });
        const bool known = parcel != m_rows.deliveries.end();
        supplies.push_back({.article = article,
                            .kind = lot->kind,
                            .nominal = lot->nominal,
                            .price = lot->price,
                            .shipping = lot->shipping,
                            .supplier = known ? parcel->supplier : std::string(),
                            .parcelShipping = known ? std::optional(parcel->shipping) : std::nullopt});
    }
    return supplies;
}

void FakeSupply::add(const AskedForNone& asked) {
    if (askedForNoneByRequestKey(asked.requestKey)) {
        throw LedgerGuard("asked_for_none_request_key_key");
    }
    m_rows.askedForNone.push_back(asked);
}

std::optional<StringArticleId> FakeSupply::askedForNoneByRequestKey(std::string_view key) {
    const auto found = std::ranges::find(m_rows.askedForNone, key, &AskedForNone::requestKey);
    return found == m_rows.askedForNone.end() ? std::nullopt : std::optional(found->article);
}

} // namespace rw::desk::test
