// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/ledger_address.h"

#include <memory>
#include <optional>
#include <string>

namespace rw::sql::test {

/// The open ledger; throws std::runtime_error with the refusal when there is none.
[[nodiscard]] std::unique_ptr<desk::Ledger> mustOpen(const std::string& address,
                                                     IfMissing ifMissing = IfMissing::Create);

/// Why the ledger is refused; nothing when it opens.
[[nodiscard]] std::optional<Code> refusalOf(const std::string& address, IfMissing ifMissing = IfMissing::Create);

} // namespace rw::sql::test
