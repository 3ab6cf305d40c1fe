// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Strings over the open transaction of a connection, which must outlive it.
class SqlStrings final : public desk::Strings {
public:
    explicit SqlStrings(Connection& connection)
        : m_connection(connection) {}

    StringArticleId add(const StringArticle& article) override;
    Result<void> update(const StringArticle& article) override;
    [[nodiscard]] std::optional<StringArticle> get(StringArticleId id) override;
    [[nodiscard]] std::vector<StringArticle> all() override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
