// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/queue_reasons.h"
#include "tests/core/stock/stock_data.h"

#include <gtest/gtest.h>

namespace rw::stock::test {
namespace {

using Kind = QueueReason::Kind;

/// What is said when one piece comes off one lot.
std::vector<QueueReason> reasonsOf(double lot, double piece, double uncertaintyMm = 0, bool sealed = false) {
    const std::vector<QueueLot> lots = {{{.length = metres(lot), .sealed = sealed}, std::nullopt, std::nullopt}};
    const std::vector<QueuePiece> pieces = {{metres(piece), JobId::of(1), std::nullopt}};
    const QueuePlan plan{.placing = {0}, .lostMm = 0, .proven = true};
    return reasonsFor(plan, lots, pieces, std::vector{uncertaintyMm}, mixedValue());
}

TEST(QueueReasons, SayWhatIsLeftOfALot) {
    // Stock model: "leaves 6.1 m: one cross later"
    const auto useful = reasonsOf(12.3, 6.2);
    ASSERT_EQ(useful.size(), 1U);
    EXPECT_EQ(useful[0].kind, Kind::LeavesUseful);
    EXPECT_EQ(useful[0].leaves, mm(6'100));
    EXPECT_EQ(useful[0].later, 1);
    // "leaves 8.0 m: bad end"; W(8 m) = 1.9279 m in remnant-values-mixed.json
    const auto bad = reasonsOf(14.2, 6.2);
    EXPECT_EQ(bad[0].kind, Kind::LeavesBadEnd);
    EXPECT_NEAR(bad[0].lostMm, 1'828, 200);
    EXPECT_EQ(reasonsOf(11.1, 6.2)[0].kind, Kind::LeavesScrap);
    EXPECT_EQ(reasonsOf(6.2, 6.2)[0].kind, Kind::LeavesScrap);
    EXPECT_EQ(reasonsOf(66.3, 6.2)[0].kind, Kind::LeavesPlenty);
    EXPECT_EQ(reasonsOf(60, 6.2)[0].kind, Kind::LeavesUseful);
}

TEST(QueueReasons, AskForATapeUnderTwiceTheUncertainty) {
    EXPECT_EQ(reasonsOf(6.4, 6.2, 100).size(), 1U);
    const auto tight = reasonsOf(6.4, 6.2, 100.5);
    ASSERT_EQ(tight.size(), 2U);
    EXPECT_EQ(tight[1].kind, Kind::MeasureFirst);
    EXPECT_EQ(tight[1].leaves, mm(200));
}

TEST(QueueReasons, NameWhatIsOpenedAndWhatHasNoLot) {
    const auto opens = reasonsOf(200, 6.2, 0, true);
    EXPECT_EQ(opens[0].kind, Kind::OpensSealed);
    EXPECT_EQ(opens[0].lot, 0U);
    const std::vector<QueuePiece> pieces = {{mm(6'200), JobId::of(1), std::nullopt}};
    const auto none = reasonsFor({.placing = Placing(1), .lostMm = 0, .proven = false}, {}, pieces, {}, mixedValue());
    ASSERT_EQ(none.size(), 2U);
    EXPECT_EQ(none[0].kind, Kind::FitsNowhere);
    EXPECT_EQ(none[0].piece, 0U);
    EXPECT_EQ(none[1].kind, Kind::TimeWasUp);
}

} // namespace
} // namespace rw::stock::test
