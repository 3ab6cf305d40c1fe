// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/plan_words.h"

#include "tests/ui/sample_plans.h"
#include "tests/ui/text/said.h"

#include <QLocale>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

std::vector<std::string> lines(const length::CutPlan& plan) {
    std::vector<std::string> result;
    for (const QString& line : routeLines(plan)) {
        result.push_back(said(line));
    }
    return result;
}

using Lines = std::vector<std::string>;

TEST(PlanWords, TwoPieces) {
    EXPECT_EQ(lines(samples::twoPieces()), (Lines{"Mains: 1–8 on each side, from the head; tied off at the head.",
                                                  "Crosses: 1–19, begun left; tied off at the throat, right."}));
}

TEST(PlanWords, OnePieceFromTheHeadDown) {
    const length::CutPlan plan = samples::onePiece(Side::Left);
    EXPECT_EQ(lines(plan), (Lines{"Short side, left: mains 1–8, then cross 1; tied off at the head, right.",
                                  "Long side, right: mains 1–8, then crosses 2–19; tied off at the throat, right."}));
    EXPECT_EQ(said(routeName(plan)), "one piece, one top cross on the short side");
}

TEST(PlanWords, OnePieceRound) {
    EXPECT_EQ(lines(samples::wrapFirst(Side::Right)),
              (Lines{"Short side, right: mains 1–7, then cross 1; tied off at the head, left.",
                     "Long side, left: mains 1–8, then cross 19, then main 8 right, then crosses 2–18; tied off at the "
                     "throat, left."}));
}

TEST(PlanWords, AnOddBedNamesItsCentreMain) {
    samples::Head head;
    head.mains = 17;
    const length::CutPlan plan =
        samples::plan(head, "", {{PieceRole::Mains, {{Side::Left, "C 1L-8L"}, {Side::Right, "1R-8R"}}}});
    EXPECT_EQ(lines(plan).front(),
              "Mains left: the centre main, then mains 1–8, from the head; tied off at the throat, left.");
}

TEST(PlanWords, EveryRouteHasAName) {
    for (const char* route :
         {"plain-0", "plain-1", "plain-2", "plain-2-reversed", "wrap-last-1", "wrap-last-2", "wrap-last-3",
          "wrap-first-1", "wrap-first-2", "wrap-first-3", "throat-up-0", "throat-up-2", "somebody's own"}) {
        length::CutPlan plan = samples::onePiece(Side::Left);
        plan.route = route;
        EXPECT_TRUE(said(routeName(plan)).starts_with("one piece, ")) << route;
    }
}

TEST(PlanWords, TheShortSideNamesItsMark) {
    desk::ShortSideProposal side{.side = Side::Right,
                                 .from = desk::SideFrom::Frame,
                                 .because = "groove in the strip",
                                 .mountingMark = "butt-cap logo up",
                                 .measure = Length::fromMillimetres(2900),
                                 .headLengths = 7.9,
                                 .topCrosses = 2};
    EXPECT_EQ(said(shortSideWhere(side)), "right, butt-cap logo up");
    EXPECT_EQ(said(shortSideHowLong(side, kEnglish)), "2.9 m = 8 head lengths, two top crosses");
    EXPECT_EQ(said(sideFromText(side)), "the frame forces it: groove in the strip");
    side.from = desk::SideFrom::Twin;
    side.because = "A";
    EXPECT_EQ(said(sideFromText(side)), "matched with A");
    side.from = desk::SideFrom::LastTime;
    EXPECT_EQ(said(sideFromText(side)), "as last time");
}

TEST(PlanWords, ASetIsJudgedInPlainWords) {
    using Kind = length::Why::Kind;
    EXPECT_EQ(said(whyText({Kind::SetJudged, "not enough", 9900, 0.9}, kEnglish)),
              "The set of 9.90 m is not enough: it falls short more likely than not.");
    EXPECT_EQ(said(whyText({Kind::SetJudged, "tight", 12000, 0.1}, kEnglish)),
              "The set of 12.00 m is tight: it falls short about 1 in 10.");
}

TEST(PlanWords, EveryReasonIsAWholeSentence) {
    using Kind = length::Why::Kind;
    const std::vector<length::Why> reasons = {{Kind::OutlineFrom, "measured", 0, 0},
                                              {Kind::OutlineFrom, "measured and marked", 0, 0},
                                              {Kind::OutlineFrom, "marked", 0, 0},
                                              {Kind::OutlineFrom, "length measured", 0, 0},
                                              {Kind::OutlineFrom, "width measured", 0, 0},
                                              {Kind::OutlineFrom, "sport only", 0, 0},
                                              {Kind::MarkedDisagrees, "", 645.2, 633.1},
                                              {Kind::LargerThanRules, "inside width", 300, 292},
                                              {Kind::RouteChosen, "plain-1", 0, 0},
                                              {Kind::StartEndAssumed, "head", 0, 0},
                                              {Kind::TwoTopCrosses, "", 2, 0},
                                              {Kind::TwoTopCrosses, "", 1, 0},
                                              {Kind::GeometryOnly, "", 0, 0},
                                              {Kind::GeometryOnly, "crosses", 0, 0},
                                              {Kind::OwnJobs, "mains", 1, 1},
                                              {Kind::OwnJobs, "mains", 1, 0},
                                              {Kind::OwnJobs, "short side", 5, 0},
                                              {Kind::OwnJobs, "whole", 5, 5},
                                              {Kind::OwnJobs, "whole", 5, 2},
                                              {Kind::OwnNeeds, "whole", 10550, 10800},
                                              {Kind::OwnNeeds, "whole", 10550, 10550},
                                              {Kind::Corrected, "whole", 10550, 10800},
                                              {Kind::ShopBias, "mains", 1.2, 14},
                                              {Kind::ShopBias, "short side", -0.4, 1},
                                              {Kind::FrameEffect, "whole", -0.8, 0},
                                              {Kind::HeldAtPacket, "", 12000, 12150},
                                              {Kind::AbovePacket, "", 12400, 12000},
                                              {Kind::LeastCost, "", 5.5, 0},
                                              {Kind::CeilingDecides, "", 0.005, 0},
                                              {Kind::SetJudged, "enough", 12000, 0.01},
                                              {Kind::SetJudged, "tight", 12000, 0.1},
                                              {Kind::SetJudged, "not enough", 12000, 0.4},
                                              {Kind::SetUsed, "halved", 6000, 0.01},
                                              {Kind::SetUsed, "mains and rest", 6200, 0.01},
                                              {Kind::SetUsed, "whole", 3200, 0.01},
                                              {Kind::SetSaferInOne, "plain-2", 11400, 0.01},
                                              {Kind::SetSaferWithClamp, "", 300, 0.01},
                                              {Kind::SetEnoughFrom, "", 12600, 0},
                                              {Kind::CrossesFromThroat, "", 0, 0}};
    for (const length::Why& why : reasons) {
        expectWholeSentence(whyText(why, kEnglish));
    }
}

} // namespace
} // namespace rw::ui
