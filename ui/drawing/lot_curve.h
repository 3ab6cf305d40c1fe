// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/units/length.h"
#include "ui/drawing/palette.h"

#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace rw::ui {

/// A lot's length over its life.
struct LotCurve {
    struct Step {
        Instant at;
        Length left;           ///< after it, >= 0
        bool measured = false; ///< by tape or scale: told by a mark, so that a corrected book is seen
    };
    std::vector<Step> steps; ///< oldest first
    Length nominal;          ///< positive
    QString top;             ///< beside the nominal length: "200 m"
    QString bottom;          ///< beside nothing: "0 m"
    QString from;            ///< below the first step: "12 March"
    QString to;              ///< below the last
    double textHeight = 13;  ///< in the painter's units
};

/// Draws the curve into `area` as a stair, because a length changes at a moment and stays until the next: ink for what
/// was left, a square where it was measured, a hairline at the nominal length. Nothing for no step. Draws no
/// background. Leaves the painter as it was.
void drawLotCurve(QPainter& painter, const QRectF& area, const LotCurve& curve,
                  const Palette& palette = Palette::light());

} // namespace rw::ui
