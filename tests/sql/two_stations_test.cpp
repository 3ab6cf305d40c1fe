// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/world_error.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/work.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/small_shop.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <thread>

namespace rw::sql::test {

class TwoStationsTest : public OnEngine {
protected:
    /// So that a test of waiting in vain need not wait long.
    static void waitBriefly(Connection& connection) {
        connection.execute(connection.dialect() == Dialect::Sqlite ? "PRAGMA busy_timeout = 20"
                                                                   : "SET lock_timeout TO '20ms'");
    }
};
ON_BOTH_ENGINES(TwoStationsTest);

TEST_P(TwoStationsTest, NoneOfTheirWritesIsLost) {
    constexpr int kStations = 3;
    constexpr int kTimes = 8;
    {
        const auto ledger = mustOpen(place().address());
        const auto work = ledger->begin(desk::Access::Write);
        work->shop().set("count", "0");
        work->commit();
    }
    std::vector<std::string> errors(kStations);
    {
        std::vector<std::jthread> stations;
        stations.reserve(kStations);
        for (auto& error : errors) {
            stations.emplace_back([&] {
                try {
                    const auto ledger = mustOpen(place().address());
                    for (int time = 0; time < kTimes; ++time) {
                        (void)desk::inTransaction(*ledger, desk::Access::Write, [](desk::Transaction& work) {
                            const int count = std::stoi(work.shop().setting("count").value());
                            work.shop().set("count", std::to_string(count + 1));
                            return Result<void>();
                        });
                    }
                } catch (const std::exception& thrown) {
                    error = thrown.what();
                }
            });
        }
    }
    EXPECT_THAT(errors, testing::Each(""));
    const auto ledger = mustOpen(place().address());
    EXPECT_EQ(ledger->begin(desk::Access::Read)->shop().setting("count"), std::to_string(kStations * kTimes));
}

TEST_P(TwoStationsTest, OneWritesAtATimeAndTheOtherIsToldThatItIsBusy) {
    const auto first = connectMigrated();
    const auto second = place().connect();
    waitBriefly(*second);
    auto writing = Work::writing(*first);
    EXPECT_THROW((void)Work::writing(*second), LedgerBusy);
    EXPECT_NO_THROW(Work::reading(*second).commit()) << "reading waits for nobody";
    writing.commit();
    EXPECT_NO_THROW(Work::writing(*second).commit());
}

TEST_P(TwoStationsTest, WhoReadsSeesOneStateThroughout) {
    const auto reader = connectMigrated();
    const auto writer = place().connect();
    auto reading = Work::reading(*reader);
    EXPECT_EQ(reader->scalar("SELECT count(*) FROM setting"), "0");
    write(*writer, {"INSERT INTO setting (name, value) VALUES ('words', 'new')"});
    EXPECT_EQ(reader->scalar("SELECT count(*) FROM setting"), "0");
    reading.commit();
    EXPECT_EQ(reader->scalar("SELECT count(*) FROM setting"), "1");
}

TEST_P(TwoStationsTest, WhoReadsWritesNothing) {
    const auto connection = connectMigrated();
    {
        const auto reading = Work::reading(*connection);
        EXPECT_THROW(connection->execute("INSERT INTO setting (name, value) VALUES ('words', 'x')"), LedgerReadOnly);
    }
    EXPECT_NO_THROW(write(*connection, {"INSERT INTO setting (name, value) VALUES ('words', 'x')"}));
}

TEST_P(TwoStationsTest, WhatIsNotCommittedIsNotKept) {
    const auto connection = connectMigrated();
    {
        const auto writing = Work::writing(*connection);
        connection->execute("INSERT INTO setting (name, value) VALUES ('words', 'x')");
    }
    EXPECT_EQ(connection->scalar("SELECT count(*) FROM setting"), "0");
}

TEST_P(TwoStationsTest, ATransactionInsideAnotherIsAMistake) {
    const auto connection = connectMigrated();
    auto writing = Work::writing(*connection);
    connection->execute("INSERT INTO setting (name, value) VALUES ('words', 'x')");
    EXPECT_THROW((void)Work::writing(*connection), std::logic_error);
    EXPECT_THROW((void)Work::reading(*connection), std::logic_error);
    writing.commit();
    EXPECT_EQ(connection->scalar("SELECT count(*) FROM setting"), "1") << "the first one was not disturbed";
}

TEST_P(TwoStationsTest, AWriterWhoPassesTheQueueIsStillFoundOut) {
    if (onSqlite()) {
        return; // there the engine itself lets one in at a time
    }
    const auto ours = connectMigrated();
    const auto passer = place().connect();
    write(*ours, {"INSERT INTO setting (name, value) VALUES ('count', '1')"});
    auto work = Work::writing(*ours);
    EXPECT_EQ(ours->scalar("SELECT value FROM setting"), "1");
    passer->execute("UPDATE setting SET value = '7'");
    EXPECT_THROW(ours->execute("UPDATE setting SET value = '2'"), LedgerBusy);
}

TEST_P(TwoStationsTest, AFileThatIsMovedOrReplacedIsALedgerLost) {
    if (!onSqlite()) {
        return; // how a server is lost is told in postgres_ledger_test
    }
    const auto ledger = mustOpen(place().address());
    std::filesystem::rename(place().address(), place().address() + ".elsewhere");
    EXPECT_THROW((void)ledger->begin(desk::Access::Write), LedgerLost);
    EXPECT_THROW((void)ledger->changeCount(), LedgerLost);
    std::filesystem::copy_file(place().address() + ".elsewhere", place().address());
    EXPECT_THROW((void)ledger->begin(desk::Access::Read), LedgerLost);
}

} // namespace rw::sql::test
