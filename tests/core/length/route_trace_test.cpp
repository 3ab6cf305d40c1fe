// SPDX-License-Identifier: GPL-3.0-or-later
// Every route over every usual pattern, traced as a finger would follow the string over the finished bed.
#include "core/length/cut_plan.h"
#include "core/length/route_choice.h"
#include "core/length/route_template.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

using namespace rw;
using namespace rw::length;

namespace {

constexpr int kFewestMains = 12;
constexpr int kMostMains = 24;
constexpr int kFewestCrosses = 14;
constexpr int kMostCrosses = 24;

/// Where a finger stands outside the hoop: "head", "throat", "left", "right", as far as the last string told it.
struct Finger {
    std::string end;
    std::string side;
};

/// Follows one arm and says what is wrong, "" when nothing is.
std::string follow(const Arm& arm, const std::string& start, int crosses, std::set<std::string>& laid) {
    Finger finger{start, std::string(sideText(arm.side))};
    std::string before;
    for (const LaidString& string : arm.strings) {
        const std::string name = string.id.text();
        const std::string to(runsToText(string.to));
        if (!laid.insert(name).second) {
            return name + " is laid twice";
        }
        if (name.front() == 'X') {
            if (to == finger.side) {
                return name + " runs to the side where the string already is";
            }
            const int number = std::stoi(name.substr(1));
            const std::string half = 2 * number <= crosses + 1 ? "head" : "throat";
            if (!before.empty() && before.front() != 'X' && half != finger.end) {
                return name + " begins at the other end than " + before + " stopped";
            }
            finger = {half, to};
        } else {
            if (to == finger.end) {
                return name + " runs to the end where the string already is";
            }
            const std::string side = name.back() == 'L' ? "left" : (name.back() == 'R' ? "right" : finger.side);
            if (side != finger.side) {
                return name + " begins on the other side than " + before + " stopped";
            }
            finger = {to, side};
        }
        before = name;
    }
    return arm.endsAtText() == finger.end + ", " + finger.side ? "" : "it says that it ends at the " + arm.endsAtText();
}

/// Where the long side of a route ends with its short side on the left, by the table of routes made for this project.
std::string longSideEnds(const std::string& route, int crosses) {
    const bool odd = crosses % 2 != 0;
    const auto side = [](bool left) { return std::string(left ? "left" : "right"); };
    const auto afterK = [&](int k) { return side((crosses - k) % 2 != 0); };
    static const std::map<std::string, int> kPlain{
        {"plain-0", 0}, {"plain-1", 1}, {"plain-2", 2}, {"plain-2-reversed", 2}};
    if (const auto plain = kPlain.find(route); plain != kPlain.end()) {
        return "throat, " + afterK(plain->second);
    }
    if (route.starts_with("throat-up-")) {
        return "head, " + afterK(route.back() - '0');
    }
    if (route == "wrap-last-1") {
        return odd ? "head, left" : "head, right";
    }
    if (route == "wrap-last-2") {
        return "throat, " + side(odd);
    }
    if (route == "wrap-last-3") {
        return "head, left";
    }
    if (route == "wrap-first-2") {
        return "throat, " + side(!odd);
    }
    return "throat, " + side(odd); // wrap-first-1 and -3
}

TEST(RouteTrace, EveryRouteOverEveryUsualPattern) {
    int traced = 0;
    for (int mains = kFewestMains; mains <= kMostMains; ++mains) {
        for (int crosses = kFewestCrosses; crosses <= kMostCrosses; ++crosses) {
            for (const RouteTemplate& route : routeTemplates()) {
                for (const HoopEnd start : {HoopEnd::Head, HoopEnd::Throat}) {
                    CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), std::string(route.name));
                    request.pattern.mains = mains;
                    request.pattern.crosses = crosses;
                    request.pattern.mainsStart = start;
                    const auto plan = planCut(request);
                    SCOPED_TRACE(std::string(route.name) + " " + std::to_string(mains) + " x " +
                                 std::to_string(crosses) + " from the " + std::string(hoopEndText(start)));
                    if (mains % 2 == 0) {
                        const bool atHead = mainsFinish(start, mains) == HoopEnd::Head;
                        ASSERT_EQ(plan.has_value(), atHead == route.name.starts_with("plain"));
                    }
                    if (!plan) {
                        EXPECT_EQ(plan.error().code(), Code::RouteDoesNotFit);
                        EXPECT_NE(plan.error().text("fits"), "");
                        continue;
                    }
                    ++traced;
                    std::set<std::string> laid;
                    for (const Arm& arm : plan->pieces[0].arms) {
                        EXPECT_EQ(follow(arm, std::string(hoopEndText(start)), crosses, laid), "");
                    }
                    EXPECT_EQ(laid.size(), static_cast<std::size_t>(mains + crosses));
                    if (mains % 2 == 0) {
                        EXPECT_EQ(plan->pieces[0].arms[1].endsAtText(), longSideEnds(std::string(route.name), crosses));
                    }
                    // No run along the hoop is longer than a stringer would leave, but for crosses laid out of order.
                    const auto longRun = std::ranges::find(plan->why, Why::Kind::LongOutsideRun, &Why::kind);
                    EXPECT_EQ(longRun, plan->why.end()) << longRun->text << ' ' << longRun->value;
                }
            }
        }
    }
    EXPECT_GT(traced, 700);
}

// With an odd number the two sides finish at opposite ends; from the head down works only where the long side is the
// one that finishes at the head.
TEST(RouteTrace, OddMainsFromTheHeadDown) {
    for (int mains = kFewestMains + 1; mains < kMostMains; mains += 2) {
        for (const HoopEnd start : {HoopEnd::Head, HoopEnd::Throat}) {
            for (const Side side : {Side::Left, Side::Right}) {
                CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "plain-0");
                request.pattern.mains = mains;
                request.pattern.mainsStart = start;
                request.shortSide = side;
                const CutPlan plan = planCut(request).value();
                const Arm& shortSide = plan.pieces[0].arms[0];
                EXPECT_EQ(shortSide.side, side);
                EXPECT_EQ(shortSide.endsAtEnd, HoopEnd::Throat);
                const auto lastMain =
                    std::ranges::find_if(plan.pieces[0].arms[1].strings,
                                         [](const LaidString& string) { return !string.id.isMain(); }) -
                    1;
                EXPECT_EQ(lastMain->to, RunsTo::Head);
            }
        }
    }
}

TEST(RouteTrace, TwoPiecesOverEveryUsualPattern) {
    for (int mains = kFewestMains; mains <= kMostMains; ++mains) {
        for (int crosses = kFewestCrosses; crosses <= kMostCrosses; ++crosses) {
            for (const HoopEnd start : {HoopEnd::Head, HoopEnd::Throat}) {
                CutRequest request = inTwoPieces(defaultRequest(Sport::Badminton));
                request.pattern.mains = mains;
                request.pattern.crosses = crosses;
                request.pattern.mainsStart = start;
                const CutPlan plan = planCut(request).value();
                std::set<std::string> laid;
                for (const PiecePlan& piece : plan.pieces) {
                    for (const Arm& arm : piece.arms) {
                        const bool mainsArm = piece.role == PieceRole::Mains;
                        EXPECT_EQ(follow(arm, std::string(mainsArm ? hoopEndText(start) : "head"), crosses, laid), "");
                    }
                }
                EXPECT_EQ(laid.size(), static_cast<std::size_t>(mains + crosses));
                const Arm& crossArm = plan.pieces[1].arms[0];
                EXPECT_EQ(crossArm.endsAtSide == crossArm.side, crosses % 2 == 0);
            }
        }
    }
}

} // namespace
