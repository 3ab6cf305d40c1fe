// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QPainter;

namespace rw::ui {

/// How many dots of a usual screen (96 to the inch) one unit of the painter is now, whatever it paints on: what a hair
/// line and the smallest gap must be measured by.
[[nodiscard]] double dotsPerUnit(const QPainter& painter);

} // namespace rw::ui
