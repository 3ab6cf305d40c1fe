// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/head_drawing.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_plans.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

constexpr int kWide = 440;
constexpr int kHigh = 520;

Canvas drawn(const length::CutPlan& plan, HeadDetail detail = HeadDetail::Card,
             const Palette& palette = Palette::light(), QRectF area = QRectF(0, 0, kWide, kHigh)) {
    const NoWarnings quiet;
    Canvas canvas(kWide, kHigh, palette);
    canvas.draw([&](QPainter& painter) { drawHead(painter, area, plan, {detail, palette}); });
    return canvas;
}

TEST(HeadDrawing, EveryDetailAndPaletteDrawsWithoutAWarning) {
    for (const length::CutPlan& plan : {samples::twoPieces(), samples::onePiece(Side::Left),
                                        samples::wrapFirst(Side::Right), samples::squash(Side::Left)}) {
        for (const HeadDetail detail : {HeadDetail::Thumbnail, HeadDetail::Card, HeadDetail::Page}) {
            for (const Palette& palette : {Palette::light(), Palette::dark()}) {
                const Canvas canvas = drawn(plan, detail, palette);
                EXPECT_GT(canvas.inked(canvas.all()), 4000);
            }
        }
    }
}

TEST(HeadDrawing, ShowsOnWhichSideTheShortSideIs) {
    const Canvas left = drawn(samples::onePiece(Side::Left));
    const Canvas right = drawn(samples::onePiece(Side::Right));
    EXPECT_NE(left.image(), right.image());
    // The short side's mains are the warm ones: most of the warm dots lie on its side of the bed.
    const QRect leftHalf(kWide / 4, kHigh / 3, kWide / 4, kHigh / 3);
    const QRect rightHalf = leftHalf.translated(kWide / 4, 0);
    EXPECT_GT(left.warm(leftHalf), 20 * (left.warm(rightHalf) + 1));
    EXPECT_GT(right.warm(rightHalf), 20 * (right.warm(leftHalf) + 1));
}

TEST(HeadDrawing, TwoPiecesNeedNoColour) {
    const Canvas canvas = drawn(samples::twoPieces());
    EXPECT_EQ(canvas.warm(canvas.all()), 0);
}

// Inside the hoop at either end of the middle mains: an arrow's head lies only where they start.
TEST(HeadDrawing, ShowsWhereTheMiddleMainsStart) {
    const QRect atHead(204, 82, 32, 16);
    const QRect atThroat(204, 424, 32, 16);
    samples::Head frame;
    frame.mainsStart = HoopEnd::Head;
    const Canvas fromHead = drawn(samples::twoPieces(frame));
    frame.mainsStart = HoopEnd::Throat;
    const Canvas fromThroat = drawn(samples::twoPieces(frame));
    EXPECT_GT(fromHead.inked(atHead), fromThroat.inked(atHead) + 30);
    EXPECT_GT(fromThroat.inked(atThroat), fromHead.inked(atThroat) + 30);
}

TEST(HeadDrawing, StaysInItsArea) {
    const QRect inside(60, 40, 300, 400);
    for (const HeadDetail detail : {HeadDetail::Thumbnail, HeadDetail::Card, HeadDetail::Page}) {
        for (const length::CutPlan& plan : {samples::twoPieces(), samples::onePiece(Side::Left),
                                            samples::wrapFirst(Side::Right), samples::squash(Side::Left)}) {
            const Canvas canvas = drawn(plan, detail, Palette::light(), inside);
            const int all = canvas.inked(canvas.all());
            EXPECT_EQ(all, canvas.inked(inside));
        }
    }
}

TEST(HeadDrawing, LeavesThePainterAsItWas) {
    Canvas canvas(kWide, kHigh);
    canvas.draw([&](QPainter& painter) {
        painter.setPen(Qt::green);
        const QTransform before = painter.transform();
        drawHead(painter, QRectF(0, 0, kWide, kHigh), samples::twoPieces());
        EXPECT_EQ(painter.pen().color(), QColor(Qt::green));
        EXPECT_EQ(painter.transform(), before);
    });
}

TEST(HeadDrawing, AnEmptyAreaIsLeftAlone) {
    const Canvas canvas = drawn(samples::twoPieces(), HeadDetail::Card, Palette::light(), QRectF(10, 10, 0, 50));
    EXPECT_EQ(canvas.inked(canvas.all()), 0);
}

TEST(HeadDrawing, IsDescribedInWords) {
    EXPECT_EQ(headDescription(samples::onePiece(Side::Left)).toStdString(),
              "The head of the frame with 16 mains and 19 crosses, one piece, one top cross on the short side. "
              "Short side, left: mains 1–8, then cross 1; tied off at the head, right. "
              "Long side, right: mains 1–8, then crosses 2–19; tied off at the throat, right.");
}

} // namespace
} // namespace rw::ui
