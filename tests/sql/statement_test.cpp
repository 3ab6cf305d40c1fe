// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/statement.h"

#include "core/base/world_error.h"
#include "core/sql/resource_text.h"
#include "core/sql/work.h"
#include "tests/sql/engines.h"

#include <stdexcept>

namespace rw::sql::test {

class StatementTest : public OnEngine {};
ON_BOTH_ENGINES(StatementTest);

TEST_P(StatementTest, PreparesEveryQueryFile) {
    const auto connection = connectMigrated();
    EXPECT_FALSE(queryNames(GetParam()).empty());
    for (const auto& name : queryNames(GetParam())) {
        EXPECT_NO_THROW(Statement(*connection, name)) << name;
    }
}

TEST_P(StatementTest, BindsRunsAndReads) {
    const auto connection = connectMigrated();
    {
        auto work = Work::writing(*connection);
        Statement insert(*connection, "insert_schema_version");
        insert.bind(":version", 7000).bind(":name", "it's \"quoted\", ünïcode 🎾").bind(":applied_at", -5'000'000'000);
        insert.run();
        work.commit();
    }
    Statement select(*connection, "select_schema_version");
    select.run();
    ASSERT_TRUE(select.next());
    EXPECT_EQ(select.integer("version"), 7000);
    EXPECT_FALSE(select.next());
    EXPECT_EQ(connection->scalar("SELECT name FROM schema_version WHERE version = 7000"), "it's \"quoted\", ünïcode 🎾");
    EXPECT_EQ(connection->scalar("SELECT applied_at FROM schema_version WHERE version = 7000"), "-5000000000");
}

TEST_P(StatementTest, AMistakeOfTheProgramIsAMistake) {
    const auto connection = connectMigrated();
    EXPECT_THROW(Statement(*connection, "no_such_query"), std::logic_error);
    Statement insert(*connection, "insert_schema_version");
    EXPECT_THROW(insert.bind(":versoin", 1), std::logic_error);
    insert.bind(":version", 1);
    EXPECT_THROW(insert.run(), std::logic_error);
}

TEST_P(StatementTest, TwoUsesOfOneQueryDoNotDisturbOneAnother) {
    const auto connection = connectMigrated();
    Statement outer(*connection, "list_job_transitions");
    outer.run();
    int outerRows = 0;
    int innerRows = 0;
    while (outer.next()) {
        ++outerRows;
        Statement inner(*connection, "list_job_transitions");
        inner.run();
        innerRows = 0;
        while (inner.next()) {
            ++innerRows;
        }
    }
    EXPECT_EQ(outerRows, 16);
    EXPECT_EQ(outerRows, innerRows);
}

TEST_P(StatementTest, WhatTheEngineRefusesNamesTheQueryAndItsNumbersAndNoWords) {
    const auto connection = connectMigrated();
    auto work = Work::writing(*connection);
    Statement insert(*connection, "insert_schema_version");
    insert.bind(":version", 1).bind(":name", "Petra Lindobi").bind(":applied_at", 5);
    try {
        insert.run();
        FAIL() << "a version is written once";
    } catch (const LedgerGuard& guard) {
        EXPECT_STREQ(guard.what(), "schema_version_pkey (insert_schema_version :version=1 :applied_at=5)");
    }
}

TEST_P(StatementTest, ATextHoldsNoNul) {
    const auto connection = connectMigrated();
    Statement insert(*connection, "insert_schema_version");
    EXPECT_THROW(insert.bind(":name", std::string_view("a\0b", 3)), LedgerGuard);
}

TEST_P(StatementTest, AnEmptyTextIsNotNothing) {
    const auto connection = connectMigrated();
    auto work = Work::writing(*connection);
    Statement insert(*connection, "insert_schema_version");
    insert.bind(":version", 7000).bind(":name", "").bind(":applied_at", 5).run();
    EXPECT_EQ(connection->scalar("SELECT count(*) FROM schema_version WHERE name = ''"), "1");
    insert.bind(":version", 7001).bind(":name", std::nullopt).bind(":applied_at", 5);
    EXPECT_THROW(insert.run(), LedgerGuard);
}

} // namespace rw::sql::test
