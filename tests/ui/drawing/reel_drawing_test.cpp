// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/reel_drawing.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

Canvas drawn(std::int64_t left, std::int64_t promised, std::optional<Length> perJob = std::nullopt) {
    const NoWarnings quiet;
    Canvas canvas(264, 200);
    canvas.draw([&](QPainter& painter) {
        drawReel(painter, QRectF(0, 0, 264, 200), {mm(200000), mm(left), mm(promised), perJob});
    });
    return canvas;
}

TEST(ReelDrawing, IsThickerTheMoreIsLeft) {
    int before = -1;
    for (const std::int64_t left : {20000, 60000, 120000, 200000}) {
        const Canvas canvas = drawn(left, 0);
        const int ink = canvas.inked(canvas.all());
        EXPECT_GT(ink, before) << left;
        before = ink;
    }
}

TEST(ReelDrawing, ThePromisedShareIsWarmAndOnTheRight) {
    EXPECT_EQ(drawn(100000, 0).warm(QRect(0, 0, 264, 200)), 0);
    const Canvas half = drawn(100000, 50000);
    EXPECT_EQ(half.warm(QRect(0, 0, 126, 200)), 0);
    EXPECT_GT(half.warm(QRect(132, 0, 132, 200)), 300);
    EXPECT_GT(drawn(100000, 90000).warm(QRect(0, 0, 264, 200)), half.warm(QRect(0, 0, 264, 200)));
}

TEST(ReelDrawing, APromiseBeyondWhatIsLeftShows) {
    const Canvas even = drawn(10000, 10000);
    const Canvas beyond = drawn(10000, 60000);
    EXPECT_NE(even.image(), beyond.image());
    EXPECT_GT(beyond.warm(beyond.all()), even.warm(even.all()));
    const Canvas nothing = drawn(0, 10000);
    EXPECT_GT(nothing.warm(nothing.all()), 0);
}

TEST(ReelDrawing, WholeJobsAreNotched) {
    EXPECT_NE(drawn(48700, 0).image(), drawn(48700, 0, mm(10800)).image());
    // Less than one job has no notch.
    EXPECT_EQ(drawn(9000, 0).image(), drawn(9000, 0, mm(10800)).image());
}

} // namespace
} // namespace rw::ui
