// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <concepts>
#include <cstdint>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace rw::sql {

/// One use of a query file: bind every placeholder, run, read the rows.
///
///     Statement lots(connection, "select_open_lots");
///     lots.bind(":article", article.value()).run();
///     while (lots.next()) { use(lots.integer("id"), lots.text("tag")); }
///
/// A name that is not in the query, a placeholder left unbound and a column that is not in the result are bugs and
/// throw std::logic_error. What the engine refuses is a WorldError. Two uses of one query may be open at the same time.
class Statement {
public:
    /// `queryName` is that of queries/<name>.sql or queries/<name>.<dialect>.sql.
    Statement(Connection& connection, std::string_view queryName);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    template<std::integral T>
    Statement& bind(std::string_view placeholder, T value) {
        return bindInteger(placeholder, static_cast<std::int64_t>(value));
    }
    Statement& bind(std::string_view placeholder, double value);
    /// LedgerGuard "text_without_nul" for a text that holds U+0000, which PostgreSQL cannot keep.
    Statement& bind(std::string_view placeholder, std::string_view value);
    Statement& bind(std::string_view placeholder, std::nullopt_t);
    template<class T>
    Statement& bind(std::string_view placeholder, const std::optional<T>& value) {
        return value ? bind(placeholder, *value) : bind(placeholder, std::nullopt);
    }

    /// May be called again after binding everything anew.
    void run();
    /// Steps to the next row; false after the last.
    [[nodiscard]] bool next();
    /// How many rows an UPDATE or DELETE touched.
    [[nodiscard]] int rowsAffected() const;
    /// The "id" of the one row that INSERT ... RETURNING id gives.
    [[nodiscard]] std::int64_t insertedId();

    // Of the current row. LedgerCorrupt when the stored value is not of that kind, or NULL where it must not be.
    [[nodiscard]] std::int64_t integer(std::string_view column) const;
    [[nodiscard]] double real(std::string_view column) const;
    [[nodiscard]] std::string text(std::string_view column) const;
    [[nodiscard]] bool flag(std::string_view column) const { return integer(column) != 0; }
    [[nodiscard]] std::optional<double> optionalReal(std::string_view column) const;
    [[nodiscard]] std::optional<std::string> optionalText(std::string_view column) const;
    [[nodiscard]] bool isNull(std::string_view column) const;

private:
    Statement& bindInteger(std::string_view placeholder, std::int64_t value);
    Statement& bindValue(std::string_view placeholder, const QVariant& value);
    [[nodiscard]] QVariant value(std::string_view column) const;
    [[noreturn]] void wrongKind(std::string_view column, std::string_view kind) const;
    [[nodiscard]] std::string doing() const;

    Connection& m_connection;
    std::string m_name;
    std::unique_ptr<Connection::Prepared> m_prepared;
    std::set<QString> m_bound;
    std::string m_ids; ///< whole numbers that were bound, for error messages
};

} // namespace rw::sql
