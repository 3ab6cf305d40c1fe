// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"
#include "ui/drawing/lot_curve.h"
#include "ui/drawing/packet_drawing.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
Instant day(int number) { return Instant(std::chrono::days(number)); }

Canvas pile(int packets, int promised) {
    const NoWarnings quiet;
    Canvas canvas(120, 100);
    canvas.draw([&](QPainter& painter) { drawPackets(painter, QRectF(0, 0, 120, 100), packets, promised); });
    return canvas;
}

TEST(PacketDrawing, APileIsHigherTheMoreLieInIt) {
    EXPECT_LT(pile(1, 0).inked(QRect(0, 0, 120, 100)), pile(3, 0).inked(QRect(0, 0, 120, 100)));
    EXPECT_EQ(pile(kMostDrawn, 0).image(), pile(100, 0).image()) << "how many there are stands beside it";
}

TEST(PacketDrawing, ThePromisedOnesAreWarmAndLieOnTop) {
    EXPECT_EQ(pile(5, 0).warm(QRect(0, 0, 120, 100)), 0);
    const Canvas some = pile(5, 2);
    EXPECT_GT(some.warm(some.all()), 0);
    EXPECT_EQ(some.warm(QRect(0, 75, 120, 25)), 0) << "the lowest are free";
    EXPECT_GT(pile(5, 4).warm(QRect(0, 0, 120, 100)), some.warm(some.all()));
}

TEST(PacketDrawing, ACoilThatIsPromisedDiffersInShape) {
    const NoWarnings quiet;
    Canvas free(120, 100);
    Canvas promised(120, 100);
    free.draw([](QPainter& painter) { drawCoil(painter, QRectF(0, 0, 120, 100), false); });
    promised.draw([](QPainter& painter) { drawCoil(painter, QRectF(0, 0, 120, 100), true); });
    EXPECT_GT(free.inked(free.all()), 0);
    EXPECT_LT(promised.inked(promised.all()), free.inked(free.all())) << "its line is broken";
}

LotCurve life(std::vector<LotCurve::Step> steps) {
    return {.steps = std::move(steps),
            .nominal = mm(200'000),
            .top = QStringLiteral("200 m"),
            .bottom = QStringLiteral("0 m"),
            .from = QStringLiteral("1 March"),
            .to = QStringLiteral("9 March")};
}

Canvas drawn(const LotCurve& curve) {
    const NoWarnings quiet;
    Canvas canvas(400, 160);
    canvas.draw([&](QPainter& painter) { drawLotCurve(painter, QRectF(0, 0, 400, 160), curve); });
    return canvas;
}

TEST(LotCurveDrawing, FallsAsStringIsCut) {
    const Canvas full = drawn(life({{day(1), mm(200'000)}, {day(9), mm(200'000)}}));
    const Canvas cut = drawn(life({{day(1), mm(200'000)}, {day(5), mm(60'000)}, {day(9), mm(60'000)}}));
    const QRect right(320, 10, 60, 60);
    EXPECT_GT(full.inked(right), cut.inked(right)) << "nothing is left up there";
    const QRect left(120, 10, 60, 60);
    EXPECT_EQ(full.inked(left), cut.inked(left)) << "until then it was the same";
}

TEST(LotCurveDrawing, WhereItWasMeasuredIsMarked) {
    const auto steps = [](bool measured) {
        return life({{day(1), mm(200'000)}, {day(5), mm(150'000), measured}, {day(9), mm(120'000)}});
    };
    EXPECT_EQ(drawn(steps(false)).warm(QRect(0, 0, 400, 160)), 0);
    EXPECT_GT(drawn(steps(true)).warm(QRect(0, 0, 400, 160)), 0);
}

TEST(LotCurveDrawing, ALifeOfOneMomentAndNoneAtAll) {
    EXPECT_GT(drawn(life({{day(1), mm(200'000)}})).inked(QRect(0, 0, 400, 160)), 0);
    EXPECT_EQ(drawn(life({})).inked(QRect(0, 0, 400, 160)), 0);
    EXPECT_GT(drawn(life({{day(1), mm(250'000)}, {day(2), mm(250'000)}})).inked(QRect(0, 0, 400, 160)), 0)
        << "more than it should hold";
}

} // namespace
} // namespace rw::ui
