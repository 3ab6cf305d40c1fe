// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/money/money.h"
#include "core/sql/statement.h"
#include "core/stock/movement.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <optional>
#include <string>
#include <string_view>

namespace rw::sql {

/// The row a statement stands on, read as values of the trade. What is stored and cannot be such a value is thrown
/// as LedgerCorrupt, naming table, row and column. `table` and `key` (the column with the row's id) must outlive it.
class Row {
public:
    Row(const Statement& statement, std::string_view table, std::string_view key = "id")
        : m_statement(statement)
        , m_table(table)
        , m_key(key) {}

    [[nodiscard]] bool isNull(std::string_view column) const { return m_statement.isNull(column); }
    [[nodiscard]] std::string text(std::string_view column) const { return m_statement.text(column); }
    [[nodiscard]] bool flag(std::string_view column) const; ///< stored as 0 or 1
    [[nodiscard]] int number(std::string_view column) const;
    [[nodiscard]] std::int64_t wide(std::string_view column) const { return m_statement.integer(column); }
    [[nodiscard]] std::optional<std::int64_t> optionalWide(std::string_view column) const;
    [[nodiscard]] std::optional<double> optionalReal(std::string_view column) const;

    [[nodiscard]] Length length(std::string_view column) const;
    [[nodiscard]] std::optional<Length> optionalLength(std::string_view column) const;
    [[nodiscard]] std::optional<Money> optionalMoney(std::string_view column, Currency currency) const; ///< minor units
    [[nodiscard]] Instant instant(std::string_view column) const;
    [[nodiscard]] std::optional<Instant> optionalInstant(std::string_view column) const;
    [[nodiscard]] CivilDate date(std::string_view column) const;
    [[nodiscard]] Currency currency(std::string_view column = "currency") const;

    /// From `<name>_hundredths` and `<name>_unit`.
    [[nodiscard]] Tension tension(std::string_view name) const;
    [[nodiscard]] std::optional<Tension> optionalTension(std::string_view name) const;
    [[nodiscard]] TensionPair tensionPair() const; ///< "mains" and "crosses"
    [[nodiscard]] By by() const;                   ///< "staff_id", "station", "at"

    template<class SomeId>
    [[nodiscard]] SomeId id(std::string_view column = "id") const {
        return SomeId::of(m_statement.integer(column));
    }
    template<class SomeId>
    [[nodiscard]] std::optional<SomeId> optionalId(std::string_view column) const {
        return isNull(column) ? std::nullopt : std::optional(id<SomeId>(column));
    }
    template<class Enum>
    [[nodiscard]] Enum oneOf(std::string_view column, std::optional<Enum> (*fromText)(std::string_view)) const {
        const std::string found = text(column);
        const std::optional<Enum> value = fromText(found);
        if (!value) {
            corrupt(column, found);
        }
        return *value;
    }
    template<class Enum>
    [[nodiscard]] std::optional<Enum> optionalOneOf(std::string_view column,
                                                    std::optional<Enum> (*fromText)(std::string_view)) const {
        return isNull(column) ? std::nullopt : std::optional(oneOf(column, fromText));
    }

private:
    [[noreturn]] void corrupt(std::string_view column, std::string_view found) const;

    const Statement& m_statement;
    std::string_view m_table;
    std::string_view m_key;
};

} // namespace rw::sql
