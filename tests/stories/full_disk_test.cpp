// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger with no room left: the command that met it left nothing behind, and goes through once there is room.
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/base/world_error.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

using namespace rw;
using namespace rw::stories;

namespace {

/// Run by SQLite on every connection that is opened while it is registered: the file may not grow any more, which is
/// SQLITE_FULL as on a full disk, and needs no rights of the one who runs the test.
int noMorePages(sqlite3* database, char**, const sqlite3_api_routines*) {
    const char* file = sqlite3_db_filename(database, "main");
    if (file == nullptr || *file == '\0') {
        return SQLITE_OK; // in memory there is room
    }
    return sqlite3_exec(database, "PRAGMA max_page_count = 1", nullptr, nullptr, nullptr);
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

    void takeTheRoomAway() {
        closeLedger();
        if (onSqlite()) {
            sqlite3_auto_extension(reinterpret_cast<void (*)()>(noMorePages));
        } else {
            // The server's own word for it: class 53, disk_full. It strikes in the middle of a transaction.
            place().connect()->execute("CREATE FUNCTION no_room() RETURNS trigger LANGUAGE plpgsql AS "
                                       "'BEGIN RAISE EXCEPTION ''no room'' USING ERRCODE = ''53100''; END'");
            place().connect()->execute(
                "CREATE TRIGGER no_room BEFORE INSERT ON job_event FOR EACH ROW EXECUTE FUNCTION no_room()");
        }
        openLedger();
    }

    void giveItBack() {
        closeLedger();
        if (onSqlite()) {
            sqlite3_reset_auto_extension();
        } else {
            place().connect()->execute("DROP TRIGGER no_room ON job_event");
            place().connect()->execute("DROP FUNCTION no_room()");
        }
        openLedger();
    }

    void TearDown() override {
        sqlite3_reset_auto_extension();
        Story::TearDown();
    }
};

TEST_P(FullDisk, LeavesNothingHalfDone) {
    takeTheRoomAway();
    bool met = false;
    std::optional<Step> struck;
    for (int number = 0; number < 2'000 && !met; ++number) {
        struck = Step{.kind = Step::Kind::Log, .key = "job-" + std::to_string(number), .what = "whole"};
        const std::string before = everything();
        try {
            must(perform(ledger(), *struck));
        } catch (const LedgerFull&) {
            met = true;
            EXPECT_EQ(everything(), before);
        }
    }
    ASSERT_TRUE(met) << "the ledger never was full";

    // Reading goes on, and so does the work once there is room.
    EXPECT_TRUE(read(ledger(), [](desk::Transaction& open) { return Result<Lot>(lotTagged(open, "K-1")); }).isOpen());
    giveItBack();
    EXPECT_EQ(findingsOf(ledger()), "");
    must(perform(ledger(), *struck));
    must(perform(ledger(), {.kind = Step::Kind::Take, .key = struck->key}));
}

ON_BOTH_ENGINES(FullDisk);

} // namespace
