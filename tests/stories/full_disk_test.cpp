// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger with no room left: the command that met it left nothing behind, and goes through once there is room.
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/base/world_error.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

using namespace rw;
using namespace rw::stories;

namespace {

constexpr int kTimes = 8;
constexpr std::array<std::string_view, 4> kStruck = {"job_piece", "attempt", "charge", "job_event"};

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
    void takeTheRoomAway(int time) {
        closeLedger();
        if (onSqlite()) {
            pagesLeft = time;
            sqlite3_auto_extension(reinterpret_cast<void (*)()>(fewPagesLeft));
        } else {
            // The server's own word for it: class 53, disk_full. It strikes in the middle of a transaction.
            m_struck = kStruck[static_cast<std::size_t>(time) % kStruck.size()];
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

ON_BOTH_ENGINES(FullDisk);

} // namespace
