// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger with no room left: the command that met it left nothing behind, and goes through once there is room.
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/base/world_error.h"
#include "core/desk/stockroom.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <array>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

using namespace rw;
using namespace rw::stories;

namespace {

constexpr int kTimes = 8;
using Tables = std::array<std::string_view, 4>;
constexpr Tables kStruck = {"job_piece", "attempt", "charge", "job_event"};
constexpr Tables kStruckInStockroom = {"movement", "lot", "delivery", "movement_words"};

/// How many pages the file may still grow by.
int pagesLeft = 0;

/// Run by SQLite on every connection that is opened while it is registered: the file may hardly grow any more, which
/// ends in SQLITE_FULL as on a full disk, and needs no rights of the one who runs the test.
int fewPagesLeft(sqlite3* database, char**, const sqlite3_api_routines*) {
    const char* file = sqlite3_db_filename(database, "main");
    if (file == nullptr || *file == '\0') {
        return SQLITE_OK; // in memory there is room
    }
    std::int64_t pages = 0;
    const auto readCount = [](void* count, int, char** values, char**) {
        *static_cast<std::int64_t*>(count) = std::stoll(values[0]);
        return 0;
    };
    const int read = sqlite3_exec(database, "PRAGMA page_count", readCount, &pages, nullptr);
    const std::string limit = "PRAGMA max_page_count = " + std::to_string(pages + pagesLeft);
    return read != SQLITE_OK ? read : sqlite3_exec(database, limit.c_str(), nullptr, nullptr, nullptr);
}

class FullDisk : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            (void)racket(open, customer(open, "Petra Lindobi"), shop().aldermoor98, "A");
            return {};
        });
        must(perform(ledger(), {.kind = Step::Kind::Receive, .key = "K-1", .what = "K", .length = mm(1'000'000)}));
    }

    /// Each time it is another place of a command that finds no room.
    void takeTheRoomAway(int time, const Tables& struck = kStruck) {
        closeLedger();
        if (onSqlite()) {
            pagesLeft = time;
            sqlite3_auto_extension(reinterpret_cast<void (*)()>(fewPagesLeft));
        } else {
            // The server's own word for it: class 53, disk_full. It strikes in the middle of a transaction.
            m_struck = struck[static_cast<std::size_t>(time) % struck.size()];
            place().connect()->execute("CREATE FUNCTION no_room() RETURNS trigger LANGUAGE plpgsql AS "
                                       "'BEGIN RAISE EXCEPTION ''no room'' USING ERRCODE = ''53100''; END'");
            place().connect()->execute("CREATE TRIGGER no_room AFTER INSERT ON " + m_struck +
                                       " FOR EACH ROW EXECUTE FUNCTION no_room()");
        }
        openLedger();
    }

    void giveItBack() {
        closeLedger();
        if (onSqlite()) {
            sqlite3_reset_auto_extension();
        } else {
            place().connect()->execute("DROP TRIGGER no_room ON " + m_struck);
            place().connect()->execute("DROP FUNCTION no_room()");
        }
        openLedger();
    }

    /// Logs jobs until there is no room, and gives back the command that met it.
    [[nodiscard]] std::optional<Step> logUntilFull() {
        for (int tries = 0; tries < 500; ++tries) {
            const Step step{.kind = Step::Kind::Log, .key = "job-" + std::to_string(++m_jobs), .what = "whole"};
            const std::string before = everything();
            try {
                must(perform(ledger(), step));
            } catch (const LedgerFull&) {
                EXPECT_EQ(everything(), before) << step.text();
                return step;
            }
        }
        return std::nullopt;
    }

    void TearDown() override {
        sqlite3_reset_auto_extension();
        Story::TearDown();
    }

private:
    std::string m_struck; ///< the table that finds no room
    int m_jobs = 0;
};

TEST_P(FullDisk, LeavesNothingHalfDone) {
    for (int time = 0; time < kTimes; ++time) {
        SCOPED_TRACE(time);
        takeTheRoomAway(time);
        const auto struck = logUntilFull();
        ASSERT_TRUE(struck) << "the ledger never was full";
        // Reading goes on, and so does the work once there is room.
        EXPECT_TRUE(
            read(ledger(), [](desk::Transaction& open) { return Result<Lot>(lotTagged(open, "K-1")); }).isOpen());
        giveItBack();
        EXPECT_EQ(findingsOf(ledger()), "");
        must(perform(ledger(), *struck));
        must(perform(ledger(), {.kind = Step::Kind::Take, .key = struck->key}));
    }
}

/// The stockroom's commands one after the other, each leaving more to write for the next.
class FullShelf : public FullDisk {
protected:
    using Command = std::function<void()>;

    [[nodiscard]] Command next() {
        const int number = m_commands++;
        switch (number % 4) {
        case 0:
            return [this, number] { deliver("delivery-" + std::to_string(number)); };
        case 1:
            return [this] { correct(); };
        case 2:
            return [this] { throwAway(); };
        default:
            return [this] { takeBack(); };
        }
    }

    /// Gives commands until there is no room, and gives back the one that met it.
    [[nodiscard]] std::optional<Command> workUntilFull() {
        for (int tries = 0; tries < 500; ++tries) {
            const Command command = next();
            const std::string before = everything();
            try {
                command();
            } catch (const LedgerFull&) {
                EXPECT_EQ(everything(), before);
                return command;
            }
        }
        return std::nullopt;
    }

private:
    [[nodiscard]] By by() const {
        return shop().stockroom(at(std::chrono::year(2026) / 3 / 12, std::chrono::hours(12)));
    }

    void deliver(const std::string& key) {
        const desk::ReceiveDelivery box{.requestKey = key,
                                        .supplier = "Northgate String Company",
                                        .lines = {{.article = shop().kestrelline,
                                                   .count = 12,
                                                   .kind = LotKind::Packet,
                                                   .nominal = mm(12'000),
                                                   .priceEach = pounds(900)}},
                                        .shipping = pounds(500),
                                        .by = by()};
        m_last = *write(ledger(), [&](desk::Transaction& open) { return desk::receiveDelivery(open, box); }).back().id;
    }
    void correct() {
        const desk::CorrectLot tape{m_last, mm(11'900), by(), std::string(200, 'w')};
        write(ledger(), [&](desk::Transaction& open) { return desk::correctLot(open, tape); });
    }
    void throwAway() {
        const desk::TakeOffShelf bin{m_last, desk::LotLeaves::ThrownAway, std::string(200, 'w'), by()};
        write(ledger(), [&](desk::Transaction& open) { return desk::takeOffShelf(open, bin); });
    }
    void takeBack() {
        write(ledger(), [&](desk::Transaction& open) {
            return desk::takeBack(open, {{{m_last, *open.lots().movements(m_last).back().id}}, by()});
        });
    }

    LotId m_last = LotId::of(0);
    int m_commands = 0;
};

TEST_P(FullShelf, LeavesNothingHalfDone) {
    for (int time = 0; time < kTimes; ++time) {
        SCOPED_TRACE(time);
        takeTheRoomAway(time, kStruckInStockroom);
        const auto struck = workUntilFull();
        ASSERT_TRUE(struck) << "the ledger never was full";
        EXPECT_TRUE(
            read(ledger(), [](desk::Transaction& open) { return Result<Lot>(lotTagged(open, "K-1")); }).isOpen());
        giveItBack();
        EXPECT_EQ(findingsOf(ledger()), "");
        (*struck)();
        EXPECT_EQ(findingsOf(ledger()), "");
    }
}

ON_BOTH_ENGINES(FullDisk);
ON_BOTH_ENGINES(FullShelf);

} // namespace
