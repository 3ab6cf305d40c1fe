// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "ui/drawing/palette.h"

#include <QRectF>

class QPainter;

namespace rw::ui {

/// How much is drawn: a thumbnail has strings and ends; a card adds the weave, numbers and words; a page adds
/// every string's number and a key.
enum class HeadDetail { Thumbnail, Card, Page };

struct HeadDrawing {
    HeadDetail detail = HeadDetail::Card;
    Palette palette = Palette::light();
};

/// Draws the head of the frame to scale into `area`, centred, head up, as it lies on the machine: the hoop, every
/// string of the plan and the runs outside between them. One line style a piece (the second piece, or the short side
/// of one piece, is drawn hollow), a ring where a piece starts, a flag where it is tied off, an arrow's head on the first
/// string of each arm and where it turns from mains to crosses. Draws no background. Leaves the painter as it was.
void drawHead(QPainter& painter, const QRectF& area, const length::CutPlan& plan, const HeadDrawing& how = {});

/// The picture in words, for people who do not see it.
[[nodiscard]] QString headDescription(const length::CutPlan& plan);

} // namespace rw::ui
