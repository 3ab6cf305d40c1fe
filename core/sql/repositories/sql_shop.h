// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Shop over the open transaction of a connection, which must outlive it.
class SqlShop final : public desk::Shop {
public:
    explicit SqlShop(Connection& connection)
        : m_connection(connection) {}

    [[nodiscard]] std::optional<std::string> setting(std::string_view name) override;
    void set(std::string_view name, std::string_view value) override;
    StaffId add(const desk::StaffMember& member) override;
    MachineId add(const desk::Machine& machine) override;
    Result<void> update(const desk::StaffMember& member) override;
    Result<void> update(const desk::Machine& machine) override;
    [[nodiscard]] std::vector<desk::StaffMember> staff() override;
    [[nodiscard]] std::vector<desk::Machine> machines() override;
    [[nodiscard]] Currency currency() override;
    Result<void> setCurrency(const Currency& currency) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
