// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/postgres_schema.h"

#include "core/sql/check/schema_promise.h"
#include "core/sql/migration.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"

#include <set>

namespace rw::sql {

namespace {

/// Kinds of which the migrations name every one; keys and references that were given no name are counted by the
/// database itself, columns and sequences come with their tables.
const std::set<std::string> kNamedKinds = {"trigger", "function", "view", "table", "rule", "policy"};

std::string nameOf(const PostgresSchema::key_type& key) { return key.first + " " + key.second; }

/// The promise as parts that have no definition.
PostgresSchema promisedParts() {
    PostgresSchema parts;
    for (const auto& [key, body] : promisedSchema(migrations(Dialect::Postgres))) {
        parts[key].body = key.first == "function" ? body : std::string();
    }
    return parts;
}

} // namespace

PostgresSchema schemaOf(Connection& connection) {
    const auto schema = connection.scalar("SELECT quote_ident(current_schema())");
    connection.execute("SET LOCAL search_path TO " + schema); // what is elsewhere is written with its schema
    PostgresSchema parts;
    Statement query(connection, "list_schema");
    query.run();
    while (query.next()) {
        SchemaPart& part = parts[{query.text("type"), query.text("name")}];
        part.awake = part.awake && query.text("state") == "on";
        part.body += query.text("body");
        part.definition += query.text("definition") + "\n";
    }
    return parts;
}

std::optional<PostgresSchema> schemaAsMade(Connection& connection) {
    if (connection.scalar("SELECT CASE WHEN has_database_privilege(current_database(), 'CREATE') "
                          "THEN 'yes' ELSE 'no' END") != "yes") {
        return std::nullopt;
    }
    // Never committed: for nobody else it is ever there.
    const auto work = Work::changingSchema(connection);
    const auto schema = "reelwright_as_made_" + connection.scalar("SELECT pg_backend_pid()");
    connection.execute("CREATE SCHEMA " + schema);
    connection.execute("SET LOCAL search_path TO " + schema);
    for (const Migration& step : migrations(Dialect::Postgres)) {
        for (const auto& statement : step.statements) {
            connection.execute(statement);
        }
    }
    return schemaOf(connection);
}

std::vector<std::string> schemaDifferences(const PostgresSchema& found, const std::optional<PostgresSchema>& made) {
    std::vector<std::string> differences;
    PostgresSchema missing = made ? *made : promisedParts();
    for (const auto& [key, part] : found) {
        const auto known = missing.find(key);
        if (known == missing.end() && (made || kNamedKinds.contains(key.first))) {
            differences.push_back(nameOf(key) + " does not belong to it");
        } else if (!part.awake) {
            differences.push_back(nameOf(key) + " is switched off");
        } else if (known != missing.end() &&
                   (made ? part.definition != known->second.definition : part.body != known->second.body)) {
            differences.push_back(nameOf(key) + " was changed");
        }
        missing.erase(key);
    }
    for (const auto& [key, part] : missing) {
        differences.push_back(nameOf(key) + " is missing");
    }
    return differences;
}

} // namespace rw::sql
