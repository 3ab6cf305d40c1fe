// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/route.h"
#include "core/length/route_choice.h"
#include "core/length/route_template.h"
#include "tests/core/length/requests.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace rw;
using namespace rw::length;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

namespace {

using Kind = StringId::Kind;

std::vector<std::string> texts(std::span<const StringId> ids) {
    std::vector<std::string> texts;
    for (const StringId& id : ids) {
        texts.push_back(id.text());
    }
    return texts;
}

std::vector<RouteArm> laid(std::string_view route, HoopEnd start, int mains, int crosses) {
    return layTemplate(*routeTemplate(route), start, Side::Left, mains, crosses).value();
}

TEST(WrittenArm, ReadsRangesUpAndDown) {
    EXPECT_THAT(texts(writtenArm("S1..n-1 X1", Side::Left, 8, 6).value()), ElementsAre("1L", "2L", "3L", "X1"));
    EXPECT_THAT(texts(writtenArm("Ln Xx..x-1", Side::Left, 8, 6).value()), ElementsAre("4R", "X6", "X5"));
    EXPECT_THAT(texts(writtenArm("Sn Xx-4..1", Side::Right, 8, 6).value()), ElementsAre("4R", "X2", "X1"));
}

TEST(WrittenArm, RefusesWhatItCannotRead) {
    for (const std::string_view arm : {"T1", "S", "S1..", "S1..m", "X1...3", "Xx-", "S999", "Sn1", "X1,2"}) {
        const auto read = writtenArm(arm, Side::Left, 16, 19);
        ASSERT_FALSE(read) << arm;
        EXPECT_EQ(read.error().code(), Code::Unreadable);
    }
}

TEST(Route, TwelveSixteenAndTwentyMainsFinishWhereTheyStarted) {
    for (const int mains : {12, 16, 20}) {
        EXPECT_EQ(mainsFinish(HoopEnd::Throat, mains), HoopEnd::Throat);
        EXPECT_EQ(layMains(HoopEnd::Head, Side::Left, mains)[0].endsAtEnd, HoopEnd::Head);
    }
    for (const int mains : {14, 18, 22}) {
        EXPECT_EQ(mainsFinish(HoopEnd::Throat, mains), HoopEnd::Head);
        EXPECT_EQ(layMains(HoopEnd::Head, Side::Left, mains)[1].endsAtEnd, HoopEnd::Throat);
    }
}

TEST(Route, OddMainsFinishAtOppositeEnds) {
    for (const HoopEnd start : {HoopEnd::Head, HoopEnd::Throat}) {
        const auto arms = layMains(start, Side::Left, 17);
        EXPECT_NE(arms[0].endsAtEnd, arms[1].endsAtEnd);
        const auto one = laid("plain-0", start, 17, 19);
        EXPECT_EQ(one[0].endsAtEnd, HoopEnd::Throat);
        EXPECT_EQ(one[1].strings.back().id, (StringId{Kind::Cross, 19}));
    }
}

TEST(Route, CrossesEndOnTheOtherSideWhenOdd) {
    EXPECT_EQ(layCrosses(Side::Left, 19).endsAtSide, Side::Right);
    EXPECT_EQ(layCrosses(Side::Left, 20).endsAtSide, Side::Left);
    EXPECT_EQ(layCrosses(Side::Right, 20).endsAtEnd, HoopEnd::Throat);
}

TEST(RouteCheck, NamesTheFirstFault) {
    const auto good = laid("plain-2", HoopEnd::Head, 16, 19);
    EXPECT_FALSE(faultIn(good, HoopEnd::Head, 16, 19));
    const auto faultAfter = [&](auto change) {
        auto arms = good;
        change(arms);
        return faultIn(arms, HoopEnd::Head, 16, 19).value();
    };
    using Fault = RouteFault::Kind;
    EXPECT_EQ(faultAfter([](auto& arms) { arms[1].strings.pop_back(); }).kind, Fault::NotLaid);
    EXPECT_EQ(faultAfter([](auto& arms) { arms[1].strings.pop_back(); }).string->text(), "X19");
    EXPECT_EQ(faultAfter([](auto& arms) { arms[0].strings.clear(); }).kind, Fault::EmptyArm);
    EXPECT_EQ(faultAfter([](auto& arms) { arms[1].strings.back().to = RunsTo::Right; }).kind, Fault::RunsElsewhere);
    EXPECT_EQ(faultAfter([](auto& arms) { std::swap(arms[0].strings[0], arms[0].strings[2]); }).kind,
              Fault::NotFromMiddle);
    EXPECT_EQ(faultAfter([](auto& arms) { arms[0].strings[3].id.kind = Kind::MainRight; }).kind,
              Fault::BeginsElsewhere);
    EXPECT_EQ(faultAfter([](auto& arms) { arms[0].strings[3].id.number = 9; }).kind, Fault::NotInPattern);
    EXPECT_EQ(faultAfter([](auto& arms) { arms[0].strings[3].id.number = 2; }).kind, Fault::LaidTwice);
    // Crosses that would begin at the other end of the head than the outer main stopped.
    const auto wrong = faultAfter([](auto& arms) { arms[1].strings.erase(arms[1].strings.begin() + 7); });
    EXPECT_EQ(wrong.kind, Fault::BeginsElsewhere);
    EXPECT_EQ(wrong.string->text(), "X3");
    EXPECT_EQ(wrong.stoppedAtEnd, HoopEnd::Throat);
    EXPECT_EQ(wrong.stoppedAtSide, Side::Right);
}

// 8 mains a side from the throat finish at the throat; what fits is offered, and never "start at the head".
TEST(RouteChoice, SaysWhatFitsInstead) {
    CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "plain-2");
    request.pattern.mainsStart = HoopEnd::Throat;
    const auto refused = planCut(request);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), Code::RouteDoesNotFit);
    EXPECT_EQ(refused.error().text("route"), "plain-2");
    EXPECT_EQ(refused.error().text("reason"), "mains-finish-at-throat");
    EXPECT_EQ(refused.error().number("mainsASide"), 8);
    EXPECT_EQ(refused.error().text("mainsStart"), "throat");
    EXPECT_EQ(refused.error().text("fits"),
              "two-piece, wrap-first-2, wrap-first-1, wrap-first-3, wrap-last-1, wrap-last-2, wrap-last-3, "
              "throat-up-0, throat-up-2");
}

TEST(RouteChoice, WrapsDoNotFitWhereMainsFinishAtTheHead) {
    CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "wrap-last-1");
    request.pattern.mainsStart = HoopEnd::Head;
    const auto refused = planCut(request);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text("reason"), "mains-finish-at-head");
    EXPECT_EQ(refused.error().text("fits"), "two-piece, plain-2, plain-1, plain-0, plain-2-reversed");
}

TEST(RouteChoice, OddMainsTakeNoTopCrossesOnTheShortSide) {
    CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "plain-2");
    request.pattern.mains = 17;
    const auto refused = planCut(request);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text("reason"), "odd-mains");
    EXPECT_THAT(refused.error().text("fits"), HasSubstr("plain-0"));
    EXPECT_THAT(refused.error().text("fits"), Not(HasSubstr("plain-2")));
    request.route.reset();
    EXPECT_EQ(planCut(request).value().route, "plain-0");
}

TEST(RouteChoice, UnknownRoutesAreNamedWithTheKnownOnes) {
    const auto refused = planCut(inOnePiece(defaultRequest(Sport::Tennis), "zigzag"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), Code::RouteUnknown);
    EXPECT_EQ(refused.error().text("route"), "zigzag");
    EXPECT_THAT(refused.error().text("known"), HasSubstr("wrap-first-2"));
}

TEST(RouteChoice, DefaultsAreTheSports) {
    EXPECT_EQ(planCut(defaultRequest(Sport::Tennis)).value().method, Method::TwoPiece);
    EXPECT_EQ(planCut(defaultRequest(Sport::Badminton)).value().method, Method::TwoPiece);
    const CutPlan squash = planCut(defaultRequest(Sport::Squash)).value();
    EXPECT_EQ(squash.method, Method::OnePiece);
    EXPECT_EQ(squash.route, "plain-2");
    EXPECT_EQ(squash.mainsStart, HoopEnd::Throat); // 7 a side finish at the head from there
}

TEST(RouteChoice, MainsThatFinishAtTheThroatGetTwoPiecesUnlessOneIsAsked) {
    CutRequest request = defaultRequest(Sport::Squash);
    request.pattern.mainsStart = HoopEnd::Head;
    EXPECT_EQ(planCut(request).value().method, Method::TwoPiece);
    request.method = Method::OnePiece;
    EXPECT_EQ(planCut(request).value().route, "wrap-first-2");
}

TEST(RouteChoice, ARouteIsForOnePiece) {
    CutRequest request = defaultRequest(Sport::Tennis);
    request.route = "plain-1";
    EXPECT_EQ(planCut(request).value().method, Method::OnePiece);
    request.method = Method::TwoPiece;
    const auto refused = planCut(request);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), Code::ImpossibleValue);
    EXPECT_EQ(refused.error().text("key"), "route");
}

} // namespace
