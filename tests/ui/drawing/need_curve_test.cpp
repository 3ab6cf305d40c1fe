// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/need_curve.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"

#include <gtest/gtest.h>

#include <limits>

namespace rw::ui {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
Instant day(int number) { return Instant(std::chrono::days(number)); }

NeedCurve curve(std::vector<NeedCurve::Job> jobs) {
    return {.jobs = std::move(jobs),
            .predicted = 6000,
            .top = QStringLiteral("6.3 m"),
            .bottom = QStringLiteral("5.7 m"),
            .from = QStringLiteral("1 March"),
            .to = QStringLiteral("9 March")};
}
NeedCurve::Job job(int at, double low, double high) { return {day(at), low, high, 5900, 150}; }

Canvas drawn(const NeedCurve& curve) {
    const NoWarnings quiet;
    Canvas canvas(400, 160);
    canvas.draw([&](QPainter& painter) { drawNeedCurve(painter, QRectF(0, 0, 400, 160), curve); });
    return canvas;
}

TEST(NeedCurve, HoldsEverythingThatIsDrawnToATenthOfAMetre) {
    const NeedRange range = needCurveRange(curve({job(1, 5880, 5880), job(2, 0, 6220), job(3, 6340, kInfinity)}));
    EXPECT_EQ(range.low, 5700) << "5.9 m less the band, rounded down";
    EXPECT_EQ(range.high, 6400) << "what came short, rounded up";
}

TEST(NeedCurve, WhatWasMeasuredAndWhatCameShortIsWarm) {
    const Canvas enough = drawn(curve({job(1, 0, 6100), job(9, 0, 6100)}));
    EXPECT_EQ(enough.warm(enough.all()), 0);
    EXPECT_GT(enough.inked(enough.all()), 0);
    for (const NeedCurve::Job& told : {job(5, 5900, 5900), job(5, 5800, 6000), job(5, 6100, kInfinity)}) {
        const Canvas some = drawn(curve({job(1, 0, 6100), told, job(9, 0, 6100)}));
        EXPECT_GT(some.warm(some.all()), 0);
    }
}

TEST(NeedCurve, OfNoJobIsNothingAndOfOneMomentStandsSideBySide) {
    const Canvas none = drawn(curve({}));
    EXPECT_EQ(none.inked(none.all()), 0);
    const Canvas both = drawn(curve({job(1, 5900, 5900), job(1, 5900, 5900)}));
    const Canvas one = drawn(curve({job(1, 5900, 5900)}));
    EXPECT_GT(both.warm(both.all()), one.warm(one.all()));
}

} // namespace
} // namespace rw::ui
