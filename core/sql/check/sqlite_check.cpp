// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"
#include "core/base/world_error.h"
#include "core/sql/check/engine_check.h"
#include "core/sql/ledger_file.h"
#include "core/sql/migration.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"

#include <array>
#include <map>
#include <utility>

namespace rw::sql {

namespace {

using Findings = std::vector<desk::Finding>;

void checkSettings(Connection& connection, Findings& findings) {
    const std::array<std::pair<const char*, std::string>, 6> wanted = {{
        {"journal_mode", "wal"},
        {"synchronous", "2"},
        {"foreign_keys", "1"},
        {"recursive_triggers", "1"},
        {"application_id", std::to_string(kApplicationId)},
        {"user_version", std::to_string(latestVersion())},
    }};
    for (const auto& [name, value] : wanted) {
        const auto found = connection.scalar(std::string("PRAGMA ") + name);
        if (found != value) {
            std::string what = name;
            what.append(" is ").append(found).append(", not ").append(value);
            findings.push_back({kSettings, std::move(what)});
        }
    }
}

void checkPages(Connection& connection, Findings& findings) {
    // Also tells of rows that break NOT NULL and CHECK.
    for (const auto& row : connection.rows("PRAGMA integrity_check(100)")) {
        if (row.front() != "ok") {
            findings.push_back({kSound, row.front()});
        }
    }
}

void checkReferences(Connection& connection, Findings& findings) {
    for (const auto& row : connection.rows("PRAGMA foreign_key_check")) {
        findings.push_back({kReferences, row[0] + " " + row[1] + ": its " + row[2] + " is not there"});
    }
}

using Schema = std::map<std::pair<std::string, std::string>, std::string>;

Schema schemaOf(Connection& connection) {
    Schema schema;
    Statement query(connection, "list_schema");
    query.run();
    while (query.next()) {
        schema[{query.text("type"), query.text("name")}] = query.optionalText("sql").value_or("");
    }
    return schema;
}

/// What a ledger looks like that only the migrations have touched.
Schema schemaAsMade() {
    const auto fresh = Connection::openSqlite(":memory:");
    migrate(*fresh, migrations(Dialect::Sqlite), Instant());
    return schemaOf(*fresh);
}

void checkSchema(Connection& connection, Findings& findings) {
    const auto made = schemaAsMade();
    auto found = schemaOf(connection);
    for (const auto& [key, sql] : made) {
        const auto name = key.first + " " + key.second;
        const auto there = found.find(key);
        if (there == found.end()) {
            findings.push_back({kSchema, name + " is missing"});
        } else if (there->second != sql) {
            findings.push_back({kSchema, name + " was changed"});
        }
        found.erase(key);
    }
    for (const auto& [key, sql] : found) {
        findings.push_back({kSchema, key.first + " " + key.second + " does not belong to it"});
    }
}

/// The kinds of value that belong into a column declared so; "" for any.
std::string kindsOf(const std::string& declared) {
    if (declared == "BIGINT" || declared == "INTEGER") {
        return "'integer', 'null'";
    }
    if (declared == "DOUBLE PRECISION") {
        return "'real', 'integer', 'null'";
    }
    return declared == "TEXT" ? "'text', 'null'" : "";
}

/// SQLite keeps "abc" in a column of numbers if it is told to.
void checkColumns(Connection& connection, Findings& findings) {
    for (const auto& table : connection.rows("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
        for (const auto& column : connection.rows("PRAGMA table_info(\"" + table[0] + "\")")) {
            const auto kinds = kindsOf(column[2]);
            if (kinds.empty()) {
                continue;
            }
            std::string sql = "SELECT count(*) FROM \"";
            sql.append(table[0]).append("\" WHERE typeof(\"").append(column[1]);
            sql.append("\") NOT IN (").append(kinds).append(")");
            if (const auto wrong = connection.scalar(sql); wrong != "0") {
                std::string what = table[0];
                what.append(".").append(column[1]).append(": ").append(wrong).append(" rows are no ");
                findings.push_back({kColumns, what.append(column[2])});
            }
        }
    }
}

} // namespace

std::vector<desk::Finding> checkSqlite(Connection& connection) {
    Findings findings;
    checkSettings(connection, findings);
    auto work = Work::reading(connection);
    checkPages(connection, findings);
    checkReferences(connection, findings);
    checkSchema(connection, findings);
    checkColumns(connection, findings);
    work.commit();
    return findings;
}

} // namespace rw::sql
