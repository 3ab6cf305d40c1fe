// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/dots.h"

#include <QPaintDevice>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rw::ui {

double dotsPerUnit(const QPainter& painter) {
    constexpr double kUsualDotsToTheInch = 96;
    const double inDevice = std::sqrt(std::abs(painter.worldTransform().determinant()));
    const QPaintDevice* device = painter.device();
    const double toTheInch = device == nullptr ? kUsualDotsToTheInch : std::max(1, device->logicalDpiX());
    return std::max(1e-6, inDevice * kUsualDotsToTheInch / toTheInch);
}

} // namespace rw::ui
