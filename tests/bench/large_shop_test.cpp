// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/customers/search_key.h"
#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "tests/bench/large_shop/large_shop.h"
#include "tests/bench/large_shop/questions.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"

#include <gmock/gmock.h>

#include <algorithm>

// The search benchmark in small: what it asks of a large shop is asked here of one with 3000 customers, and held
// against what plain SQL finds.
namespace rw::large {
namespace {

constexpr Size kSmall{3'000, 9'000};
constexpr std::size_t kQuestions = 400;
constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

class LargeShop : public sql::test::OnEngine {
protected:
    void SetUp() override {
        ASSERT_TRUE(desk::inTransaction(*sql::test::mustOpen(place().address()), desk::Access::Write,
                                        [](desk::Transaction& work) { return desk::stockDemoShop(work, kNow); }));
        m_connection = place().connect();
        fillWithThePast(*m_connection, kSmall); // behind every guard: who is open now would not hear of it
        m_ledger = sql::test::mustOpen(place().address());
    }
    [[nodiscard]] std::vector<std::string> keysFound(const std::string& text) {
        std::vector<std::string> keys;
        const auto people = desk::listPeople(*m_ledger->begin(desk::Access::Read), text);
        for (const auto& person : *people) {
            keys.push_back(searchKey(person.customer.name));
        }
        return keys;
    }
    [[nodiscard]] sql::Connection& connection() { return *m_connection; }
    [[nodiscard]] desk::Ledger& ledger() { return *m_ledger; }

private:
    std::unique_ptr<desk::Ledger> m_ledger;
    std::unique_ptr<sql::Connection> m_connection;
};
ON_BOTH_ENGINES(LargeShop);

TEST_P(LargeShop, IsAWholeLedger) {
    EXPECT_EQ(connection().scalar("SELECT count(*) FROM job WHERE request_key LIKE 'past %'"),
              std::to_string(kSmall.jobs));
    for (const desk::Finding& finding : ledger().check()) {
        ADD_FAILURE() << finding.rule << ": " << finding.what;
    }
}

TEST_P(LargeShop, ItsPeopleAndTheirCardsOpen) {
    const auto row = connection().rows("SELECT id, customer_id FROM job WHERE request_key = 'past 4711'").at(0);
    const auto work = ledger().begin(desk::Access::Read);
    const auto card = desk::jobCard(*work, JobId::of(std::stoll(row[0])), std::nullopt);
    ASSERT_TRUE(card) << static_cast<int>(card.error().code()) << " " << card.error().text("what") << " "
                      << card.error().text("reason");
    EXPECT_EQ(card->job.state, JobState::Collected);
    EXPECT_EQ(card->customer.id, CustomerId::of(std::stoll(row[1])));
    EXPECT_TRUE(desk::person(*work, card->customer.id.value()));
}

TEST_P(LargeShop, FindsWhatPlainSqlFindsAndWhoeverWasMisspelt) {
    const auto plainPlace = sql::test::makePlace(sql::Dialect::Sqlite);
    const auto plain = plainPlace->connect();
    plain->execute("CREATE TABLE customer (id INTEGER PRIMARY KEY, search_key TEXT, removed_at INTEGER)");
    plain->execute("CREATE TABLE contact (customer_id INTEGER, kind TEXT, digits TEXT)");
    plain->execute("BEGIN");
    for (const auto& row : connection().rows("SELECT id, search_key FROM customer")) {
        plain->execute("INSERT INTO customer (id, search_key) VALUES (" + row[0] + ", '" + row[1] + "')");
    }
    for (const auto& row : connection().rows("SELECT customer_id, digits FROM contact WHERE kind = 'phone'")) {
        plain->execute("INSERT INTO contact (customer_id, kind, digits) VALUES (" + row[0] + ", 'phone', '" + row[1] +
                       "')");
    }
    plain->execute("COMMIT");
    PlainSearch search(*plain);
    int forgiven = 0;
    for (const Question& question : questionsAbout(connection(), kQuestions)) {
        const auto expected = search.find(question.text);
        const auto found = keysFound(question.text);
        if (!expected.empty() || question.kind == Question::Kind::Nobody) {
            EXPECT_EQ(found, expected) << question.text;
        } else if (question.text.size() >= 4) {
            ++forgiven;
            EXPECT_TRUE(found.size() == 20 || std::ranges::count(found, question.meant) > 0)
                << question.text << " for " << question.meant;
        }
    }
    EXPECT_GT(forgiven, 10);
}

} // namespace
} // namespace rw::large
