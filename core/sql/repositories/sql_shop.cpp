// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_shop.h"

#include "core/base/world_error.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stored_texts.h"

namespace rw::sql {

std::optional<std::string> SqlShop::setting(std::string_view name) {
    Statement statement(m_connection, "get_setting");
    statement.bind(":name", name);
    statement.run();
    return statement.next() ? std::optional(statement.text("value")) : std::nullopt;
}

void SqlShop::set(std::string_view name, std::string_view value) {
    Statement statement(m_connection, "set_setting");
    statement.bind(":name", name);
    statement.bind(":value", value);
    statement.run();
}

StaffId SqlShop::add(const desk::StaffMember& member) {
    Statement statement(m_connection, "add_staff");
    statement.bind(":name", member.name);
    statement.run();
    return StaffId::of(statement.insertedId());
}

MachineId SqlShop::add(const desk::Machine& machine) {
    Statement statement(m_connection, "add_machine");
    statement.bind(":name", machine.name);
    statement.bind(":unit", unitText(machine.unit));
    statement.bind(":step_hundredths", machine.stepHundredths);
    statement.bind(":reach_mm", stored(machine.reach));
    statement.run();
    return MachineId::of(statement.insertedId());
}

std::vector<desk::StaffMember> SqlShop::staff() {
    Statement statement(m_connection, "list_staff");
    statement.run();
    std::vector<desk::StaffMember> staff;
    while (statement.next()) {
        const Row row(statement, "staff");
        staff.push_back({row.id<StaffId>(), row.text("name")});
    }
    return staff;
}

std::vector<desk::Machine> SqlShop::machines() {
    Statement statement(m_connection, "list_machines");
    statement.run();
    std::vector<desk::Machine> machines;
    while (statement.next()) {
        const Row row(statement, "machine");
        machines.push_back({.id = row.id<MachineId>(),
                            .name = row.text("name"),
                            .unit = row.oneOf("unit", storedUnit),
                            .stepHundredths = row.number("step_hundredths"),
                            .reach = row.length("reach_mm")});
    }
    return machines;
}

Currency SqlShop::currency() {
    Statement statement(m_connection, "get_ledger_currency");
    statement.run();
    if (!statement.next()) {
        throw LedgerCorrupt("ledger: its row is missing");
    }
    return Row(statement, "ledger").currency();
}

} // namespace rw::sql
