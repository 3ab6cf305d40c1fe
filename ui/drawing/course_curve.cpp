// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/course_curve.h"

#include "ui/drawing/curve_words.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cassert>

namespace rw::ui {

namespace {
constexpr double kFlag = 7; ///< half its foot
constexpr double kLeastDays = 7;
constexpr double kMostTimesLikely = 2;

using Day = double stock::StockStep::*;

class CoursePainter {
public:
    CoursePainter(QPainter& painter, const QRectF& area, const CourseCurve& curve, const Palette& palette)
        : m_painter(painter)
        , m_curve(curve)
        , m_palette(palette)
        , m_text{.height = curve.textHeight}
        , m_days(daysShown(curve))
        , m_most(std::max(static_cast<double>(curve.jobsLeft), curve.orderPoint)) {
        m_field = curveField(area, m_text, curve.top, curve.bottom, 1);
        painter.setRenderHint(QPainter::Antialiasing);
    }

    void draw() {
        drawBand();
        drawFrame();
        m_painter.strokePath(stair(&stock::StockStep::likely),
                             QPen(m_palette.ink, 1.8, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        drawFlag(m_curve.steps.back().early, m_curve.early, false);
        drawFlag(m_curve.steps.back().likely, m_curve.likely, true);
        drawWords();
    }

private:
    [[nodiscard]] double x(double day) const {
        return m_field.left() + std::clamp(day / m_days, 0.0, 1.0) * m_field.width();
    }
    [[nodiscard]] double y(double jobs) const {
        return m_field.bottom() - std::max(0.0, jobs) / m_most * m_field.height();
    }

    [[nodiscard]] QPainterPath stair(Day day) const {
        QPainterPath path(QPointF(x(0), y(m_curve.jobsLeft)));
        double left = m_curve.jobsLeft;
        for (const stock::StockStep& step : m_curve.steps) {
            path.lineTo(x(step.*day), y(left));
            left = step.left;
            path.lineTo(x(step.*day), y(left));
        }
        return path;
    }

    void drawBand() {
        QPainterPath band = stair(&stock::StockStep::late);
        band.lineTo(x(m_curve.steps.back().late), m_field.bottom());
        band.lineTo(x(m_curve.steps.back().early), m_field.bottom());
        band.connectPath(stair(&stock::StockStep::early).toReversed());
        band.closeSubpath();
        m_painter.fillPath(band, m_palette.shade);
        m_painter.fillPath(band, QBrush(m_palette.rule, Qt::BDiagPattern));
    }

    void drawFrame() {
        m_painter.setPen(QPen(m_palette.rule, 1));
        m_painter.drawLine(m_field.bottomLeft(), m_field.bottomRight());
        m_painter.setPen(QPen(m_palette.accent, 1.4, Qt::DotLine));
        m_painter.drawLine(QPointF(m_field.left(), y(m_curve.orderPoint)),
                           QPointF(m_field.right(), y(m_curve.orderPoint)));
    }

    /// A filled one for the likely day, an open one for the early one, its day on the side away from the other.
    void drawFlag(double day, const QString& words, bool filled) {
        if (words.isEmpty() || day > m_days) {
            return;
        }
        const QPointF foot(x(day), m_field.bottom());
        QPainterPath flag(foot);
        flag.lineTo(foot + QPointF(-kFlag, kFlag));
        flag.lineTo(foot + QPointF(kFlag, kFlag));
        flag.closeSubpath();
        m_painter.setPen(QPen(m_palette.ink, 1.2));
        m_painter.setBrush(filled ? m_palette.ink : m_palette.paper);
        m_painter.drawPath(flag);
        m_painter.setBrush(Qt::NoBrush);
        const double width = m_text.width(words);
        const double top = m_field.bottom() + kFlag + 1;
        const double from = filled ? std::min(foot.x() - kFlag, m_field.right() - width)
                                   : std::max(m_field.left() + todayWidth(), foot.x() + kFlag - width);
        // Two days that are close have no room for both: the likely one is said.
        if (!filled && from + width + kCurveGap > x(m_curve.steps.back().likely) - kFlag && !m_curve.likely.isEmpty()) {
            return;
        }
        m_painter.setPen(m_palette.ink);
        m_text.draw(m_painter, QRectF(from, top, width, m_text.lineStep()), Qt::AlignLeft | Qt::AlignVCenter, words);
        m_saidFrom = std::min(m_saidFrom, from);
    }

    [[nodiscard]] double todayWidth() const { return m_text.width(m_curve.from) + kCurveGap; }

    void drawWords() {
        m_painter.setPen(m_palette.softInk);
        if (m_curve.jobsLeft > 0) {
            drawBesideCurve(m_painter, m_text, m_field, y(m_curve.jobsLeft), m_curve.top);
        }
        drawBesideCurve(m_painter, m_text, m_field, m_field.bottom(), m_curve.bottom);
        if (m_field.left() + todayWidth() <= m_saidFrom) {
            m_text.draw(m_painter,
                        QRectF(m_field.left(), m_field.bottom() + kFlag + 1, m_field.width(), m_text.lineStep()),
                        Qt::AlignLeft | Qt::AlignVCenter, m_curve.from);
        }
        // Above the line at the far end, where the stock has gone down; below it where there is no room above.
        const double line = y(m_curve.orderPoint);
        const bool above = line - m_text.lineStep() >= m_field.top() - m_text.height;
        m_text.draw(m_painter,
                    QRectF(m_field.left(), above ? line - m_text.lineStep() : line, m_field.width(), m_text.lineStep()),
                    Qt::AlignRight | Qt::AlignVCenter, m_curve.order);
    }

    QPainter& m_painter;
    const CourseCurve& m_curve;
    const Palette& m_palette;
    PaperText m_text;
    double m_days;
    double m_most;
    QRectF m_field;
    double m_saidFrom = 1e9;
};
} // namespace

double daysShown(const CourseCurve& curve) {
    assert(!curve.steps.empty());
    const stock::StockStep& out = curve.steps.back();
    return std::max(kLeastDays, std::min(out.late, kMostTimesLikely * out.likely));
}

void drawCourseCurve(QPainter& painter, const QRectF& area, const CourseCurve& curve, const Palette& palette) {
    assert(curve.orderPoint > 0);
    if (curve.steps.empty() || area.isEmpty()) {
        return;
    }
    painter.save();
    CoursePainter(painter, area, curve, palette).draw();
    painter.restore();
}

} // namespace rw::ui
