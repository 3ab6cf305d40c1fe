// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "ui/drawing/palette.h"

#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace rw::ui {

/// What a frame needed from job to job, and what was expected of the next one meanwhile. Lengths in millimetres.
struct NeedCurve {
    struct Job {
        Instant at;
        double low;     ///< its need lay from here; 0 or less: nobody knows from where
        double high;    ///< to here; infinite: it came short of `low`
        double learned; ///< what was expected once this job was known
        double spread;  ///< two of its standard deviations
    };
    std::vector<Job> jobs;  ///< oldest first
    double predicted;       ///< by the head's measurements alone
    QString top;            ///< beside the highest length drawn; the curve says which, see needCurveRange
    QString bottom;         ///< beside the lowest
    QString from;           ///< below the first job: "12 March"
    QString to;             ///< below the last
    double textHeight = 13; ///< in the painter's units
};

struct NeedRange {
    double low;
    double high;
};
/// From where to where the lengths of a curve are drawn. Precondition: a job.
[[nodiscard]] NeedRange needCurveRange(const NeedCurve& curve);

/// Draws the curve into `area`: a dot where the tails were measured, a bar where they were told in words, a hook that
/// hangs from the cut where it was enough, a triangle upon the cut where it came short; the line is what was expected
/// next, with its band, and the hairline what the head's measurements say. Nothing for no job. Draws no background.
/// Leaves the painter as it was.
void drawNeedCurve(QPainter& painter, const QRectF& area, const NeedCurve& curve,
                   const Palette& palette = Palette::light());

} // namespace rw::ui
