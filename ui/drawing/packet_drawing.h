// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/drawing/palette.h"

#include <QRectF>

class QPainter;

namespace rw::ui {

/// Draws a pile of packets seen from the front into `area`, at most `kMostDrawn` of them; how many there are stands in
/// words beside it. Promised ones lie on top in the accent colour, hatched, so that they differ in shape too. Draws no
/// background. Leaves the painter as it was. `packets` >= 1, 0 <= `promised` <= `packets`.
constexpr int kMostDrawn = 8;
void drawPackets(QPainter& painter, const QRectF& area, int packets, int promised,
                 const Palette& palette = Palette::light());

/// Draws a coil of string, for what is on no reel any more: a remnant, an opened packet. The same for every length.
void drawCoil(QPainter& painter, const QRectF& area, bool promised, const Palette& palette = Palette::light());

} // namespace rw::ui
