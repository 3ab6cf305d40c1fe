// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/supply.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Supply over the open transaction of a connection, which must outlive it.
class SqlSupply final : public desk::Supply {
public:
    explicit SqlSupply(Connection& connection)
        : m_connection(connection) {}

    [[nodiscard]] std::vector<desk::StringWish> wishes(Instant since) override;
    [[nodiscard]] std::vector<desk::LastSupply> lastSupplies() override;
    void add(const desk::AskedForNone& asked) override;
    [[nodiscard]] std::optional<StringArticleId> askedForNoneByRequestKey(std::string_view key) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
