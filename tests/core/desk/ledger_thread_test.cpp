// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/ledger_thread.h"
#include "tests/core/desk/fake_ledger.h"

#include <gtest/gtest.h>

#include <future>
#include <string>

namespace rw::desk::test {
namespace {

using namespace std::chrono_literals;

Result<StaffId> addSomebody(Transaction& ledger) { return ledger.shop().add(StaffMember{std::nullopt, "Somebody"}); }

/// What the thread opens: the test keeps hold of it, and may make opening fail.
class LedgerThreadTest : public ::testing::Test {
protected:
    LedgerThread::Open opener() {
        return [this]() -> std::unique_ptr<Ledger> {
            ++opened;
            if (unreachable) {
                throw LedgerLost("no server");
            }
            auto ledger = std::make_unique<FakeLedger>();
            last = ledger.get();
            return ledger;
        };
    }
    static LedgerThread::Post atOnce() {
        return [](const std::function<void()>& call) { call(); };
    }
    /// Runs one piece of work and waits for what comes back: a value, or the error that was posted.
    template<class Work>
    auto answer(LedgerThread& thread, Work work) {
        using Value = decltype(work(std::declval<Transaction&>()));
        auto promise = std::make_shared<std::promise<Value>>();
        auto future = promise->get_future();
        thread.run(
            Access::Write, {}, work, [promise](Value value) { promise->set_value(std::move(value)); },
            [promise](std::exception_ptr error) { promise->set_exception(std::move(error)); });
        return future.get();
    }

    std::atomic<int> opened = 0;
    std::atomic<bool> unreachable = false;
    std::atomic<FakeLedger*> last = nullptr;
};

TEST_F(LedgerThreadTest, WorksInOrderOnOneLedger) {
    LedgerThread thread(opener(), atOnce());
    for (int i = 0; i < 20; ++i) {
        ASSERT_TRUE(answer(thread, addSomebody));
    }
    const auto staff =
        answer(thread, [](Transaction& ledger) -> Result<std::size_t> { return ledger.shop().staff().size(); });
    EXPECT_EQ(*staff, 20U);
    EXPECT_EQ(opened, 1);
}

TEST_F(LedgerThreadTest, ARefusalIsAnAnswerAndLeavesNothing) {
    LedgerThread thread(opener(), atOnce());
    const auto refused = answer(thread, [](Transaction& ledger) -> Result<StaffId> {
        (void)addSomebody(ledger);
        return refuse(Code::Missing, {{"what", "name"}});
    });
    EXPECT_EQ(refused.error().code(), Code::Missing);
    EXPECT_TRUE(last.load()->rows.staff.empty());
}

TEST_F(LedgerThreadTest, ABrokenWorldIsPostedAndALostLedgerIsOpenedAnew) {
    unreachable = true;
    LedgerThread thread(opener(), atOnce());
    EXPECT_THROW((void)answer(thread, addSomebody), LedgerLost);
    unreachable = false;
    EXPECT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(opened, 2);
    EXPECT_THROW((void)answer(thread, [](Transaction&) -> Result<int> { throw LedgerFull("disk"); }), LedgerFull);
    EXPECT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(opened, 2) << "a full disk is no reason to open again";
    EXPECT_THROW((void)answer(thread, [](Transaction&) -> Result<int> { throw LedgerLost("gone"); }), LedgerLost);
    EXPECT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(opened, 3);
}

TEST_F(LedgerThreadTest, CancelledWorkIsNotBegunAndPostsNothing) {
    LedgerThread thread(opener(), atOnce());
    std::promise<void> go;
    std::shared_future<void> gone = go.get_future().share();
    CancelToken first;
    CancelToken second;
    std::atomic<int> posted = 0;
    std::atomic<int> begun = 0;
    const auto count = [&](auto&&) { ++posted; };
    thread.run(
        Access::Read, first,
        [&, gone](Transaction&) -> Result<int> {
            ++begun;
            gone.wait();
            return 1;
        },
        count, count);
    thread.run(
        Access::Read, second,
        [&](Transaction&) -> Result<int> {
            ++begun;
            return 2;
        },
        count, count);
    second.cancel();
    first.cancel();
    go.set_value();
    ASSERT_TRUE(answer(thread, addSomebody)); // comes after both
    EXPECT_EQ(posted, 0);
    EXPECT_LE(begun, 1);
}

TEST_F(LedgerThreadTest, BusyWritesAreDoneAgainAFewTimes) {
    LedgerThread thread(opener(), atOnce());
    ASSERT_TRUE(answer(thread, addSomebody));
    last.load()->busyTimes = kWriteTries - 1;
    EXPECT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(last.load()->rows.staff.size(), 2U);
    last.load()->busyTimes = kWriteTries;
    EXPECT_THROW((void)answer(thread, addSomebody), LedgerBusy);
    EXPECT_EQ(last.load()->rows.staff.size(), 2U);
}

TEST_F(LedgerThreadTest, AnotherConnectionsChangeIsTold) {
    LedgerThread thread(opener(), atOnce());
    ASSERT_TRUE(answer(thread, addSomebody));
    std::promise<void> told;
    std::atomic<int> times = 0;
    thread.watchChanges(1ms, [&] {
        if (++times == 1) {
            told.set_value();
        }
    });
    ASSERT_TRUE(answer(thread, [this](Transaction&) -> Result<int> {
        last.load()->changes = 7; // on the ledger's own thread, between two looks
        return 0;
    }));
    told.get_future().wait();
    ASSERT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(times, 1) << "one change is told once, and our own are not";
}

TEST_F(LedgerThreadTest, WhatOthersDidWhileTheLedgerWasLostIsTold) {
    LedgerThread thread(opener(), atOnce());
    ASSERT_TRUE(answer(thread, addSomebody));
    std::promise<void> told;
    std::atomic<int> times = 0;
    thread.watchChanges(1ms, [&] {
        if (++times == 1) {
            told.set_value();
        }
    });
    ASSERT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(times, 0) << "the first opening is no news";
    EXPECT_THROW((void)answer(thread, [](Transaction&) -> Result<int> { throw LedgerLost("gone"); }), LedgerLost);
    ASSERT_TRUE(answer(thread, addSomebody)); // opens it anew; what it then counts says nothing of before
    EXPECT_EQ(told.get_future().wait_for(10s), std::future_status::ready);
    ASSERT_TRUE(answer(thread, addSomebody));
    EXPECT_EQ(times, 1);
}

TEST_F(LedgerThreadTest, ALedgerThatIsFoundToBeLostIsToldOnceThoughNobodyAsked) {
    LedgerThread thread(opener(), atOnce());
    ASSERT_TRUE(answer(thread, addSomebody));
    std::promise<void> told;
    std::atomic<int> times = 0;
    thread.watchChanges(1ms, [&] {
        if (++times == 1) {
            told.set_value();
        }
    });
    unreachable = true;
    ASSERT_TRUE(answer(thread, [this](Transaction&) -> Result<int> {
        last.load()->lost = true; // on the ledger's own thread, between two looks
        return 0;
    }));
    EXPECT_EQ(told.get_future().wait_for(10s), std::future_status::ready);
    EXPECT_THROW((void)answer(thread, addSomebody), LedgerLost) << "whoever is told asks, and hears why";
    EXPECT_EQ(times, 1);
}

TEST_F(LedgerThreadTest, GoingDownFinishesTheWorkAtHandAndDropsWhatWaits) {
    std::promise<void> dropped;
    std::promise<void> atWork;
    std::atomic<int> begun = 0;
    std::atomic<int> posted = 0;
    {
        LedgerThread thread(opener(), atOnce());
        const auto count = [&](auto&&) { ++posted; };
        thread.run(
            Access::Write, {},
            [&](Transaction& ledger) {
                atWork.set_value();
                dropped.get_future().wait(); // only going down drops what waits
                return addSomebody(ledger);
            },
            count, count);
        atWork.get_future().wait();
        const auto release = [&](int* held) {
            delete held;
            dropped.set_value();
        };
        thread.run(
            Access::Write, {},
            [&begun, held = std::shared_ptr<int>(new int(0), release)](Transaction&) -> Result<int> {
                ++begun;
                return 2;
            },
            count, count);
    }
    EXPECT_EQ(begun, 0);
    EXPECT_EQ(posted, 1);
}

} // namespace
} // namespace rw::desk::test
