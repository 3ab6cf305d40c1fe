// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"
#include "core/sql/statement.h"

namespace rw::sql {

/// desk::PriceLists over the open transaction of a connection, which must outlive it.
class SqlPriceLists final : public desk::PriceLists {
public:
    explicit SqlPriceLists(Connection& connection)
        : m_connection(connection) {}

    void add(const PriceList& list) override;
    void replaceLines(const PriceList& list) override;
    void remove(std::int64_t list) override;
    [[nodiscard]] std::optional<PriceList> validOn(CivilDate date) override;
    [[nodiscard]] std::vector<PriceList> all() override;

private:
    void removeLines(std::int64_t list);
    [[nodiscard]] PriceList listIn(const Statement& head);
    void addLines(std::int64_t id, const PriceList& list);
    void addLine(std::int64_t list, std::int64_t number, const PriceLine& line);

    Connection& m_connection;
};

} // namespace rw::sql
