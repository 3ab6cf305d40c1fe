// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "core/desk/port/ledger.h"

#include <utility>

namespace rw::desk {

/// How often a writing use case is done again when another station was first. Each try waits its turn inside the
/// engine (busy timeout, row locks), so more tries would only hide a station that hangs.
constexpr int kWriteTries = 5;

/// Runs `work` in one transaction and commits when it gives a value; a refusal leaves nothing behind. A writing
/// use case that met LedgerBusy is run again whole, so `work` must have no effect but through its transaction.
/// `work`: Result<T>(Transaction&).
template<class Work>
auto inTransaction(Ledger& ledger, Access access, Work&& work) -> decltype(work(std::declval<Transaction&>())) {
    for (int attempt = 1;; ++attempt) {
        try {
            const auto transaction = ledger.begin(access);
            auto result = work(*transaction);
            if (result) {
                transaction->commit();
            }
            return result;
        } catch (const LedgerBusy&) {
            if (attempt == kWriteTries) {
                throw;
            }
        }
    }
}

} // namespace rw::desk
