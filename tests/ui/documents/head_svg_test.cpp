// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/head_svg.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_plans.h"

#include <QSvgRenderer>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

TEST(HeadSvg, CanBeShown) {
    const NoWarnings quiet;
    for (const length::CutPlan& plan : {samples::twoPieces(), samples::onePiece(Side::Left),
                                        samples::wrapFirst(Side::Right), samples::squash(Side::Left)}) {
        QSvgRenderer renderer(headSvg(plan));
        ASSERT_TRUE(renderer.isValid());
        Canvas canvas(renderer.defaultSize().width(), renderer.defaultSize().height(), Palette::print());
        canvas.draw([&](QPainter& painter) { renderer.render(&painter); });
        EXPECT_GT(canvas.inked(canvas.all()), canvas.all().width() * canvas.all().height() / 20);
    }
}

TEST(HeadSvg, SaysInWordsWhatItShows) {
    const QByteArray svg = headSvg(samples::onePiece(Side::Left));
    EXPECT_TRUE(svg.contains("<title>one piece, one top cross on the short side</title>"));
    EXPECT_TRUE(svg.contains("Short side, left: mains 1"));
    EXPECT_TRUE(svg.contains(">X10<"));
}

TEST(HeadSvg, IsTheSameTextForTheSamePlan) {
    EXPECT_EQ(headSvg(samples::twoPieces()), headSvg(samples::twoPieces()));
    EXPECT_NE(headSvg(samples::twoPieces()), headSvg(samples::onePiece(Side::Left)));
}

} // namespace
} // namespace rw::ui
