// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"
#include "core/length/route_template.h"
#include "tests/core/length/requests.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

using namespace rw;
using namespace rw::length;
using testing::HasSubstr;

namespace {

std::vector<StringId> ids(std::initializer_list<const char*> names) {
    std::vector<StringId> ids;
    for (const char* name : names) {
        ids.push_back(StringId::fromText(name).value());
    }
    return ids;
}

/// A small bed that can be overlooked: 4 mains a side, 6 crosses.
CutRequest small(std::optional<HoopEnd> start = HoopEnd::Head) {
    CutRequest request = defaultRequest(Sport::Tennis);
    request.pattern.mains = 8;
    request.pattern.crosses = 6;
    request.pattern.mainsStart = start;
    return request;
}

const OwnRoute kGood{ids({"1L", "2L", "3L", "4L", "X1", "X2"}), ids({"1R", "2R", "3R", "4R", "X3", "X4", "X5", "X6"})};

Refusal refused(CutRequest request, OwnRoute route) {
    request.ownRoute = std::move(route);
    const auto plan = planCut(request);
    EXPECT_FALSE(plan);
    return plan ? Refusal(Code::Missing) : plan.error();
}

TEST(StringId, IsReadAsItIsWritten) {
    for (const char* name : {"1L", "8R", "C", "X1", "X19", "12L"}) {
        EXPECT_EQ(StringId::fromText(name).value().text(), name);
    }
    for (const char* name :
         {"", "L", "R1", "1l", "x1", "X", "X0", "0L", "01L", "X01", "1 L", "X1L", "-1L", "C1", "1LL", "99999999999L"}) {
        EXPECT_FALSE(StringId::fromText(name)) << name;
    }
}

TEST(OwnRoute, LaysWhatATemplateLays) {
    for (const RouteTemplate& route : routeTemplates()) {
        for (const Side side : {Side::Left, Side::Right}) {
            CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), std::string(route.name));
            request.shortSide = side;
            const CutPlan named = planCut(request).value();
            OwnRoute own;
            for (const LaidString& string : named.pieces[0].arms[0].strings) {
                own.shortArm.push_back(string.id);
            }
            for (const LaidString& string : named.pieces[0].arms[1].strings) {
                own.longArm.push_back(string.id);
            }
            request.route.reset();
            request.ownRoute = own;
            request.method.reset();
            const CutPlan written = planCut(request).value();
            EXPECT_EQ(written.method, Method::OnePiece);
            EXPECT_EQ(written.route, kOwnRoute);
            EXPECT_EQ(written.mainsStart, named.mainsStart) << route.name;
            EXPECT_EQ(written.pieces[0].needMm, named.pieces[0].needMm);
            EXPECT_EQ(written.pieces[0].cut, named.pieces[0].cut);
            EXPECT_EQ(written.pieces[0].shortSide->side, side);
            EXPECT_EQ(written.pieces[0].arms[1].endsAtText(), named.pieces[0].arms[1].endsAtText());
        }
    }
}

TEST(OwnRoute, OfAnOddNumberOfMainsBeginsOneArmWithTheCentre) {
    CutRequest request = small(std::nullopt);
    request.pattern.mains = 9;
    request.ownRoute =
        OwnRoute{ids({"C", "1L", "2L", "3L", "4L"}), ids({"1R", "2R", "3R", "4R", "X1", "X2", "X3", "X4", "X5", "X6"})};
    const CutPlan plan = planCut(request).value();
    EXPECT_EQ(plan.pieces[0].shortSide->side, Side::Left);
    EXPECT_EQ(plan.mainsStart, HoopEnd::Head);
}

TEST(OwnRoute, NamesTheFirstStringThatCannotBeLaidThereAndWhatCould) {
    OwnRoute route = kGood;
    route.longArm[3] = StringId::fromText("4L").value(); // on the other side of the head
    Refusal refusal = refused(small(), route);
    EXPECT_EQ(refusal.code(), Code::ImpossibleValue);
    EXPECT_EQ(refusal.text("key"), "ownRoute.long[3]");
    EXPECT_EQ(refusal.text("text"), "4L");
    EXPECT_EQ(refusal.text("expected"),
              "a string that begins at the throat, right, where 3R stopped: 4R, or a cross of "
              "the throat's half (the mains start at the head)");

    route = kGood;
    route.longArm.erase(route.longArm.begin() + 3); // three mains end at the throat, where X3 is not
    refusal = refused(small(), route);
    EXPECT_EQ(refusal.text("key"), "ownRoute.long[3]");
    EXPECT_EQ(refusal.text("text"), "X3");

    route = kGood;
    route.shortArm[0] = StringId::fromText("2L").value();
    refusal = refused(small(), route);
    EXPECT_EQ(refusal.text("key"), "ownRoute.short[0]");
    EXPECT_THAT(refusal.text("expected"), HasSubstr("a centre main"));
    route.shortArm[0] = StringId::fromText("X1").value();
    EXPECT_EQ(refused(small(), route).text("key"), "ownRoute.short[0]");

    route = kGood;
    route.longArm.back() = StringId::fromText("X2").value();
    refusal = refused(small(), route);
    EXPECT_EQ(refusal.text("key"), "ownRoute.long[7]");
    EXPECT_EQ(refusal.text("expected"), "a string that is laid nowhere else: X6");

    route = kGood;
    route.longArm[4] = StringId::fromText("X7").value();
    refusal = refused(small(), route);
    EXPECT_EQ(refusal.text("text"), "X7");
    EXPECT_THAT(refusal.text("expected"), HasSubstr("1L to 4L, 1R to 4R, X1 to X6"));

    route = kGood;
    route.longArm.resize(6);
    refusal = refused(small(), route);
    EXPECT_EQ(refusal.text("key"), "ownRoute");
    EXPECT_THAT(refusal.text("expected"), HasSubstr("not laid: X5, X6"));

    refusal = refused(small(), {kGood.shortArm, {}});
    EXPECT_EQ(refusal.text("key"), "ownRoute.long");
    EXPECT_EQ(refusal.text("text"), "empty");
}

TEST(OwnRoute, FitsTheStartEndThatItNeeds) {
    CutRequest request = small(std::nullopt);
    request.ownRoute = kGood;
    EXPECT_EQ(planCut(request).value().mainsStart, HoopEnd::Head);
    const Refusal refusal = refused(small(HoopEnd::Throat), kGood);
    EXPECT_EQ(refusal.text("key"), "ownRoute.short[4]");
    EXPECT_THAT(refusal.text("expected"), HasSubstr("the mains start at the throat"));
}

TEST(OwnRoute, IsTheOnlyRouteAndOfOnePiece) {
    CutRequest request = small();
    request.route = "plain-2";
    EXPECT_EQ(refused(request, kGood).text("key"), "route");
    request.route.reset();
    request.method = Method::TwoPiece;
    EXPECT_EQ(refused(request, kGood).text("key"), "method");
}

} // namespace
