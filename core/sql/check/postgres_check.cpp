// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/world_error.h"
#include "core/sql/check/engine_check.h"
#include "core/sql/check/postgres_schema.h"
#include "core/sql/migration.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"

#include <array>
#include <utility>

namespace rw::sql {

namespace {

using Findings = std::vector<desk::Finding>;

void checkSettings(Connection& connection, Findings& findings) {
    const std::array<std::pair<const char*, const char*>, 3> wanted = {{
        {"server_encoding", "UTF8"},
        {"synchronous_commit", "on"},
        {"session_replication_role", "origin"}, // anything else puts triggers to sleep
    }};
    for (const auto& [name, value] : wanted) {
        const auto found = connection.scalar(std::string("SELECT current_setting('") + name + "')");
        if (found != value) {
            findings.push_back({kSettings, std::string(name) + " is " + found + ", not " + value});
        }
    }
}

/// How many rows of `table` (called "child" in it) meet `condition`.
std::string rowsOf(Connection& connection, const std::string& table, const std::string& condition) {
    std::string sql = "SELECT count(*) FROM ";
    sql.append(table).append(" AS child WHERE ").append(condition);
    return connection.scalar(sql);
}

void checkReferences(Connection& connection, Findings& findings) {
    Statement references(connection, "list_references");
    references.run();
    while (references.next()) {
        const auto child = references.text("child");
        const auto column = references.text("child_column");
        const auto parent = references.text("parent");
        std::string condition = "child.";
        condition.append(column).append(" IS NOT NULL AND NOT EXISTS (SELECT 1 FROM ").append(parent);
        condition.append(" AS parent WHERE parent.").append(references.text("parent_column"));
        condition.append(" = child.").append(column).append(")");
        if (const auto rows = rowsOf(connection, child, condition); rows != "0") {
            std::string what = child;
            what.append(".").append(column).append(": for ").append(rows).append(" rows the ").append(parent);
            findings.push_back({kReferences, what.append(" is not there")});
        }
    }
}

void checkColumns(Connection& connection, Findings& findings) {
    Statement checks(connection, "list_checks");
    checks.run();
    while (checks.next()) {
        const auto owner = checks.text("owner");
        const auto rows = rowsOf(connection, owner, "NOT (" + checks.text("expression") + ")");
        if (rows != "0") {
            std::string what = owner;
            what.append(": ").append(rows).append(" rows break ").append(checks.text("name"));
            findings.push_back({kColumns, std::move(what)});
        }
    }
}

} // namespace

std::vector<desk::Finding> checkPostgres(Connection& connection) {
    Findings findings;
    const auto made = schemaAsMade(connection);
    auto work = Work::reading(connection);
    checkSettings(connection, findings);
    if (const int version = schemaVersion(connection); version != latestVersion()) {
        findings.push_back(
            {kSettings, "its schema is " + std::to_string(version) + ", not " + std::to_string(latestVersion())});
    }
    for (auto& difference : schemaDifferences(schemaOf(connection), made)) {
        findings.push_back({kSchema, std::move(difference)});
    }
    checkReferences(connection, findings);
    checkColumns(connection, findings);
    work.commit();
    return findings;
}

} // namespace rw::sql
