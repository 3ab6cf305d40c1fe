// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/queue_words.h"

#include "tests/ui/text/said.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

using Kind = stock::QueueReason::Kind;

std::string told(Kind kind, std::int64_t leavesMm = 6'100, std::int64_t later = 1, Wanted wanted = Wanted::Pieces) {
    const stock::QueueReason reason{
        .kind = kind, .leaves = Length::fromMillimetres(leavesMm), .lostMm = 2'404, .later = later};
    return said(queueReasonText(reason, QStringLiteral("K-2"), QStringLiteral("mains"), wanted, QLocale::c()));
}

TEST(QueueWords, SayWhatALotIsLeftWith) {
    EXPECT_EQ(told(Kind::LeavesUseful), "K-2: leaves 6.1 m: one more piece later");
    EXPECT_EQ(told(Kind::LeavesUseful, 24'000, 4), "K-2: leaves 24 m: about 4 more pieces later");
    EXPECT_EQ(told(Kind::LeavesUseful, 11'900, 1, Wanted::Jobs), "K-2: leaves 11.9 m: one more job later");
    EXPECT_EQ(told(Kind::LeavesUseful, 24'000, 2, Wanted::Jobs), "K-2: leaves 24 m: about 2 more jobs later");
    EXPECT_EQ(told(Kind::LeavesUseful, 5'000, 0), "K-2: leaves 5 m: may serve once more");
    EXPECT_EQ(told(Kind::LeavesBadEnd, 8'000), "K-2: leaves 8 m: bad end, 2.40 m of it likely lost");
    EXPECT_EQ(told(Kind::LeavesScrap, 300), "K-2: leaves 0.3 m: too short to keep");
    EXPECT_EQ(told(Kind::LeavesPlenty, 134'750), "K-2: leaves 134.75 m");
}

TEST(QueueWords, SayWhatElseIsToBeKnown) {
    EXPECT_EQ(told(Kind::MeasureFirst, 200), "K-2: leaves 0.2 m if the book is right, measure before cutting");
    EXPECT_EQ(told(Kind::OpensSealed), "K-2: to be opened");
    EXPECT_EQ(told(Kind::FitsNowhere), "mains: there is no lot for it");
    EXPECT_EQ(told(Kind::TimeWasUp), "the best found in the time there was; a better one is possible");
}

} // namespace
} // namespace rw::ui
