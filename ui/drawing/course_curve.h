// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/run_out.h"
#include "ui/drawing/palette.h"

#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace rw::ui {

/// A string's stock in whole jobs, from today on.
struct CourseCurve {
    int jobsLeft = 0;                    ///< today
    std::vector<stock::StockStep> steps; ///< as stock::stockCourse() gives them
    double orderPoint = 1;               ///< in jobs; positive
    QString top;                         ///< beside the jobs that are left today: "12 jobs"
    QString bottom;                      ///< beside none
    QString order;                       ///< at the line of the order point: "order at 5 jobs"
    QString from;                        ///< below today
    QString early;                       ///< below the day on which it could be out; "": no such day
    QString likely;                      ///< below the day on which it is likely out
    double textHeight = 13;              ///< in the painter's units
};

/// Draws the stock into `area` as a stair going down: the likely one in ink, between the early and the late one (8 in
/// 10 times it goes in there) a shade with hatching, so that it is seen without colour too; a dotted line at the order
/// point; a flag where it could be, and where it likely is, out. Time goes on for as long as it is worth looking.
/// Nothing for no step. Draws no background. Leaves the painter as it was.
void drawCourseCurve(QPainter& painter, const QRectF& area, const CourseCurve& curve,
                     const Palette& palette = Palette::light());

/// How many days the drawing shows: until it is surely out, but no longer than it takes to show the likely day at half.
[[nodiscard]] double daysShown(const CourseCurve& curve);

} // namespace rw::ui
