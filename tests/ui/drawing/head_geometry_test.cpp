// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/head_geometry.h"

#include "tests/ui/sample_plans.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace rw::ui {
namespace {

using length::StringId;

const HeadGeometry::Lying& find(const HeadGeometry& head, const StringId& id) {
    const auto& strings = head.strings();
    const auto found = std::ranges::find_if(strings, [&](const auto& lying) { return lying.id == id; });
    EXPECT_NE(found, strings.end());
    return *found;
}

TEST(HeadGeometry, MainsCountFromLeftToRight) {
    const HeadGeometry head(samples::twoPieces());
    EXPECT_EQ(head.mains(), 16);
    EXPECT_EQ(head.crosses(), 19);
    EXPECT_EQ(head.placeOf({StringId::Kind::MainLeft, 8}), 1);
    EXPECT_EQ(head.placeOf({StringId::Kind::MainLeft, 1}), 8);
    EXPECT_EQ(head.placeOf({StringId::Kind::MainRight, 1}), 9);
    EXPECT_EQ(head.placeOf({StringId::Kind::MainRight, 8}), 16);
    for (const auto& lying : head.strings()) {
        if (lying.id.kind != StringId::Kind::Cross) {
            const double gap = 181.0 / 15;
            EXPECT_NEAR(lying.chord.x1(), (head.placeOf(lying.id) - 8.5) * gap, 1e-9);
        }
    }
}

TEST(HeadGeometry, AnOddBedHasItsCentreMainInTheMiddle) {
    samples::Head odd;
    odd.mains = 17;
    const HeadGeometry head(
        samples::plan(odd, "", {{PieceRole::Mains, {{Side::Left, "C 1L-8L"}, {Side::Right, "1R-8R"}}}}));
    EXPECT_EQ(head.placeOf({StringId::Kind::MainCentre, 0}), 9);
    EXPECT_EQ(head.placeOf({StringId::Kind::MainRight, 1}), 10);
}

TEST(HeadGeometry, EveryCrossingHasOneStringUnderTheOther) {
    for (const length::CutPlan& plan :
         {samples::twoPieces(), samples::onePiece(Side::Right), samples::squash(Side::Left)}) {
        const HeadGeometry head(plan);
        std::size_t under = 0;
        std::size_t meetings = 0;
        for (const auto& lying : head.strings()) {
            under += lying.unders.size();
            if (lying.id.kind != StringId::Kind::Cross) {
                continue;
            }
            for (const auto& main : head.strings()) {
                QPointF where;
                if (main.id.kind != StringId::Kind::Cross &&
                    lying.chord.intersects(main.chord, &where) == QLineF::BoundedIntersection) {
                    ++meetings;
                }
            }
        }
        EXPECT_EQ(under, meetings);
        // A rim cross does not meet the outer mains.
        EXPECT_LT(meetings, static_cast<std::size_t>(head.mains() * head.crosses()));
    }
}

TEST(HeadGeometry, CrossesGoOverAndUnderInTurn) {
    // Racquet Sports Industry 2006: mains counted from the left and crosses from the head, cross c lies over main m
    // when c + m is even.
    const HeadGeometry head(samples::twoPieces());
    const auto& tenth = find(head, {StringId::Kind::Cross, 10});
    ASSERT_EQ(tenth.unders.size(), 8u);
    for (const double under : tenth.unders) {
        const double x = tenth.line.pointAt(under).x();
        const int main = static_cast<int>(std::lround(x / (181.0 / 15) + 8.5));
        EXPECT_EQ(main % 2, 1) << main; // 10 + odd is odd: under
    }
    EXPECT_TRUE(HeadGeometry::crossIsOver(1, 1));
    EXPECT_FALSE(HeadGeometry::crossIsOver(1, 2));
}

TEST(HeadGeometry, RunsOutsideJoinWhereTheStringsEnd) {
    const HeadGeometry head(samples::wrapFirst(Side::Left));
    // 8 strings are 7 runs, 27 are 26, and the loop in the middle.
    EXPECT_EQ(head.links().size(), 7u + 26u + 1u);
    const QPainterPath hoop = head.innerEdge();
    for (const auto& link : head.links()) {
        EXPECT_FALSE(hoop.contains(link.path.pointAtPercent(0.5)));
    }
    for (std::size_t i = 1; i < head.strings().size(); ++i) {
        const auto& before = head.strings()[i - 1];
        const auto& after = head.strings()[i];
        if (before.arm != after.arm) {
            continue;
        }
        const auto joins = [&](const HeadGeometry::Link& link) {
            return QLineF(link.path.pointAtPercent(0), before.line.p2()).length() < 1e-6 &&
                   QLineF(link.path.currentPosition(), after.line.p1()).length() < 1e-6;
        };
        EXPECT_TRUE(std::ranges::any_of(head.links(), joins)) << i;
    }
}

TEST(HeadGeometry, StartsAndEndsStandOutsideTheHoop) {
    const HeadGeometry two(samples::twoPieces());
    EXPECT_EQ(two.starts().size(), 2u); // mains in the middle, crosses at their knot
    EXPECT_EQ(two.ends().size(), 3u);   // two of the mains, one of the crosses
    const HeadGeometry one(samples::onePiece(Side::Left));
    EXPECT_EQ(one.starts().size(), 1u);
    EXPECT_EQ(one.ends().size(), 2u);
    for (const HeadGeometry* head : {&two, &one}) {
        for (const auto& end : head->ends()) {
            EXPECT_FALSE(head->innerEdge().contains(end.at));
            EXPECT_GT(QPointF::dotProduct(end.at, end.outwards), 0);
            EXPECT_NEAR(std::hypot(end.outwards.x(), end.outwards.y()), 1, 1e-9);
        }
    }
    EXPECT_NEAR(one.starts().front().at.x(), 0, 0.5);
    EXPECT_LT(one.starts().front().at.y(), -329.0 / 2); // the mains of this frame start at the head
}

TEST(HeadGeometry, FlagsAtOneCornerLeanApart) {
    // 17 mains and 18 crosses: the left arm of the mains and the crosses both end at the throat on the left.
    samples::Head head;
    head.mains = 17;
    head.crosses = 18;
    const HeadGeometry crowded(samples::plan(head, "",
                                             {{PieceRole::Mains, {{Side::Left, "C 1L-8L"}, {Side::Right, "1R-8R"}}},
                                              {PieceRole::Crosses, {{Side::Left, "X1-X18"}}}}));
    ASSERT_EQ(crowded.ends().size(), 3u);
    const auto top = [](const HeadGeometry::Mark& end) { return end.at + end.lean * 28; };
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t j = i + 1; j < 3; ++j) {
            EXPECT_GT(QLineF(top(crowded.ends()[i]), top(crowded.ends()[j])).length(), 18);
        }
    }
}

} // namespace
} // namespace rw::ui
