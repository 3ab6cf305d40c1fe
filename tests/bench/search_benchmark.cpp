// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/demo_shop.h"
#include "core/desk/tagged_job.h"
#include "core/desk/unit_of_work.h"
#include "tests/bench/large_shop/large_shop.h"
#include "tests/bench/large_shop/questions.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"

#include <QCoreApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

// How long the counter's search takes in a shop with 200 000 customers and 1 000 000 jobs, on both engines, beside the
// same questions put to plain SQLite, and how long a person and a job card take to open. The goals: 16 ms from the
// question to the list and 50 ms to a card, 99 times out of 100.
namespace rw::large {
namespace {

using Clock = std::chrono::steady_clock;
constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);
constexpr Size kLarge{200'000, 1'000'000};
constexpr Size kBrief{20'000, 100'000};
constexpr std::size_t kQuestions = 1'000;
constexpr std::size_t kPlainQuestions = 200;
constexpr std::size_t kCards = 300;

/// A question that is refused has measured nothing.
template<class Value>
void must(const Result<Value>& result) {
    if (!result) {
        throw std::runtime_error("refused, code " + std::to_string(static_cast<int>(result.error().code())) + ": " +
                                 result.error().text("what") + " " + result.error().text("text"));
    }
}

struct Times {
    std::vector<double> milliseconds;

    template<class Work>
    void measure(Work work) {
        const auto before = Clock::now();
        work();
        milliseconds.push_back(std::chrono::duration<double, std::milli>(Clock::now() - before).count());
    }
    [[nodiscard]] double percentile(double share) const {
        std::vector<double> sorted = milliseconds;
        std::ranges::sort(sorted);
        return sorted.at(static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1)));
    }
};

void print(const std::string& what, const Times& times) {
    std::printf("  %-34s median %8.2f ms   99th of 100 %8.2f ms\n", what.c_str(), times.percentile(0.5),
                times.percentile(0.99));
    std::fflush(stdout);
}

std::string kindWord(Question::Kind kind) {
    switch (kind) {
    case Question::Kind::LastDigits:
        return "last four digits (30 %)";
    case Question::Kind::Fragment:
        return "fragments of names (50 %)";
    case Question::Kind::Misspelt:
        return "one letter wrong (10 %)";
    case Question::Kind::Nobody:
        break;
    }
    return "nobody (10 %)";
}

/// What PersonPresenter asks for each text.
void search(desk::Ledger& ledger, const std::string& text) {
    const auto work = ledger.begin(desk::Access::Read);
    must(desk::listPeople(*work, text));
    must(desk::jobByTag(*work, text));
}

Times searches(desk::Ledger& ledger, const std::vector<Question>& questions) {
    Times first;
    first.measure([&] { search(ledger, "first of all"); });
    print("the first question of a day", first);
    Times all;
    for (const auto kind :
         {Question::Kind::LastDigits, Question::Kind::Fragment, Question::Kind::Misspelt, Question::Kind::Nobody}) {
        Times own;
        for (const Question& question : questions) {
            if (question.kind == kind) {
                own.measure([&] { search(ledger, question.text); });
            }
        }
        print(kindWord(kind), own);
        all.milliseconds.insert(all.milliseconds.end(), own.milliseconds.begin(), own.milliseconds.end());
    }
    print("every question", all);
    return all;
}

void cards(desk::Ledger& ledger, sql::Connection& connection) {
    Times people;
    Times jobs;
    for (const auto& row : connection.rows("SELECT id, customer_id FROM job WHERE id % 3331 = 0 OR state IN ('logged', "
                                           "'on-the-machine') ORDER BY id LIMIT " +
                                           std::to_string(kCards))) {
        people.measure(
            [&] { must(desk::person(*ledger.begin(desk::Access::Read), CustomerId::of(std::stoll(row[1])))); });
        jobs.measure([&] {
            must(desk::jobCard(*ledger.begin(desk::Access::Read), JobId::of(std::stoll(row[0])), std::nullopt));
        });
    }
    print("a person opens", people);
    print("a job card opens", jobs);
}

Times plainSearches(sql::Connection& connection, const std::vector<Question>& questions) {
    PlainSearch plain(connection);
    Times times;
    for (std::size_t i = 0; i < std::min(kPlainQuestions, questions.size()); ++i) {
        times.measure([&] { (void)plain.find(questions[i].text); });
    }
    print("plain SQLite, every question", times);
    return times;
}

void run(sql::Dialect dialect, const Size& size) {
    const auto place = sql::test::makePlace(dialect);
    const auto before = Clock::now();
    {
        const auto ledger = sql::test::mustOpen(place->address());
        must(desk::inTransaction(*ledger, desk::Access::Write,
                                 [](desk::Transaction& work) { return desk::stockDemoShop(work, kNow); }));
    }
    const auto connection = place->connect();
    fillWithThePast(*connection, size);
    std::printf("%s: %lld customers, %lld jobs, built in %.0f s\n",
                dialect == sql::Dialect::Sqlite ? "SQLite" : "PostgreSQL", static_cast<long long>(size.customers),
                static_cast<long long>(size.jobs), std::chrono::duration<double>(Clock::now() - before).count());
    const auto questions = questionsAbout(*connection, kQuestions);
    const auto ledger = sql::test::mustOpen(place->address());
    const Times ours = searches(*ledger, questions);
    cards(*ledger, *connection);
    if (dialect == sql::Dialect::Sqlite) {
        const Times plain = plainSearches(*connection, questions);
        std::printf("  plain SQLite takes %.1f times as long (99th of 100)\n\n",
                    plain.percentile(0.99) / ours.percentile(0.99));
    }
}

} // namespace
} // namespace rw::large

// search_benchmark [short] [sqlite | postgres]
int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv); // Qt finds its database drivers through it
    const std::vector<std::string_view> given(argv + 1, argv + argc);
    const auto isGiven = [&](std::string_view word) { return std::ranges::find(given, word) != given.end(); };
    const auto size = isGiven("short") ? rw::large::kBrief : rw::large::kLarge;
    if (!isGiven("postgres")) {
        rw::large::run(rw::sql::Dialect::Sqlite, size);
    }
    if (!isGiven("sqlite")) {
        rw::large::run(rw::sql::Dialect::Postgres, size);
    }
    return 0;
}
