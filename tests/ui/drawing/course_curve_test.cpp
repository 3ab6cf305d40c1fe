// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/course_curve.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

/// Ten jobs, one every `days` days, sooner or later by a half.
CourseCurve course(int jobs, double days, double orderPoint) {
    CourseCurve curve{.jobsLeft = jobs,
                      .steps = {},
                      .orderPoint = orderPoint,
                      .top = QStringLiteral("10 jobs"),
                      .bottom = QStringLiteral("none"),
                      .order = QStringLiteral("order point"),
                      .from = QStringLiteral("today"),
                      .early = QStringLiteral("2 May"),
                      .likely = QStringLiteral("20 May")};
    for (int job = 1; job <= jobs + 1; ++job) {
        curve.steps.push_back({jobs - job, job * days / 2, job * days, job * days * 1.5});
    }
    return curve;
}

Canvas drawn(const CourseCurve& curve) {
    const NoWarnings quiet;
    Canvas canvas(500, 160);
    canvas.draw([&](QPainter& painter) { drawCourseCurve(painter, QRectF(0, 0, 500, 160), curve); });
    return canvas;
}

TEST(CourseCurve, GoesDownFromTodayOn) {
    const Canvas canvas = drawn(course(10, 3, 2.5));
    EXPECT_GT(canvas.inked(QRect(70, 0, 40, 40)), 0) << "all are there today";
    EXPECT_EQ(canvas.inked(QRect(400, 0, 90, 60)), 0) << "and none is left up there at the end";
}

TEST(CourseCurve, TheBandIsAsWideAsTheDoubt) {
    CourseCurve sure = course(10, 3, 2.5);
    for (stock::StockStep& step : sure.steps) {
        step.early = 0.95 * step.likely;
    }
    const QRect whole(0, 0, 500, 125);
    EXPECT_LT(drawn(sure).inked(whole), drawn(course(10, 3, 2.5)).inked(whole));
}

TEST(CourseCurve, TheOrderPointIsTheOnlyWarmLineAndStandsWhereItIs) {
    const Canvas low = drawn(course(10, 3, 2.5));
    EXPECT_EQ(low.warm(QRect(0, 0, 500, 60)), 0);
    EXPECT_GT(low.warm(QRect(0, 60, 500, 80)), 0);
    const Canvas high = drawn(course(10, 3, 8.5));
    EXPECT_GT(high.warm(QRect(0, 0, 500, 60)), 0);
    EXPECT_EQ(high.warm(QRect(0, 60, 500, 80)), 0);
    EXPECT_GT(drawn(course(1, 3, 8.5)).warm(QRect(0, 0, 500, 60)), 0) << "above what is left";
}

TEST(CourseCurve, TimeGoesOnUntilItIsOutButNotForYears) {
    EXPECT_DOUBLE_EQ(daysShown(course(10, 3, 2.5)), 11 * 3 * 1.5);
    CourseCurve slow = course(1, 20, 1);
    slow.steps.back().late = 4000;
    EXPECT_DOUBLE_EQ(daysShown(slow), 80);
    EXPECT_DOUBLE_EQ(daysShown(course(0, 0.1, 1)), 7) << "a week at least";
}

TEST(CourseCurve, NoStepAndNoDayDrawNothingOfIt) {
    EXPECT_EQ(drawn({}).inked(QRect(0, 0, 500, 160)), 0);
    CourseCurve undated = course(3, 3, 2.5);
    undated.likely.clear();
    undated.early.clear();
    const QRect flags(100, 138, 390, 6);
    EXPECT_EQ(drawn(undated).inked(flags), 0);
    EXPECT_GT(drawn(course(3, 3, 2.5)).inked(flags), 0);
}

} // namespace
} // namespace rw::ui
