// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_shop.h"

#include "core/base/world_error.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stale_row.h"
#include "core/sql/repositories/stored_texts.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace rw::sql {

namespace {
void bindMember(Statement& statement, const desk::StaffMember& member) {
    statement.bind(":name", member.name);
    statement.bind(":strings", stored(member.strings));
    statement.bind(":retired", stored(member.retired));
}

void bindMachine(Statement& statement, const desk::Machine& machine) {
    statement.bind(":name", machine.name);
    statement.bind(":unit", unitText(machine.unit));
    statement.bind(":step_hundredths", machine.stepHundredths);
    statement.bind(":reach_mm", stored(machine.reach));
    statement.bind(":retired", stored(machine.retired));
}

void addWorkingTime(Connection& connection, StaffId id, const Worker& worker) {
    assert(!worker.week || std::ranges::any_of(*worker.week, [](const auto& day) { return day.has_value(); }));
    const WeekHours week = worker.week.value_or(WeekHours{});
    for (std::size_t day = 0; day < week.size(); ++day) {
        if (week[day]) {
            Statement hours(connection, "add_staff_hours");
            hours.bind(":staff", stored(id));
            hours.bind(":weekday", day + 1);
            hours.bind(":from_minute", week[day]->from.count());
            hours.bind(":to_minute", week[day]->to.count());
            hours.run();
        }
    }
    for (const CivilDate date : worker.daysOff) {
        Statement off(connection, "add_staff_day_off");
        off.bind(":staff", stored(id));
        off.bind(":date", dateText(date));
        off.run();
    }
}

/// Everybody's hours and days off.
std::map<StaffId, Worker> workingTimes(Connection& connection) {
    std::map<StaffId, Worker> workers;
    Statement hours(connection, "list_staff_hours");
    hours.run();
    while (hours.next()) {
        const Row row(hours, "staff_hours", "staff_id");
        auto& week = workers[row.id<StaffId>("staff_id")].week;
        if (!week) {
            week.emplace();
        }
        week->at(static_cast<std::size_t>(row.number("weekday")) - 1) =
            DayHours{std::chrono::minutes(row.number("from_minute")), std::chrono::minutes(row.number("to_minute"))};
    }
    Statement off(connection, "list_staff_days_off");
    off.run();
    while (off.next()) {
        const Row row(off, "staff_day_off", "staff_id");
        workers[row.id<StaffId>("staff_id")].daysOff.push_back(row.date("date"));
    }
    return workers;
}

template<class Value>
std::optional<Value> withId(const std::vector<Value>& all, const decltype(Value::id)& id) {
    const auto found = std::ranges::find(all, id, &Value::id);
    return found == all.end() ? std::nullopt : std::optional(*found);
}
} // namespace

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
    bindMember(statement, member);
    statement.run();
    const auto id = StaffId::of(statement.insertedId());
    addWorkingTime(m_connection, id, member.worker);
    return id;
}

MachineId SqlShop::add(const desk::Machine& machine) {
    Statement statement(m_connection, "add_machine");
    bindMachine(statement, machine);
    statement.run();
    return MachineId::of(statement.insertedId());
}

Result<void> SqlShop::update(const desk::StaffMember& member) {
    assert(member.id);
    Statement change(m_connection, "update_staff");
    change.bind(":staff", stored(*member.id));
    change.bind(":version", member.version);
    bindMember(change, member);
    change.run();
    if (change.rowsAffected() == 0) {
        return staleRow("staff", member, withId(staff(), member.id));
    }
    for (const char* query : {"delete_staff_hours", "delete_staff_days_off"}) {
        Statement clear(m_connection, query);
        clear.bind(":staff", stored(*member.id));
        clear.run();
    }
    addWorkingTime(m_connection, *member.id, member.worker);
    return {};
}

Result<void> SqlShop::update(const desk::Machine& machine) {
    assert(machine.id);
    Statement change(m_connection, "update_machine");
    change.bind(":machine", stored(*machine.id));
    change.bind(":version", machine.version);
    bindMachine(change, machine);
    change.run();
    if (change.rowsAffected() == 0) {
        return staleRow("machine", machine, withId(machines(), machine.id));
    }
    return {};
}

std::vector<desk::StaffMember> SqlShop::staff() {
    auto workers = workingTimes(m_connection);
    Statement statement(m_connection, "list_staff");
    statement.run();
    std::vector<desk::StaffMember> staff;
    while (statement.next()) {
        const Row row(statement, "staff");
        const auto id = row.id<StaffId>();
        staff.push_back({.id = id,
                         .name = row.text("name"),
                         .strings = row.flag("strings"),
                         .retired = row.flag("retired"),
                         .worker = std::move(workers[id]),
                         .version = row.wide("row_version")});
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
                            .reach = row.length("reach_mm"),
                            .retired = row.flag("retired"),
                            .version = row.wide("row_version")});
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

Result<void> SqlShop::setCurrency(const Currency& currency) {
    Statement change(m_connection, "update_ledger_currency");
    change.bind(":currency", currency.code());
    change.run();
    if (change.rowsAffected() == 0) {
        return refuse(Code::CurrencyMismatch, {{"left", currency.code()}, {"right", this->currency().code()}});
    }
    return {};
}

} // namespace rw::sql
