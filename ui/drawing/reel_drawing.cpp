// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/reel_drawing.h"

#include "ui/drawing/dots.h"

#include <QPainter>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rw::ui {

namespace {
// The reel's own measures, with a height of 100: a flange at each end, a core that stays when all is cut.
constexpr double kHeight = 100;
constexpr double kWidth = 132;
constexpr double kFlange = 8;
constexpr double kCore = 9;   // half its thickness
constexpr double kFull = 44;  // half the thickness of a full winding
constexpr double kTurn = 4.2; // from one turn of string to the next

class ReelPainter {
public:
    ReelPainter(QPainter& painter, const QRectF& area, const ReelFill& fill, const Palette& palette)
        : m_painter(painter)
        , m_fill(fill)
        , m_palette(palette) {
        const double scale = std::min(area.width() / kWidth, area.height() / kHeight);
        painter.translate(area.center());
        painter.scale(scale, scale);
        m_dots = dotsPerUnit(painter);
        painter.setRenderHint(QPainter::Antialiasing);
    }

    void draw() {
        drawOutlineOfFull();
        drawCore();
        if (m_fill.left.isPositive()) {
            drawWinding();
            drawNotches();
        }
        drawFlanges();
        if (m_fill.promised > m_fill.left) {
            drawOpenEdge();
        }
    }

private:
    [[nodiscard]] double pen(double width, double dots) const { return std::max(width, dots / m_dots); }

    /// How far a winding of this length stands from the axis. Straight in the length, not in its volume: two reels are
    /// compared by eye, and half as thick must mean half as long.
    [[nodiscard]] double reachOf(Length length) const {
        const double share = std::clamp(length.metres() / m_fill.nominal.metres(), 0.0, 1.0);
        return kCore + share * (kFull - kCore);
    }

    [[nodiscard]] static QRectF band(double reach) {
        const double half = kWidth / 2 - kFlange;
        return {-half, -reach, 2 * half, 2 * reach};
    }

    void setPen(const QColor& color, double width, Qt::PenStyle style = Qt::SolidLine) {
        m_painter.setPen(QPen(color, width, style, Qt::FlatCap, Qt::RoundJoin));
        m_painter.setBrush(Qt::NoBrush);
    }

    void drawOutlineOfFull() {
        setPen(m_palette.rule, pen(0.8, 0.7), Qt::DotLine);
        m_painter.drawRect(band(kFull));
    }

    void drawCore() {
        setPen(m_palette.softInk, pen(1, 0.7));
        m_painter.setBrush(m_palette.shade);
        m_painter.drawRect(band(kCore));
    }

    /// The winding is as thick as what is left. Its right part, as wide as its share, is promised: drawn in the accent
    /// colour and leaning the other way, so that it differs in shape too.
    void drawWinding() {
        const QRectF all = band(reachOf(m_fill.left));
        const double share = std::clamp(m_fill.promised.metres() / m_fill.left.metres(), 0.0, 1.0);
        QRectF free = all;
        free.setWidth(all.width() * (1 - share));
        QRectF promised = all;
        promised.setLeft(free.right());
        m_painter.fillRect(all, m_palette.paper);
        drawTurns(free, m_palette.ink, 3);
        drawTurns(promised, m_palette.accent, -7);
        setPen(m_palette.ink, pen(1.2, 0.9));
        m_painter.drawRect(all);
        if (share > 0) {
            setPen(m_palette.accent, pen(1.6, 1.1));
            m_painter.drawRect(promised);
        }
    }

    void drawTurns(const QRectF& where, const QColor& color, double lean) {
        if (where.width() <= 0) {
            return;
        }
        m_painter.save();
        m_painter.setClipRect(where, Qt::IntersectClip);
        setPen(color, pen(0.8, 0.6));
        // Too small a picture for single turns is read as a tone: keep the lines a few dots apart.
        const double turn = std::max(kTurn, 2.6 / m_dots);
        const double sway = lean * where.height() / kHeight;
        for (double x = where.left() - std::abs(sway); x < where.right() + std::abs(sway); x += turn) {
            m_painter.drawLine(QPointF(x, where.bottom()), QPointF(x + sway, where.top()));
        }
        m_painter.restore();
    }

    /// A notch over the winding where each whole job ends; what lies behind the last one is too short for another.
    void drawNotches() {
        if (!m_fill.perJob || !m_fill.perJob->isPositive()) {
            return;
        }
        const QRectF all = band(reachOf(m_fill.left));
        const double step = all.width() * m_fill.perJob->metres() / m_fill.left.metres();
        if (step * m_dots < 3) {
            return;
        }
        setPen(m_palette.ink, pen(1.4, 1));
        const std::int64_t jobs = m_fill.left.wholeTimes(*m_fill.perJob);
        for (std::int64_t i = 1; i <= jobs; ++i) {
            const double x = all.left() + step * static_cast<double>(i);
            m_painter.drawLine(QPointF(x, all.top()), QPointF(x, all.top() - 6));
        }
    }

    void drawFlanges() {
        setPen(m_palette.ink, pen(1.2, 0.9));
        m_painter.setBrush(m_palette.shade);
        for (const double x : {-kWidth / 2, kWidth / 2 - kFlange}) {
            m_painter.drawRoundedRect(QRectF(x, -kHeight / 2 + 1, kFlange, kHeight - 2), 3, 3);
        }
    }

    /// More is promised than there is: the winding's edge is broken towards what is missing.
    void drawOpenEdge() {
        const double half = kWidth / 2 - kFlange;
        const double missing =
            reachOf(Length::fromMillimetres(std::min(m_fill.promised, m_fill.nominal).millimetres()));
        const double to = std::max(missing, reachOf(m_fill.left) + 6);
        setPen(m_palette.accent, pen(1.6, 1.1), Qt::DashLine);
        m_painter.drawLine(QPointF(-half, -to), QPointF(half, -to));
        m_painter.drawLine(QPointF(-half, to), QPointF(half, to));
    }

    QPainter& m_painter;
    const ReelFill& m_fill;
    const Palette& m_palette;
    double m_dots = 1; ///< of a usual screen, for one of the reel's own units
};
} // namespace

void drawReel(QPainter& painter, const QRectF& area, const ReelFill& fill, const Palette& palette) {
    assert(fill.nominal.isPositive());
    if (area.isEmpty()) {
        return;
    }
    painter.save();
    ReelPainter(painter, area, fill, palette).draw();
    painter.restore();
}

} // namespace rw::ui
