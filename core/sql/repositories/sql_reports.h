// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/reports.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Reports over the open transaction of a connection, which must outlive it.
class SqlReports final : public desk::Reports {
public:
    explicit SqlReports(Connection& connection)
        : m_connection(connection) {}

    [[nodiscard]] std::vector<desk::OpenMatter> openMatters() override;
    [[nodiscard]] Money account(CustomerId customer) override;
    [[nodiscard]] std::vector<desk::PaymentLine> payments(Instant from, Instant to) override;
    [[nodiscard]] std::vector<desk::StrungJob> strung(Instant from, Instant to) override;
    [[nodiscard]] std::vector<desk::ScrappedEnd> scrap(Instant from, Instant to) override;
    [[nodiscard]] std::vector<desk::LedgerTable> tables() override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
