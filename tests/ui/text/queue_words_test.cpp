// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/queue_words.h"

#include "tests/ui/text/said.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

using Kind = stock::QueueReason::Kind;

std::string told(Kind kind, std::int64_t leavesMm = 6'100, std::int64_t later = 1, Wanted wanted = Wanted::Pieces) {
    const stock::QueueReason reason{.kind = kind,
                                    .leaves = Length::fromMillimetres(leavesMm),
                                    .lostMm = 2'404,
                                    .later = later,
                                    .whole = leavesMm > 10'000};
    return said(queueReasonText(reason, QStringLiteral("K-2"), QStringLiteral("mains"), wanted, QLocale::c()));
}

TEST(QueueWords, SayWhatALotIsLeftWith) {
    EXPECT_EQ(told(Kind::LeavesUseful), "K-2: leaves 6.1 m: one more piece later");
    EXPECT_EQ(told(Kind::LeavesUseful, 24'000, 4), "K-2: leaves 24 m: about 4 more pieces later");
    EXPECT_EQ(told(Kind::LeavesUseful, 11'900, 1, Wanted::Jobs), "K-2: leaves 11.9 m: one more job later");
    EXPECT_EQ(told(Kind::LeavesUseful, 24'000, 2, Wanted::Jobs), "K-2: leaves 24 m: about 2 more jobs later");
    EXPECT_EQ(told(Kind::LeavesUseful, 6'100, 1, Wanted::Jobs), "K-2: leaves 6.1 m: half a bed later");
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

/// What is said beside a reel of which a cut leaves some.
std::string reason(Fit fit, std::int64_t leavesMm, desk::CutReason why = {}) {
    return said(cutReasonText(fit, Length::fromMillimetres(leavesMm), why, QLocale::c()));
}

TEST(CutReason, SaysWhatTheEndIsGoodFor) {
    using Reason = stock::QueueReason;
    const Length left = Length::fromMillimetres(6'100);
    EXPECT_EQ(reason(Fit::Fits, 6'100, {.left = Reason{.kind = Kind::LeavesUseful, .leaves = left, .later = 1}}),
              "leaves 6.1 m: half a bed later");
    EXPECT_EQ(reason(Fit::Fits, 6'100, {.left = Reason{.kind = Kind::LeavesBadEnd, .leaves = left, .lostMm = 2'404}}),
              "leaves 6.1 m: bad end, 2.40 m of it likely lost");
    EXPECT_EQ(reason(Fit::Fits, 37'900, {.left = Reason{.kind = Kind::LeavesUseful, .leaves = left, .later = 3}}),
              "leaves 37.9 m") << "nobody looks at that end yet";
    EXPECT_EQ(reason(Fit::Fits, 0, {.left = Reason{.kind = Kind::LeavesScrap}}), "uses it up");
    EXPECT_EQ(reason(Fit::FitsIfBookIsRight, 200, {.left = Reason{.kind = Kind::LeavesScrap}}),
              "fits by 0.2 m if the book is right, measure before cutting");
}

TEST(CutReason, SaysWhyThisReel) {
    EXPECT_EQ(reason(Fit::Fits, 188'800, {.opens = true}), "leaves 188.8 m; a new reel");
    EXPECT_EQ(reason(Fit::Fits, 188'800, {.opens = true, .spared = desk::CutReason::Spared{"K-7", 3'600}}),
              "leaves 188.8 m; a new reel, because K-7 would lose 3.60 m");
    EXPECT_EQ(reason(Fit::Fits, 90'000, {.onTheMachine = true}), "leaves 90 m; on the machine already");
}

} // namespace
} // namespace rw::ui
