// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/ledgers.h"

#include <stdexcept>

namespace rw::sql::test {

std::unique_ptr<desk::Ledger> mustOpen(const std::string& address, IfMissing ifMissing) {
    auto ledger = openLedger(*LedgerAddress::parse(address), ifMissing);
    if (!ledger) {
        throw std::runtime_error("refused, code " + std::to_string(static_cast<int>(ledger.error().code())) + ": " +
                                 ledger.error().text("reason"));
    }
    return *std::move(ledger);
}

std::optional<Code> refusalOf(const std::string& address, IfMissing ifMissing) {
    const auto ledger = openLedger(*LedgerAddress::parse(address), ifMissing);
    return ledger ? std::nullopt : std::optional(ledger.error().code());
}

} // namespace rw::sql::test
