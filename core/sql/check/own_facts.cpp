// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/own_facts.h"

#include "core/calendar/opening_hours.h"
#include "core/desk/settings.h"
#include "core/jobs/job_state.h"
#include "core/money/known_currencies.h"
#include "core/sql/migration.h"
#include "core/sql/statement.h"

#include <map>
#include <optional>
#include <utility>

namespace rw::sql {

namespace {

std::vector<std::optional<JobState>> everyState() {
    std::vector<std::optional<JobState>> states = {std::nullopt};
    for (int state = 0; state <= static_cast<int>(JobState::Withdrawn); ++state) {
        states.emplace_back(static_cast<JobState>(state));
    }
    return states;
}

std::vector<JobEventKind> everyKind() {
    std::vector<JobEventKind> kinds;
    for (int kind = 0; kind <= static_cast<int>(JobEventKind::Withdrawn); ++kind) {
        kinds.push_back(static_cast<JobEventKind>(kind));
    }
    return kinds;
}

/// From which state, by what, to which state; "" is a job that was only just written.
using Steps = std::map<std::pair<std::string, std::string>, std::string>;

Steps knownSteps() {
    Steps steps;
    for (const auto& state : everyState()) {
        for (const JobEventKind kind : everyKind()) {
            if (const auto after = stateAfter(state, kind)) {
                const std::string from(state ? jobStateText(*state) : std::string_view());
                steps[{from, std::string(jobEventKindText(kind))}] = jobStateText(*after);
            }
        }
    }
    return steps;
}

Steps storedSteps(Connection& connection) {
    Steps steps;
    Statement query(connection, "list_job_transitions");
    query.run();
    while (query.next()) {
        steps[{query.text("from_state"), query.text("kind")}] = query.text("to_state");
    }
    return steps;
}

std::string stepText(const Steps::value_type& step) {
    std::string text = "\"";
    return text.append(step.first.first).append("\", ").append(step.first.second);
}

} // namespace

std::vector<std::string> wrongTransitions(Connection& connection) {
    Steps stored = storedSteps(connection);
    std::vector<std::string> wrong;
    for (const auto& step : knownSteps()) {
        const auto found = stored.find(step.first);
        if (found == stored.end()) {
            wrong.push_back(stepText(step) + ": is missing");
            continue;
        }
        if (found->second != step.second) {
            wrong.push_back(stepText(step) + ": leads to \"" + found->second + "\", not to \"" + step.second + "\"");
        }
        stored.erase(found);
    }
    for (const auto& step : stored) {
        wrong.push_back(stepText(step) + ": is no step");
    }
    return wrong;
}

std::vector<std::string> wrongVersions(Connection& connection) {
    std::map<int, std::string> told;
    Statement query(connection, "list_schema_versions");
    query.run();
    while (query.next()) {
        told[static_cast<int>(query.integer("version"))] = query.text("name");
    }
    std::vector<std::string> wrong;
    for (const Migration& step : migrations(connection.dialect())) {
        const auto found = told.find(step.version);
        const auto number = "step " + std::to_string(step.version);
        if (found == told.end()) {
            wrong.push_back(number + " is not told of");
            continue;
        }
        if (found->second != step.name) {
            wrong.push_back(number + " is called " + found->second + ", not " + step.name);
        }
        told.erase(found);
    }
    for (const auto& [version, name] : told) {
        wrong.push_back("step " + std::to_string(version) + " is not known");
    }
    return wrong;
}

std::vector<std::string> unknownFacts(Connection& connection) {
    std::vector<std::string> unknown;
    Statement currency(connection, "get_ledger_currency");
    currency.run();
    if (currency.next()) {
        if (const auto code = currency.text("currency"); !isKnownCurrency(code)) {
            unknown.push_back("the currency is " + code);
        }
    }
    Statement zone(connection, "get_setting");
    zone.bind(":name", desk::setting::kTimeZone);
    zone.run();
    if (zone.next()) {
        if (const auto name = zone.text("value"); !isTimeZone(name)) {
            unknown.push_back("the time zone is " + name);
        }
    }
    return unknown;
}

std::vector<std::string> wrongTurns(Connection& connection) {
    if (connection.dialect() == Dialect::Sqlite) {
        return {}; // the file itself counts
    }
    Statement query(connection, "select_ledger_turn");
    query.run();
    return query.next() ? std::vector<std::string>() : std::vector<std::string>{"no turn is counted"};
}

} // namespace rw::sql
