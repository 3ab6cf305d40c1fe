// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/paper_pen.h"

#include "ui/drawing/paper_text.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace rw::ui {

PaperPen::PaperPen(QPainter& painter, const Palette& palette)
    : m_painter(painter)
    , m_palette(palette) {}

double PaperPen::line(const QRectF& box, const QString& text, double height, const QColor& color, bool bold,
                      Qt::Alignment alignment) {
    const PaperText style{height, bold};
    const QString shown = style.elided(text, box.width());
    m_painter.setPen(color);
    style.draw(m_painter, box, alignment, shown);
    return style.width(shown);
}

double PaperPen::fitted(const QRectF& box, const QString& text, double height, const QColor& color, bool bold,
                        Qt::Alignment alignment) {
    const double width = PaperText{height, bold}.width(text);
    const double shrunk = width > box.width() ? height * box.width() / width : height;
    m_painter.setPen(color);
    PaperText{shrunk, bold}.draw(m_painter, box, alignment, text);
    return std::min(width, box.width());
}

double PaperPen::paragraph(const QRectF& column, const QString& text, double height, const QColor& color,
                           qsizetype most, bool bold) {
    const PaperText style{height, bold};
    double y = column.top();
    for (const QString& shown : style.wrapped(text, column.width(), most)) {
        if (y + style.lineStep() > column.bottom()) {
            break;
        }
        line({column.left(), y, column.width(), style.lineStep()}, shown, height, color, bold);
        y += style.lineStep();
    }
    return y;
}

void PaperPen::rule(double left, double right, double y) {
    m_painter.setPen(QPen(m_palette.rule, 0.35));
    m_painter.drawLine(QPointF(left, y), QPointF(right, y));
}

void PaperPen::checkBox(const QRectF& box, bool done) {
    m_painter.setPen(QPen(m_palette.ink, 0.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(box);
    if (done) {
        tick(box, 1.1);
    }
}

void PaperPen::tick(const QRectF& box, double thickness) {
    m_painter.setPen(QPen(m_palette.ink, thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF knee(box.left() + box.width() * 0.42, box.bottom() - box.height() * 0.2);
    m_painter.drawLine(QPointF(box.left() + box.width() * 0.18, box.center().y()), knee);
    m_painter.drawLine(knee, QPointF(box.right() - box.width() * 0.12, box.top() + box.height() * 0.18));
}

void PaperPen::warningMark(const QRectF& box) {
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_palette.accent);
    const QPointF corners[] = {{box.center().x(), box.top()}, box.bottomRight(), box.bottomLeft()};
    m_painter.drawPolygon(corners, 3);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(m_palette.onAccent);
    PaperText{box.height() * 0.72, true}.draw(m_painter, box.adjusted(0, box.height() * 0.14, 0, 0), Qt::AlignCenter,
                                              QStringLiteral("!"));
}

void PaperPen::code(const QRectF& box, const TagCode& code) {
    const double side = std::min(box.width(), box.height());
    const QRectF ground(box.center() - QPointF(side, side) / 2, QSizeF(side, side));
    const double module = side / (code.modules() + 2 * TagCode::kQuietZone);
    const QPointF corner = ground.topLeft() + QPointF(module, module) * TagCode::kQuietZone;
    // One path, so that nothing shines through between two modules that touch.
    QPainterPath dark;
    dark.setFillRule(Qt::WindingFill);
    for (int row = 0; row < code.modules(); ++row) {
        for (int from = 0; from < code.modules();) {
            int to = from;
            while (to < code.modules() && code.isDark(to, row)) {
                ++to;
            }
            if (to > from) {
                dark.addRect(QRectF(corner + QPointF(from, row) * module, QSizeF((to - from) * module, module)));
            }
            from = to + 1;
        }
    }
    m_painter.save();
    // A printer has no grey to soften an edge with.
    m_painter.setRenderHint(QPainter::Antialiasing, false);
    m_painter.fillRect(ground, Qt::white);
    m_painter.fillPath(dark, Qt::black);
    m_painter.restore();
}

} // namespace rw::ui
