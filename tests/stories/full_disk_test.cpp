// SPDX-License-Identifier: GPL-3.0-or-later
// The disk fills up at every write of a day, one after the other: the command that met it left nothing behind, the
// same open ledger goes on reading, and goes on writing once there is room.
#include "tests/stories/full_disk.h"
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/base/world_error.h"

#include <gtest/gtest.h>

#include <iostream>

using namespace rw;
using namespace rw::stories;

namespace {

using Kind = Step::Kind;

/// From the delivery to the rack: whole and hybrid, with a length that came short.
std::vector<Step> wholeDay() {
    return {
        {.kind = Kind::Receive, .key = "K-1", .what = "K", .length = mm(200'000)},
        {.kind = Kind::Receive, .key = "L-1", .what = "L", .length = mm(200'000)},
        {.kind = Kind::Log, .key = "first", .what = "whole"},
        {.kind = Kind::Log, .key = "second", .what = "hybrid"},
        {.kind = Kind::Take, .key = "first"},
        {.kind = Kind::Cut, .key = "first", .length = mm(11'200)},
        {.kind = Kind::Lose, .key = "first"},
        {.kind = Kind::Cut, .key = "first", .attempt = 2, .length = mm(11'400)},
        {.kind = Kind::Finish, .key = "first"},
        {.kind = Kind::Collect, .key = "first"},
        {.kind = Kind::Take, .key = "second"},
        {.kind = Kind::Cut, .key = "second", .role = PieceRole::Mains, .length = mm(6'200)},
        {.kind = Kind::Cut, .key = "second", .role = PieceRole::Crosses, .length = mm(5'600)},
        {.kind = Kind::Finish, .key = "second"},
        {.kind = Kind::Collect, .key = "second"},
    };
}

class FullDiskDay : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            (void)racket(open, customer(open, "Petra Lindobi"), shop().aldermoor98, "A");
            return {};
        });
    }
};

TEST_P(FullDiskDay, NothingIsHalfDoneWhereverItStrikes) {
    closeLedger();
    {
        FullDisk disk(place());
        openLedger();
        int struck = 0;
        for (const Step& step : wholeDay()) {
            SCOPED_TRACE(step.text());
            bool done = false;
            for (int writes = 0; !done; ++writes) {
                ASSERT_LT(writes, 1000) << "it never had room enough";
                const std::string before = everything();
                disk.fillAfter(writes);
                try {
                    must(perform(ledger(), step));
                    done = true;
                } catch (const LedgerFull&) {
                    ++struck;
                }
                ASSERT_EQ(disk.makeRoom(), !done) << "after " << writes << " writes";
                if (!done) {
                    ASSERT_EQ(everything(), before) << "after " << writes << " writes";
                }
            }
            EXPECT_EQ(findingsOf(ledger()), "");
        }
        // A command writes two rows or pages at the very least.
        EXPECT_GE(struck, 2 * static_cast<int>(wholeDay().size()));
        std::cout << "the disk was full " << struck << " times\n";
        EXPECT_EQ(read(ledger(), [](desk::Transaction& open) { return Result<Lot>(lotTagged(open, "K-1")); }).length,
                  mm(200'000 - 11'200 - 11'400 - 6'200));
        closeLedger();
    }
    openLedger();
}

ON_BOTH_ENGINES(FullDiskDay);

} // namespace
