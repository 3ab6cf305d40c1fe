// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"
#include "ui/drawing/palette.h"

#include <QRectF>

#include <optional>

class QPainter;

namespace rw::ui {

/// What a reel holds.
struct ReelFill {
    Length nominal;               ///< when new; positive
    Length left;                  ///< by the book, >= 0
    Length promised;              ///< planned on it, >= 0
    std::optional<Length> perJob; ///< notches, one a whole job
};

/// Draws a reel seen from the side into `area`: the winding is as thick as its share of a new reel, and as much of its
/// width as is promised leans the other way in the accent colour, with a notch where each whole job ends. A promise
/// beyond what is left is shown by an open edge. Draws no background. Leaves the painter as it was.
void drawReel(QPainter& painter, const QRectF& area, const ReelFill& fill, const Palette& palette = Palette::light());

} // namespace rw::ui
