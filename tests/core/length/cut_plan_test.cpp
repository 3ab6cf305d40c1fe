// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"
#include "core/length/route.h"
#include "core/length/route_template.h"
#include "core/length/stretch.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>

using namespace rw;
using namespace rw::length;

namespace {

/// Random frames, patterns and jobs, the same ones in every run.
class Frames {
public:
    explicit Frames(unsigned seed)
        : m_random(seed) {}

    CutRequest next() {
        const Sport sport = pick({Sport::Tennis, Sport::Squash, Sport::Badminton});
        CutRequest request = defaultRequest(sport);
        request.hoop.lengthMm = between(230, 380);
        request.hoop.widthMm = between(160, 225);
        request.hoop.openThroat = sport == Sport::Squash && coin();
        if (coin()) {
            request.hoop.headExponent = between(1.6, 3);
            request.hoop.throatExponent = between(1.4, 2.6);
            request.hoop.widestFromThroat = between(0.4, 0.65);
        }
        request.pattern.mains = whole(10, 24);
        request.pattern.crosses = whole(12, 24);
        request.pattern.spread = between(0, 0.6);
        request.pattern.crossesCentreMm = between(-5, 10);
        const Material material =
            pick({Material::NaturalGut, Material::Nylon, Material::Multifilament, Material::Polyester});
        request = of(request, material);
        request.mains.tension = Tension::fromHundredths(whole(2000, 6000), TensionUnit::Pound).value();
        request.crosses.tension = Tension::fromHundredths(whole(2000, 6000), TensionUnit::Pound).value();
        request.ends.reachMm = between(150, 400);
        request.ends.crossesStartClamped = coin();
        request.shortSide = pick({Side::Left, Side::Right});
        request.tapeStep = Length::fromMillimetres(pick({1, 10, 25, 50, 100}));
        request.ceiling = pick({0.01, 0.001, 0.05});
        return request;
    }

    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_random); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    bool coin() { return whole(0, 1) == 1; }

private:
    template<class T>
    T pick(std::initializer_list<T> from) {
        return *(from.begin() + whole(0, static_cast<int>(from.size()) - 1));
    }
    std::mt19937 m_random;
};

/// Every job that can be strung on this frame: two pieces, and every route that fits.
std::vector<CutPlan> allPlans(const CutRequest& request) {
    std::vector<CutPlan> plans{planCut(inTwoPieces(request)).value()};
    for (const RouteTemplate& route : routeTemplates()) {
        if (auto plan = planCut(inOnePiece(request, std::string(route.name)))) {
            plans.push_back(std::move(*plan));
        }
    }
    return plans;
}

std::vector<RouteArm> armsOf(const CutPlan& plan) {
    std::vector<RouteArm> arms;
    for (const PiecePlan& piece : plan.pieces) {
        for (const Arm& arm : piece.arms) {
            RouteArm route{arm.side, {}, arm.endsAtEnd, arm.endsAtSide};
            for (const LaidString& string : arm.strings) {
                route.strings.push_back({string.id, string.to});
            }
            arms.push_back(std::move(route));
        }
    }
    return arms;
}

TEST(CutPlan, EveryStringIsLaidExactlyOnceAndBeginsWhereTheLastStopped) {
    Frames frames(1);
    for (int round = 0; round < 300; ++round) {
        const CutRequest request = frames.next();
        const std::vector<CutPlan> plans = allPlans(request);
        EXPECT_GE(plans.size(), 2U); // at least one route of one piece fits any pattern
        for (const CutPlan& plan : plans) {
            const auto arms = armsOf(plan);
            EXPECT_FALSE(faultIn(arms, plan.mainsStart, request.pattern.mains, request.pattern.crosses)) << plan.route;
            std::map<std::string, int> laid;
            for (const RouteArm& arm : arms) {
                for (const RouteString& string : arm.strings) {
                    ++laid[string.id.text()];
                }
            }
            EXPECT_EQ(laid.size(), static_cast<std::size_t>(request.pattern.mains + request.pattern.crosses));
            EXPECT_TRUE(std::ranges::all_of(laid, [](const auto& entry) { return entry.second == 1; }));
        }
    }
}

TEST(CutPlan, ThePathIsWhatItIsMadeOf) {
    Frames frames(2);
    for (int round = 0; round < 200; ++round) {
        const CutRequest request = frames.next();
        const int strings = request.pattern.mains + request.pattern.crosses;
        for (const CutPlan& plan : allPlans(request)) {
            double walls = 0;
            for (const PiecePlan& piece : plan.pieces) {
                double chords = 0;
                double arms = 0;
                for (const Arm& arm : piece.arms) {
                    arms += arm.pathMm;
                    for (const LaidString& string : arm.strings) {
                        chords += string.chordMm;
                        EXPECT_NEAR(std::hypot(string.from.x - string.end.x, string.from.y - string.end.y),
                                    string.chordMm, 1e-9);
                    }
                }
                EXPECT_NEAR(piece.chordsMm, chords, 1e-6);
                EXPECT_NEAR(piece.pathMm, arms, 1e-6); // the arms add up to the piece
                EXPECT_NEAR(piece.pathMm, piece.chordsMm + piece.wallsMm + piece.linksMm + piece.crimpMm, 1e-6);
                EXPECT_NEAR(piece.needMm, piece.pathMm / (1 + piece.stretchPercent / 100) + piece.endsMm, 1e-6);
                walls += piece.wallsMm;
            }
            EXPECT_NEAR(walls, 2 * plan.hoop.wallMm * strings, 1e-6);
        }
    }
}

// Links by hand from the points that the plan gives: straight between exit points one wall outside.
TEST(CutPlan, LinksAreStraightBetweenExitPoints) {
    const CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "wrap-last-3");
    const CutPlan plan = planCut(request).value();
    const auto outside = [&](const Point& tip, const Point& other) {
        const double length = std::hypot(tip.x - other.x, tip.y - other.y);
        return Point{tip.x + (tip.x - other.x) / length * plan.hoop.wallMm,
                     tip.y + (tip.y - other.y) / length * plan.hoop.wallMm};
    };
    const auto apart = [](const Point& a, const Point& b) { return std::hypot(a.x - b.x, a.y - b.y); };
    double links = 0;
    std::vector<Point> starts;
    for (const Arm& arm : plan.pieces[0].arms) {
        starts.push_back(outside(arm.strings[0].from, arm.strings[0].end));
        for (std::size_t i = 1; i < arm.strings.size(); ++i) {
            links += apart(outside(arm.strings[i - 1].end, arm.strings[i - 1].from),
                           outside(arm.strings[i].from, arm.strings[i].end));
        }
    }
    links += apart(starts[0], starts[1]);
    EXPECT_NEAR(plan.pieces[0].linksMm, links, 1e-9);
}

TEST(CutPlan, LeftAndRightAreMirrorImages) {
    Frames frames(3);
    for (int round = 0; round < 100; ++round) {
        CutRequest left = frames.next();
        left.shortSide = Side::Left;
        CutRequest right = left;
        right.shortSide = Side::Right;
        const auto a = allPlans(left);
        const auto b = allPlans(right);
        ASSERT_EQ(a.size(), b.size());
        for (std::size_t i = 1; i < a.size(); ++i) { // two pieces name their left arm first on both
            const PiecePlan& one = a[i].pieces[0];
            const PiecePlan& other = b[i].pieces[0];
            EXPECT_EQ(one.cut, other.cut);
            EXPECT_NEAR(one.needMm, other.needMm, 1e-6);
            EXPECT_EQ(one.shortSide->measure, other.shortSide->measure);
            for (std::size_t arm = 0; arm < 2; ++arm) {
                EXPECT_EQ(one.arms[arm].side, otherSide(other.arms[arm].side));
                EXPECT_EQ(one.arms[arm].endsAtSide, otherSide(other.arms[arm].endsAtSide));
                for (std::size_t s = 0; s < one.arms[arm].strings.size(); ++s) {
                    EXPECT_NEAR(one.arms[arm].strings[s].from.x, -other.arms[arm].strings[s].from.x, 1e-9);
                    EXPECT_NEAR(one.arms[arm].strings[s].from.y, other.arms[arm].strings[s].from.y, 1e-9);
                }
            }
        }
    }
}

TEST(CutPlan, NeedGrowsWithTheHeadAndFallsWithStretch) {
    Frames frames(4);
    for (int round = 0; round < 200; ++round) {
        const CutRequest request = frames.next();
        CutRequest larger = request;
        larger.hoop.lengthMm = *request.hoop.lengthMm * 1.02;
        larger.hoop.widthMm = *request.hoop.widthMm * 1.02;
        CutRequest stretchier = request;
        stretchier.mains.stretchPercent = stretchAt55(request.mains.material).middle() + 1;
        stretchier.crosses.stretchPercent = stretchier.mains.stretchPercent;
        const auto needs = allPlans(request);
        const auto more = allPlans(larger);
        const auto less = allPlans(stretchier);
        for (std::size_t i = 0; i < needs.size(); ++i) {
            EXPECT_GT(needOf(more[i]), needOf(needs[i]));
            EXPECT_LT(needOf(less[i]), needOf(needs[i]));
        }
    }
}

TEST(CutPlan, EverythingTwiceAsLargeNeedsTwiceAsMuch) {
    Frames frames(5);
    for (int round = 0; round < 100; ++round) {
        CutRequest small = frames.next();
        small.hoop.lengthMm = frames.between(200, 220);
        small.hoop.widthMm = frames.between(150, 170);
        small.hoop.wallMm = 5;
        small.pattern.crossesCentreMm = 2;
        small.stretch = false;
        small.mains.diameterMm = small.crosses.diameterMm = 0.7;
        CutRequest large = small;
        for (auto* length :
             {&large.hoop.lengthMm, &large.hoop.widthMm, &large.hoop.wallMm, &large.pattern.crossesCentreMm}) {
            *length = **length * 2;
        }
        large.mains.diameterMm = large.crosses.diameterMm = 1.4;
        large.ends.reachMm = small.ends.reachMm * 2;
        large.ends.startingKnotMm = small.ends.startingKnotMm * 2;
        const auto one = allPlans(small);
        const auto two = allPlans(large);
        for (std::size_t i = 0; i < one.size(); ++i) {
            EXPECT_NEAR(needOf(two[i]), 2 * needOf(one[i]), 1e-6);
        }
    }
}

TEST(CutPlan, NoChanceAboveTheCeilingUnlessHeld) {
    Frames frames(6);
    for (int round = 0; round < 200; ++round) {
        const CutRequest request = frames.next();
        for (const CutPlan& plan : allPlans(request)) {
            const bool held = plan.pieces[0].heldAtPacket;
            EXPECT_TRUE(held || plan.chanceShortJob <= request.ceiling) << plan.chanceShortJob;
            for (const PiecePlan& piece : plan.pieces) {
                EXPECT_EQ(piece.heldAtPacket, held);
                EXPECT_TRUE(held || piece.cut.millimetres() % request.tapeStep.millimetres() == 0);
                if (piece.role == PieceRole::Whole) {
                    EXPECT_GT(piece.shortSide->measure.millimetres(), piece.shortSide->needMm);
                    EXPECT_NEAR(piece.shortSide->headLengths,
                                static_cast<double>(piece.shortSide->measure.millimetres()) / plan.headLengthMm, 1e-9);
                }
            }
        }
    }
}

TEST(CutPlan, EachHalfOfAOnePieceJobHasItsOwnStretch) {
    const auto needAt = [](const char* mains, const char* crosses) {
        CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "plain-0");
        request.mains.tension = Tension::tryParse(mains, TensionUnit::Pound).value();
        request.crosses.tension = Tension::tryParse(crosses, TensionUnit::Pound).value();
        return planCut(request).value().pieces[0];
    };
    const PiecePlan even = needAt("55 lb", "55 lb");
    const PiecePlan looserCrosses = needAt("55 lb", "40 lb");
    EXPECT_NEAR(even.stretchPercent, 9.5, 1e-9);
    // The short side is mains only, so only the long side needs more.
    EXPECT_NEAR(looserCrosses.shortSide->needMm, even.shortSide->needMm, 1e-9);
    EXPECT_GT(looserCrosses.needMm, even.needMm);
    // Each string with the link before it: crosses and the link from the last main to X1.
    double crossesPath = 0;
    const Arm& arm = even.arms[1];
    for (std::size_t i = 8; i < arm.strings.size(); ++i) {
        crossesPath += arm.strings[i].chordMm + 22;
    }
    const double e = 0.095;
    const double looser = 0.095 * std::sqrt(40.0 / 55.0);
    EXPECT_GT(looserCrosses.needMm - even.needMm, crossesPath * (1 / (1 + looser) - 1 / (1 + e)));
    EXPECT_LT(looserCrosses.needMm - even.needMm, 1.1 * crossesPath * (1 / (1 + looser) - 1 / (1 + e)));
}

TEST(CutPlan, EndsAreThePiecesOwn) {
    CutRequest request = inTwoPieces(defaultRequest(Sport::Tennis));
    const CutPlan knotted = planCut(request).value();
    EXPECT_EQ(knotted.pieces[0].endsMm, 600);
    EXPECT_EQ(knotted.pieces[1].endsMm, 450);
    request.ends.crossesStartClamped = true;
    EXPECT_EQ(planCut(request).value().pieces[1].endsMm, 600);
    EXPECT_EQ(planCut(inOnePiece(request, "plain-1")).value().pieces[0].endsMm, 600);
}

TEST(CutPlan, SaysWhatItStandsOn) {
    const auto says = [](const CutPlan& plan, Why::Kind kind) {
        return std::ranges::find(plan.why, kind, &Why::kind) != plan.why.end();
    };
    const CutPlan plan = planCut(inOnePiece(defaultRequest(Sport::Tennis), "plain-2")).value();
    EXPECT_TRUE(says(plan, Why::Kind::OutlineFrom));
    EXPECT_TRUE(says(plan, Why::Kind::GeometryOnly));
    EXPECT_TRUE(says(plan, Why::Kind::RouteChosen));
    EXPECT_TRUE(says(plan, Why::Kind::StartEndAssumed));
    EXPECT_TRUE(says(plan, Why::Kind::TwoTopCrosses));
    EXPECT_TRUE(says(plan, Why::Kind::CeilingDecides));
    CutRequest throatUp = inOnePiece(defaultRequest(Sport::Tennis), "throat-up-2");
    EXPECT_TRUE(says(planCut(throatUp).value(), Why::Kind::CrossesFromThroat));
    CutRequest dense = headOf(Sport::Tennis, 370, 285, 18, 20);
    EXPECT_TRUE(says(planCut(of(dense, Material::Polyester)).value(), Why::Kind::AbovePacket));
    CutRequest costly = inTwoPieces(defaultRequest(Sport::Tennis));
    costly.costPerMetre = 0.01;
    costly.spoiledJobCost = 100;
    costly.ceiling = 0.1;
    EXPECT_TRUE(says(planCut(costly).value(), Why::Kind::LeastCost));
}

TEST(CutPlan, NumbersOutsideTheirRangeAreRefusedByName) {
    CutRequest request = defaultRequest(Sport::Tennis);
    request.hoop.lengthMm = std::nan("");
    EXPECT_EQ(planCut(request).error().text("key"), "hoop.lengthMm");
    request = defaultRequest(Sport::Tennis);
    request.ceiling = 0;
    EXPECT_EQ(planCut(request).error().text("key"), "ceiling");
    request = defaultRequest(Sport::Tennis);
    request.mains.stretchPercent = -1;
    EXPECT_EQ(planCut(request).error().text("key"), "mains.stretchPercent");
    request = defaultRequest(Sport::Tennis);
    request.tapeStep = Length::fromMillimetres(0);
    EXPECT_EQ(planCut(request).error().text("key"), "tapeStepMm");
}

} // namespace
