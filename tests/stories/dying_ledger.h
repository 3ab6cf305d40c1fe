// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <csignal>
#include <memory>
#include <utility>

namespace rw::stories {

enum class Dies { BeforeCommit, AfterCommit };

/// A ledger whose process is killed at its first commit: when everything is written and nothing is kept yet, or when
/// it is kept and nobody was told.
class DyingLedger final : public desk::Ledger {
public:
    DyingLedger(std::unique_ptr<desk::Ledger> ledger, Dies dies)
        : m_ledger(std::move(ledger))
        , m_dies(dies) {}

    std::unique_ptr<desk::Transaction> begin(desk::Access access) override {
        return std::make_unique<Dying>(m_ledger->begin(access), m_dies);
    }
    std::vector<desk::Finding> check() override { return m_ledger->check(); }
    std::int64_t changeCount() override { return m_ledger->changeCount(); }

private:
    class Dying final : public desk::Transaction {
    public:
        Dying(std::unique_ptr<desk::Transaction> transaction, Dies dies)
            : m_transaction(std::move(transaction))
            , m_dies(dies) {}
        desk::Customers& customers() override { return m_transaction->customers(); }
        desk::Frames& frames() override { return m_transaction->frames(); }
        desk::Strings& strings() override { return m_transaction->strings(); }
        desk::Lots& lots() override { return m_transaction->lots(); }
        desk::Weighings& weighings() override { return m_transaction->weighings(); }
        desk::Jobs& jobs() override { return m_transaction->jobs(); }
        desk::PriceLists& priceLists() override { return m_transaction->priceLists(); }
        desk::Shop& shop() override { return m_transaction->shop(); }
        desk::Reports& reports() override { return m_transaction->reports(); }
        desk::Supply& supply() override { return m_transaction->supply(); }
        desk::OwnCuts& ownCuts() override { return m_transaction->ownCuts(); }
        void commit() override {
            if (m_dies == Dies::AfterCommit) {
                m_transaction->commit();
            }
            std::raise(SIGKILL);
        }

    private:
        std::unique_ptr<desk::Transaction> m_transaction;
        Dies m_dies;
    };

    std::unique_ptr<desk::Ledger> m_ledger;
    Dies m_dies;
};

} // namespace rw::stories
