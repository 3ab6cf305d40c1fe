// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/desk/fake_ledger.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>

namespace rw::desk::test {

/// When the demo shop of the tests was stocked: a Thursday, in winter time, so UTC is the shop's wall clock.
constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

/// What keeps the ledger: the fake of these tests, or one of the real engines.
enum class Keeping { Memory, Sqlite, Postgres };
[[nodiscard]] std::string keepingName(const testing::TestParamInfo<Keeping>& info);

/// A ledger with the demo shop in it, gone with the test.
class StockedShop {
public:
    virtual ~StockedShop() = default;
    [[nodiscard]] virtual Ledger& ledger() = 0;
};
[[nodiscard]] std::unique_ptr<StockedShop> stockedShop(Keeping keeping);

/// The rows of the demo shop in memory, stocked once for the whole program.
[[nodiscard]] const Rows& stockedRows();

} // namespace rw::desk::test
