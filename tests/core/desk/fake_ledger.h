// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "tests/core/desk/fake_rows.h"

#include <vector>

namespace rw::desk::test {

/// A ledger in memory, for tests of the use cases: honest about transactions and about the guards that they must never
/// run into (LedgerGuard), and nothing more.
class FakeLedger final : public Ledger {
public:
    [[nodiscard]] std::unique_ptr<Transaction> begin(Access access) override;
    [[nodiscard]] std::vector<Finding> check() override;
    [[nodiscard]] std::int64_t changeCount() override {
        if (lost) {
            throw LedgerLost("gone");
        }
        return changes;
    }

    Rows rows;
    std::int64_t changes = 0; ///< a test raises it, as another connection would
    bool lost = false;        ///< whoever looks for changes finds it gone
    int busyTimes = 0;        ///< so many commits find another station first
    int commits = 0;
};

} // namespace rw::desk::test
