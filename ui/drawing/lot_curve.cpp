// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/lot_curve.h"

#include "ui/drawing/curve_words.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cassert>

namespace rw::ui {

namespace {
constexpr double kMark = 3.5; ///< half a measured square

class CurvePainter {
public:
    CurvePainter(QPainter& painter, const QRectF& area, const LotCurve& curve, const Palette& palette)
        : m_painter(painter)
        , m_curve(curve)
        , m_palette(palette)
        , m_text{.height = curve.textHeight} {
        m_field = curveField(area, m_text, curve.top, curve.bottom, kMark + 1);
        for (const LotCurve::Step& step : curve.steps) {
            m_most = std::max(m_most, step.left.metres());
        }
        painter.setRenderHint(QPainter::Antialiasing);
    }

    void draw() {
        drawFrame();
        drawStair();
        drawMeasured();
        drawWords();
    }

private:
    /// A life of a moment has all its steps at one time: they stand side by side then.
    [[nodiscard]] double x(std::size_t step) const {
        const auto first = m_curve.steps.front().at;
        const auto whole = (m_curve.steps.back().at - first).count();
        const double share =
            whole > 0 ? static_cast<double>((m_curve.steps[step].at - first).count()) / static_cast<double>(whole)
                      : static_cast<double>(step + 1) / static_cast<double>(m_curve.steps.size());
        return m_field.left() + share * m_field.width();
    }
    [[nodiscard]] double y(double metres) const {
        return m_field.bottom() - metres / std::max(m_most, m_curve.nominal.metres()) * m_field.height();
    }

    void drawFrame() {
        m_painter.setPen(QPen(m_palette.rule, 1));
        m_painter.drawLine(m_field.bottomLeft(), m_field.bottomRight());
        m_painter.setPen(QPen(m_palette.rule, 1, Qt::DotLine));
        const double nominal = y(m_curve.nominal.metres());
        m_painter.drawLine(QPointF(m_field.left(), nominal), QPointF(m_field.right(), nominal));
    }

    void drawStair() {
        QPainterPath stair(QPointF(x(0), m_field.bottom()));
        stair.lineTo(x(0), y(m_curve.steps.front().left.metres()));
        for (std::size_t i = 1; i < m_curve.steps.size(); ++i) {
            stair.lineTo(x(i), y(m_curve.steps[i - 1].left.metres()));
            stair.lineTo(x(i), y(m_curve.steps[i].left.metres()));
        }
        QPainterPath filled = stair;
        filled.lineTo(x(m_curve.steps.size() - 1), m_field.bottom());
        filled.closeSubpath();
        m_painter.fillPath(filled, m_palette.shade);
        m_painter.strokePath(stair, QPen(m_palette.ink, 1.8, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    }

    void drawMeasured() {
        m_painter.setPen(QPen(m_palette.accent, 1.6));
        m_painter.setBrush(m_palette.paper);
        for (std::size_t i = 0; i < m_curve.steps.size(); ++i) {
            if (m_curve.steps[i].measured) {
                const QPointF at(x(i), y(m_curve.steps[i].left.metres()));
                m_painter.drawRect(QRectF(at - QPointF(kMark, kMark), QSizeF(2 * kMark, 2 * kMark)));
            }
        }
    }

    void drawWords() {
        m_painter.setPen(m_palette.softInk);
        drawBesideCurve(m_painter, m_text, m_field, y(m_curve.nominal.metres()), m_curve.top);
        drawBesideCurve(m_painter, m_text, m_field, m_field.bottom(), m_curve.bottom);
        drawBelowCurve(m_painter, m_text, m_field, m_curve.from, m_curve.to);
    }

    QPainter& m_painter;
    const LotCurve& m_curve;
    const Palette& m_palette;
    PaperText m_text;
    QRectF m_field;
    double m_most = 0;
};
} // namespace

void drawLotCurve(QPainter& painter, const QRectF& area, const LotCurve& curve, const Palette& palette) {
    assert(curve.nominal.isPositive());
    if (curve.steps.empty() || area.isEmpty()) {
        return;
    }
    painter.save();
    CurvePainter(painter, area, curve, palette).draw();
    painter.restore();
}

} // namespace rw::ui
