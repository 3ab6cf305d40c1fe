// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace rw::desk {

/// How a column's numbers are to be read.
enum class ColumnKind {
    Words,  ///< text that people typed
    Fact,   ///< text that the program wrote: a state, a code, a date
    Number, ///< a whole number
    Money,  ///< minor units of the ledger's currency
    Moment  ///< milliseconds since 1970, UTC
};
struct Column {
    std::string name; ///< with its unit: "length_mm"
    ColumnKind kind;
    bool onlyForOwner = false; ///< what the shop paid: purchase prices, costs
};
using Cell =
    std::variant<std::monostate, std::int64_t, std::string>; ///< text for Words and Fact, a number for the rest

/// Everything the ledger holds of one kind, for a spreadsheet or another program.
struct LedgerTable {
    std::string name; ///< "jobs"
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows; ///< each as long as the columns
};

} // namespace rw::desk
