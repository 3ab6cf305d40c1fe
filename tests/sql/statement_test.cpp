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

} // namespace rw::sql::test
