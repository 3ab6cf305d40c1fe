// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/pattern.h"
#include "tests/sql/small_shop.h"

#include <gtest/gtest.h>

namespace rw::sql::test {

class TailsTest : public OnEngine {
protected:
    void SetUp() override {
        standIn(smallShop().copy(GetParam()));
        m_connection = place().connect();
    }
    [[nodiscard]] Connection& connection() { return *m_connection; }
    [[nodiscard]] std::string guard(std::string_view sql) { return guardAgainst(*m_connection, sql); }

private:
    std::unique_ptr<Connection> m_connection;
};
ON_BOTH_ENGINES(TailsTest);

TEST_P(TailsTest, TailsAreToldOfWhatWasCutAndStayTold) {
    const auto tailsOf = [](const std::string& attempt, const std::string& low, const std::string& high) {
        return "INSERT INTO tails (attempt_id, part, low_mm, high_mm, at, staff_id, station) VALUES (" + attempt +
               ", 'piece', " + low + ", " + high + ", 1, 1, 'bench')";
    };
    EXPECT_EQ(guard(tailsOf("2", "380", "380")), "tails_after_cut") << "the crosses hang on their reel";
    EXPECT_NE(guard(tailsOf("1", "380", "370")), "");
    EXPECT_NE(guard(tailsOf("1", "-1", "370")), "");
    write(connection(), {tailsOf("1", "380", "380")});
    EXPECT_EQ(guard("UPDATE tails SET low_mm = 0"), "tails_append_only");
    EXPECT_EQ(guard("DELETE FROM tails"), "tails_append_only");
    EXPECT_EQ(guard(onSqlite() ? "INSERT OR REPLACE INTO tails SELECT * FROM tails" : "TRUNCATE tails CASCADE"),
              "tails_append_only");
}

} // namespace rw::sql::test
