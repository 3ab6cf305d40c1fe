// SPDX-License-Identifier: GPL-3.0-or-later
// The disk fills up at every write of a day, one after the other: the command that met it left nothing behind, the
// same open ledger goes on reading, and goes on writing once there is room.
#include "tests/stories/full_disk.h"
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/base/world_error.h"
#include "core/desk/stockroom.h"

#include <gtest/gtest.h>

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

    /// Gives a command again and again, with room for one write more each time, until it goes through.
    template<class Command>
    void atEveryWrite(FullDisk& disk, Command command) {
        bool done = false;
        for (int writes = 0; !done; ++writes) {
            ASSERT_LT(writes, 1000) << "it never had room enough";
            const std::string before = everything();
            disk.fillAfter(writes);
            try {
                command();
                done = true;
            } catch (const LedgerFull&) {
                ++m_struck;
            }
            ASSERT_EQ(disk.makeRoom(), !done) << "after " << writes << " writes";
            if (!done) {
                ASSERT_EQ(everything(), before) << "after " << writes << " writes";
            }
        }
        EXPECT_EQ(findingsOf(ledger()), "");
    }

    [[nodiscard]] Length lengthOf(const char* tag) {
        return read(ledger(), [&](desk::Transaction& open) { return Result<Lot>(lotTagged(open, tag)); }).length;
    }
    [[nodiscard]] By by() const {
        return shop().stockroom(at(std::chrono::year(2026) / 3 / 12, std::chrono::hours(12)));
    }
    [[nodiscard]] int struck() const { return m_struck; }

private:
    int m_struck = 0;
};

TEST_P(FullDiskDay, NothingIsHalfDoneWhereverItStrikes) {
    closeLedger();
    {
        FullDisk disk(place());
        openLedger();
        for (const Step& step : wholeDay()) {
            SCOPED_TRACE(step.text());
            atEveryWrite(disk, [&] { must(perform(ledger(), step)); });
        }
        // A command writes two rows or pages at the very least.
        EXPECT_GE(struck(), 2 * static_cast<int>(wholeDay().size()));
        EXPECT_EQ(lengthOf("K-1"), mm(200'000 - 11'200 - 11'400 - 6'200));
        closeLedger();
    }
    openLedger();
}

TEST_P(FullDiskDay, NorIsTheStockroom) {
    closeLedger();
    {
        FullDisk disk(place());
        openLedger();
        LotId last = LotId::of(0);
        const desk::ReceiveDelivery box{.requestKey = "delivery",
                                        .supplier = "Northgate String Company",
                                        .lines = {{.article = shop().kestrelline,
                                                   .count = 3,
                                                   .kind = LotKind::Packet,
                                                   .nominal = mm(12'000),
                                                   .priceEach = pounds(900)}},
                                        .shipping = pounds(500),
                                        .by = by()};
        atEveryWrite(disk, [&] {
            last = *write(ledger(), [&](desk::Transaction& open) { return desk::receiveDelivery(open, box); }).back().id;
        });
        atEveryWrite(disk, [&] {
            const desk::CorrectLot tape{last, mm(11'900), by(), std::string(200, 'w')};
            write(ledger(), [&](desk::Transaction& open) { return desk::correctLot(open, tape); });
        });
        atEveryWrite(disk, [&] {
            const desk::TakeOffShelf bin{last, desk::LotLeaves::ThrownAway, std::string(200, 'w'), by()};
            write(ledger(), [&](desk::Transaction& open) { return desk::takeOffShelf(open, bin); });
        });
        atEveryWrite(disk, [&] {
            write(ledger(), [&](desk::Transaction& open) {
                return desk::takeBack(open, {{{last, *open.lots().movements(last).back().id}}, by()});
            });
        });
        EXPECT_GE(struck(), 8);
        closeLedger();
    }
    openLedger();
}

ON_BOTH_ENGINES(FullDiskDay);

} // namespace
