// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/packet_drawing.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cassert>

namespace rw::ui {

namespace {
constexpr double kWidth = 78; ///< of a packet; its height is an eighth of that
constexpr double kThick = 9;
constexpr double kAsHigh = kThick * kMostDrawn;

/// Fits a drawing of that size into the middle of `area`, standing on its foot.
void fit(QPainter& painter, const QRectF& area, double width, double height) {
    const double scale = std::min(area.width() / width, area.height() / height);
    painter.translate(area.center().x(), area.bottom());
    painter.scale(scale, scale);
    painter.setRenderHint(QPainter::Antialiasing);
}
} // namespace

void drawPackets(QPainter& painter, const QRectF& area, int packets, int promised, const Palette& palette) {
    assert(packets >= 1 && promised >= 0 && promised <= packets);
    if (area.isEmpty()) {
        return;
    }
    painter.save();
    fit(painter, area, kWidth, kAsHigh);
    const int drawn = std::min(packets, kMostDrawn);
    for (int i = 0; i < drawn; ++i) {
        // The lowest lies deepest; what is promised lies on top of the pile.
        const bool taken = drawn - i <= std::min(promised, drawn);
        const double aside = i % 2 == 0 ? -1.5 : 1.5;
        const QRectF packet(-kWidth / 2 + aside, -kThick * (i + 1), kWidth, kThick - 1.2);
        painter.setPen(QPen(taken ? palette.accent : palette.ink, taken ? 1.5 : 1.1));
        painter.setBrush(palette.paper);
        painter.drawRoundedRect(packet, 2, 2);
        painter.setBrush(taken ? QBrush(palette.accent, Qt::BDiagPattern) : QBrush(palette.shade));
        painter.drawRoundedRect(packet, 2, 2);
    }
    painter.restore();
}

void drawCoil(QPainter& painter, const QRectF& area, bool promised, const Palette& palette) {
    if (area.isEmpty()) {
        return;
    }
    constexpr double kRadius = 34;
    painter.save();
    fit(painter, area, 2 * kRadius + 24, 2 * kRadius + 4);
    painter.setPen(QPen(promised ? palette.accent : palette.ink, 1.5, promised ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(Qt::NoBrush);
    const QPointF middle(0, -kRadius - 2);
    for (const double radius : {kRadius, kRadius - 3.5, kRadius - 7}) {
        painter.drawEllipse(middle, radius, radius * 0.86);
    }
    QPainterPath ends(middle + QPointF(kRadius - 7, 4));
    ends.quadTo(middle + QPointF(kRadius + 2, 22), middle + QPointF(kRadius + 11, 26));
    ends.moveTo(middle + QPointF(kRadius, -4));
    ends.quadTo(middle + QPointF(kRadius + 4, 12), middle + QPointF(kRadius + 11, 15));
    painter.drawPath(ends);
    painter.restore();
}

} // namespace rw::ui
