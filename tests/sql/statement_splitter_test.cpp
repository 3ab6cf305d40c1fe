// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/statement_splitter.h"

#include "core/sql/migration.h"

#include <gmock/gmock.h>

#include <stdexcept>

namespace rw::sql::test {

using testing::ElementsAre;
using testing::IsEmpty;

namespace {

std::vector<std::string> onSqlite(std::string_view sql) { return splitStatements(sql, Dialect::Sqlite); }
std::vector<std::string> onPostgres(std::string_view sql) { return splitStatements(sql, Dialect::Postgres); }

} // namespace

TEST(StatementSplitter, PartsAtSemicolonsAndDropsWhatIsBlank) {
    for (const auto split : {onSqlite, onPostgres}) {
        EXPECT_THAT(split(""), IsEmpty());
        EXPECT_THAT(split(" \n;; ; -- nothing\n/* here */"), IsEmpty());
        EXPECT_THAT(split("SELECT 1; SELECT 2"), ElementsAre("SELECT 1", "SELECT 2"));
        EXPECT_THAT(split("\n  SELECT 1\n;\nSELECT 2;\n"), ElementsAre("SELECT 1", "SELECT 2"));
    }
}

TEST(StatementSplitter, KnowsQuotes) {
    for (const auto split : {onSqlite, onPostgres}) {
        EXPECT_THAT(split("SELECT 'a;b'; SELECT 2"), ElementsAre("SELECT 'a;b'", "SELECT 2"));
        EXPECT_THAT(split("SELECT 'it''s; so'; SELECT 2"), ElementsAre("SELECT 'it''s; so'", "SELECT 2"));
        EXPECT_THAT(split("SELECT ''; SELECT ''''; SELECT 3"), ElementsAre("SELECT ''", "SELECT ''''", "SELECT 3"));
        EXPECT_THAT(split(R"(SELECT "a;""b"; SELECT 2)"), ElementsAre(R"(SELECT "a;""b")", "SELECT 2"));
        EXPECT_THAT(split("SELECT '-- no comment; /* nor this'; SELECT 2"),
                    ElementsAre("SELECT '-- no comment; /* nor this'", "SELECT 2"));
        EXPECT_THAT(split(R"(SELECT 'a\'; SELECT 2)"), ElementsAre(R"(SELECT 'a\')", "SELECT 2"));
        EXPECT_THAT(split("SELECT 'ünï; 🎾'; SELECT 2"), ElementsAre("SELECT 'ünï; 🎾'", "SELECT 2"));
    }
    EXPECT_THAT(onSqlite("SELECT [a;b], `c;d`; SELECT 2"), ElementsAre("SELECT [a;b], `c;d`", "SELECT 2"));
    EXPECT_THAT(onPostgres("SELECT a[1]; SELECT 2"), ElementsAre("SELECT a[1]", "SELECT 2"));
    EXPECT_THAT(onPostgres(R"(SELECT E'a\';b'; SELECT 2)"), ElementsAre(R"(SELECT E'a\';b')", "SELECT 2"));
}

TEST(StatementSplitter, DropsCommentsOutsideQuotes) {
    for (const auto split : {onSqlite, onPostgres}) {
        EXPECT_THAT(split("SELECT 1 -- it's; so\n; SELECT 2"), ElementsAre("SELECT 1", "SELECT 2"));
        EXPECT_THAT(split("SELECT/* ; ' \" */1; SELECT 2"), ElementsAre("SELECT 1", "SELECT 2"));
        EXPECT_THAT(split("SELECT 1 -- the end"), ElementsAre("SELECT 1"));
        EXPECT_THAT(split("SELECT 3 - -1; SELECT 4 / 2"), ElementsAre("SELECT 3 - -1", "SELECT 4 / 2"));
    }
    // PostgreSQL nests block comments (manual 4.1.5), SQLite does not (sqlite.org/lang_comment.html).
    EXPECT_THAT(onPostgres("SELECT 1 /* a /* b; */ c; */; SELECT 2"), ElementsAre("SELECT 1", "SELECT 2"));
    EXPECT_THAT(onSqlite("SELECT 1 /* a /* b; */; SELECT 2"), ElementsAre("SELECT 1", "SELECT 2"));
}

TEST(StatementSplitter, KnowsDollarQuotesInPostgresOnly) {
    const std::string function = "CREATE FUNCTION f() RETURNS trigger LANGUAGE plpgsql AS $$\n"
                                 "BEGIN\n    IF true THEN RAISE 'it''s'; END IF;\n    RETURN NEW; -- kept\nEND $$";
    EXPECT_THAT(onPostgres(function + ";\nSELECT 2;"), ElementsAre(function, "SELECT 2"));
    EXPECT_THAT(onPostgres("SELECT $body$ a; $$ b; $other$ c; $body$; SELECT 2"),
                ElementsAre("SELECT $body$ a; $$ b; $other$ c; $body$", "SELECT 2"));
    EXPECT_THAT(onPostgres("SELECT $1; SELECT $2"), ElementsAre("SELECT $1", "SELECT $2"));
    EXPECT_THAT(onSqlite("SELECT $a; SELECT $b"), ElementsAre("SELECT $a", "SELECT $b"));
}

TEST(StatementSplitter, KeepsATriggersBodyTogether) {
    const std::string trigger =
        "CREATE TRIGGER t BEFORE INSERT ON x WHEN CASE WHEN NEW.a THEN 1 ELSE 0 END\n"
        "BEGIN\n"
        "    SELECT CASE WHEN NEW.a > 1 THEN CASE NEW.b WHEN 1 THEN RAISE(ABORT, 'a;b') END END;\n"
        "    UPDATE x SET \"end\" = 1;\n"
        "END";
    EXPECT_THAT(onSqlite(trigger + ";\nSELECT 2;"), ElementsAre(trigger, "SELECT 2"));
    EXPECT_THAT(onSqlite("create temp trigger t after delete on x begin delete from y; end; select 2"),
                ElementsAre("create temp trigger t after delete on x begin delete from y; end", "select 2"));
    const std::string atomic =
        "CREATE FUNCTION f() RETURNS int BEGIN ATOMIC SELECT 1; SELECT CASE WHEN true THEN 2 END; END";
    EXPECT_THAT(onPostgres(atomic + "; SELECT 2"), ElementsAre(atomic, "SELECT 2"));
}

TEST(StatementSplitter, BeginAndEndElsewhereAreStatements) {
    EXPECT_THAT(onSqlite("BEGIN; SELECT CASE WHEN 1 THEN 2 END; END; SELECT 3"),
                ElementsAre("BEGIN", "SELECT CASE WHEN 1 THEN 2 END", "END", "SELECT 3"));
    EXPECT_THAT(onSqlite("CREATE VIEW v AS SELECT CASE WHEN 1 THEN 2 END; SELECT 3"),
                ElementsAre("CREATE VIEW v AS SELECT CASE WHEN 1 THEN 2 END", "SELECT 3"));
}

TEST(StatementSplitter, WhatNeverEndsIsAMistake) {
    EXPECT_THROW((void)onSqlite("SELECT 'a; SELECT 2"), std::logic_error);
    EXPECT_THROW((void)onSqlite("SELECT \"a; SELECT 2"), std::logic_error);
    EXPECT_THROW((void)onSqlite("SELECT 1 /* a; SELECT 2"), std::logic_error);
    EXPECT_THROW((void)onPostgres("SELECT 1 /* a /* b */; SELECT 2"), std::logic_error);
    EXPECT_THROW((void)onPostgres("SELECT $$ a; SELECT 2"), std::logic_error);
    EXPECT_THROW((void)onSqlite("CREATE TRIGGER t AFTER INSERT ON x BEGIN SELECT 1;"), std::logic_error);
}

TEST(StatementSplitter, PartsEveryMigration) {
    for (const auto dialect : {Dialect::Sqlite, Dialect::Postgres}) {
        for (const auto& step : migrations(dialect)) {
            EXPECT_FALSE(step.statements.empty()) << step.name;
            for (const auto& statement : step.statements) {
                const auto first = statement.substr(0, statement.find(' '));
                EXPECT_THAT(first, testing::AnyOf("CREATE", "INSERT", "ALTER", "UPDATE", "DROP", "PRAGMA"))
                    << statement;
            }
        }
    }
}

} // namespace rw::sql::test
