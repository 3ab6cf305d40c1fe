// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "tests/core/desk/fake_rows.h"

#include <functional>

namespace rw::desk::test {

/// The price lists of a fake ledger.
class FakePriceLists final : public PriceLists {
public:
    explicit FakePriceLists(Rows& rows)
        : m_rows(rows) {}
    void add(const PriceList& list) override {
        if (std::ranges::find(m_rows.priceLists, list.validFrom, &PriceList::validFrom) != m_rows.priceLists.end()) {
            throw LedgerGuard("price list");
        }
        m_rows.priceLists.push_back(list);
        m_rows.priceLists.back().id = ++m_rows.lastId;
    }
    void replaceLines(const PriceList& list) override {
        PriceList& stored = *std::ranges::find(m_rows.priceLists, list.id, &PriceList::id);
        stored.lines = list.lines;
        stored.taxRule = list.taxRule;
    }
    void remove(std::int64_t list) override {
        std::erase_if(m_rows.priceLists, [&](const PriceList& stored) { return stored.id == list; });
    }
    std::optional<PriceList> validOn(CivilDate date) override {
        std::optional<PriceList> valid;
        for (const PriceList& list : m_rows.priceLists) {
            if (list.validFrom <= date && (!valid || list.validFrom > valid->validFrom)) {
                valid = list;
            }
        }
        return valid;
    }
    std::vector<PriceList> all() override {
        std::vector<PriceList> all = m_rows.priceLists;
        std::ranges::sort(all, std::greater<>(), &PriceList::validFrom);
        return all;
    }

private:
    Rows& m_rows;
};

} // namespace rw::desk::test
