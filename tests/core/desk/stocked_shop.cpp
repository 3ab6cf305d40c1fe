// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/stocked_shop.h"

#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/pattern.h"

namespace rw::desk::test {

namespace {
void stock(Ledger& ledger) {
    const auto done =
        inTransaction(ledger, Access::Write, [](Transaction& transaction) { return stockDemoShop(transaction, kNow); });
    EXPECT_TRUE(done.has_value());
}

sql::test::Pattern g_stocked{[](const sql::test::Place& place) { stock(*sql::test::mustOpen(place.address())); }};

class InMemory final : public StockedShop {
public:
    InMemory() { m_ledger.rows = stockedRows(); }
    Ledger& ledger() override { return m_ledger; }

private:
    FakeLedger m_ledger;
};

class OnEngine final : public StockedShop {
public:
    explicit OnEngine(sql::Dialect dialect)
        : m_place(g_stocked.copy(dialect))
        , m_ledger(sql::test::mustOpen(m_place->address(), sql::IfMissing::Refuse)) {}
    Ledger& ledger() override { return *m_ledger; }

private:
    std::unique_ptr<sql::test::Place> m_place;
    std::unique_ptr<Ledger> m_ledger; ///< after its place: closed before that is gone
};
} // namespace

std::string keepingName(const testing::TestParamInfo<Keeping>& info) {
    switch (info.param) {
    case Keeping::Memory:
        return "Memory";
    case Keeping::Sqlite:
        return "Sqlite";
    case Keeping::Postgres:
        return "Postgres";
    }
    return {};
}

const Rows& stockedRows() {
    static const Rows rows = [] {
        FakeLedger ledger;
        stock(ledger);
        return ledger.rows;
    }();
    return rows;
}

std::unique_ptr<StockedShop> stockedShop(Keeping keeping) {
    if (keeping == Keeping::Memory) {
        return std::make_unique<InMemory>();
    }
    return std::make_unique<OnEngine>(keeping == Keeping::Sqlite ? sql::Dialect::Sqlite : sql::Dialect::Postgres);
}

} // namespace rw::desk::test
