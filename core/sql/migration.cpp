// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/migration.h"

#include "core/sql/resource_text.h"
#include "core/sql/statement.h"
#include "core/sql/statement_splitter.h"
#include "core/sql/work.h"

#include <charconv>
#include <map>
#include <stdexcept>

namespace rw::sql {

namespace {

struct FileName {
    int version;
    std::string name;
    std::string dialect; ///< "" for both
};

FileName takeApart(const std::string& file) {
    FileName result{};
    const auto underscore = file.find('_');
    const auto [end, error] = std::from_chars(file.data(), file.data() + file.size(), result.version);
    if (underscore != 4 || error != std::errc() || end != file.data() + 4 || !file.ends_with(".sql")) {
        throw std::logic_error("not the name of a migration: " + file);
    }
    const auto stem = file.substr(5, file.size() - 5 - 4);
    const auto dot = stem.find('.');
    result.name = stem.substr(0, dot);
    result.dialect = dot == std::string::npos ? std::string() : stem.substr(dot + 1);
    return result;
}

void append(std::vector<std::string>& statements, const std::string& file, Dialect dialect) {
    for (auto& statement : splitStatements(migrationText(file), dialect)) {
        statements.push_back(std::move(statement));
    }
}

bool hasVersionTable(Connection& connection) {
    Statement query(connection, "select_has_schema_version");
    query.run();
    return query.next() && query.flag("tables");
}

void take(Connection& connection, const Migration& step, Instant now) {
    for (const auto& statement : step.statements) {
        connection.execute(statement);
    }
    Statement record(connection, "insert_schema_version");
    record.bind(":version", step.version)
        .bind(":name", step.name)
        .bind(":applied_at", now.time_since_epoch().count())
        .run();
    if (connection.dialect() == Dialect::Sqlite) {
        connection.execute("PRAGMA user_version = " + std::to_string(step.version));
    }
}

} // namespace

std::vector<Migration> migrations(Dialect dialect) {
    std::map<int, Migration> steps;
    // By name, so that what both engines share comes before what is one engine's own.
    std::map<std::pair<int, std::string>, std::string> files;
    for (const auto& file : migrationFiles()) {
        const auto parts = takeApart(file);
        if (parts.dialect.empty() || parts.dialect == dialectText(dialect)) {
            files[{parts.version, parts.dialect}] = file;
            auto& step = steps[parts.version];
            if (!step.name.empty() && step.name != parts.name) {
                throw std::logic_error("two migrations with one number: " + file);
            }
            step.version = parts.version;
            step.name = parts.name;
        }
    }
    for (const auto& [key, file] : files) {
        append(steps[key.first].statements, file, dialect);
    }
    std::vector<Migration> result;
    for (auto& [version, step] : steps) {
        if (version != static_cast<int>(result.size()) + 1) {
            throw std::logic_error("a migration is missing before number " + std::to_string(version));
        }
        result.push_back(std::move(step));
    }
    return result;
}

int latestVersion() {
    int latest = 0;
    for (const auto& file : migrationFiles()) {
        latest = std::max(latest, takeApart(file).version);
    }
    return latest;
}

int schemaVersion(Connection& connection) {
    if (!hasVersionTable(connection)) {
        return 0;
    }
    Statement query(connection, "select_schema_version");
    query.run();
    return query.next() ? static_cast<int>(query.integer("version")) : 0;
}

void migrate(Connection& connection, const std::vector<Migration>& steps, Instant now,
             const BeforeChange& beforeChange) {
    bool told = false;
    for (const auto& step : steps) {
        if (step.version <= schemaVersion(connection)) {
            continue;
        }
        auto work = Work::changingSchema(connection);
        const auto version = schemaVersion(connection);
        if (step.version <= version) {
            continue; // another process was first
        }
        if (beforeChange && version > 0 && !told) {
            beforeChange(version);
            told = true;
        }
        take(connection, step, now);
        work.commit();
    }
}

} // namespace rw::sql
