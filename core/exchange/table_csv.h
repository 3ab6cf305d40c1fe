// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger_table.h"
#include "core/money/money.h"

#include <string>

namespace rw::exchange {

/// A table as CSV (CsvTable), its first line the columns' names: money as decimals of `currency`, moments as ISO 8601
/// in UTC, nothing as an empty field.
[[nodiscard]] std::string tableCsv(const desk::LedgerTable& table, Currency currency);

} // namespace rw::exchange
