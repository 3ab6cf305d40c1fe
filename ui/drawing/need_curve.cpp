// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/need_curve.h"

#include "ui/drawing/curve_words.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace rw::ui {

namespace {
constexpr double kMark = 3.5; ///< half a mark
constexpr double kHook = 9;

class NeedPainter {
public:
    NeedPainter(QPainter& painter, const QRectF& area, const NeedCurve& curve, const Palette& palette)
        : m_painter(painter)
        , m_curve(curve)
        , m_palette(palette)
        , m_range(needCurveRange(curve))
        , m_text{.height = curve.textHeight} {
        m_field = curveField(area, m_text, curve.top, curve.bottom, kHook);
        painter.setRenderHint(QPainter::Antialiasing);
    }

    void draw() {
        drawBand();
        drawFrame();
        drawLine();
        for (std::size_t i = 0; i < m_curve.jobs.size(); ++i) {
            drawJob(m_curve.jobs[i], x(i));
        }
        drawWords();
    }

private:
    /// Jobs of one moment stand side by side.
    [[nodiscard]] double x(std::size_t job) const {
        const auto first = m_curve.jobs.front().at;
        const auto whole = (m_curve.jobs.back().at - first).count();
        const double share =
            whole > 0 ? static_cast<double>((m_curve.jobs[job].at - first).count()) / static_cast<double>(whole)
                      : static_cast<double>(job + 1) / static_cast<double>(m_curve.jobs.size() + 1);
        return m_field.left() + kHook + share * (m_field.width() - kHook);
    }
    [[nodiscard]] double y(double mm) const {
        return m_field.bottom() - (mm - m_range.low) / (m_range.high - m_range.low) * m_field.height();
    }

    void drawBand() {
        QPolygonF band;
        for (std::size_t i = 0; i < m_curve.jobs.size(); ++i) {
            band << QPointF(x(i), y(m_curve.jobs[i].learned + m_curve.jobs[i].spread));
        }
        for (std::size_t i = m_curve.jobs.size(); i-- > 0;) {
            band << QPointF(x(i), y(m_curve.jobs[i].learned - m_curve.jobs[i].spread));
        }
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(m_palette.shade);
        m_painter.drawPolygon(band);
    }

    void drawFrame() {
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(m_palette.rule, 1));
        m_painter.drawLine(m_field.bottomLeft(), m_field.bottomRight());
        m_painter.drawLine(m_field.bottomLeft(), m_field.topLeft());
        m_painter.setPen(QPen(m_palette.softInk, 1, Qt::DashLine));
        m_painter.drawLine(QPointF(m_field.left(), y(m_curve.predicted)),
                           QPointF(m_field.right(), y(m_curve.predicted)));
    }

    void drawLine() {
        QPolygonF line;
        for (std::size_t i = 0; i < m_curve.jobs.size(); ++i) {
            line << QPointF(x(i), y(m_curve.jobs[i].learned));
        }
        m_painter.setPen(QPen(m_palette.ink, 1.8));
        m_painter.drawPolyline(line);
    }

    void drawJob(const NeedCurve::Job& job, double at) {
        m_painter.setBrush(m_palette.accent);
        m_painter.setPen(QPen(m_palette.accent, 1.6));
        if (std::isinf(job.high)) {
            const double foot = y(job.low);
            m_painter.drawPolygon(
                QPolygonF{QPointF(at - kMark, foot), QPointF(at + kMark, foot), QPointF(at, foot - 2 * kMark)});
        } else if (job.low <= 0) {
            const double cut = y(job.high);
            m_painter.setPen(QPen(m_palette.softInk, 1.2));
            m_painter.drawLine(QPointF(at - kMark, cut), QPointF(at + kMark, cut));
            m_painter.drawLine(QPointF(at, cut), QPointF(at, cut + kHook));
        } else if (job.high - job.low < 1) {
            m_painter.drawEllipse(QPointF(at, y(job.low)), kMark, kMark);
        } else {
            m_painter.drawLine(QPointF(at, y(job.low)), QPointF(at, y(job.high)));
        }
    }

    void drawWords() {
        m_painter.setPen(m_palette.softInk);
        drawBesideCurve(m_painter, m_text, m_field, m_field.top(), m_curve.top);
        drawBesideCurve(m_painter, m_text, m_field, m_field.bottom(), m_curve.bottom);
        drawBelowCurve(m_painter, m_text, m_field, m_curve.from, m_curve.to);
    }

    QPainter& m_painter;
    const NeedCurve& m_curve;
    const Palette& m_palette;
    NeedRange m_range;
    PaperText m_text;
    QRectF m_field;
};
} // namespace

NeedRange needCurveRange(const NeedCurve& curve) {
    NeedRange range{curve.predicted, curve.predicted};
    const auto hold = [&](double mm) {
        if (std::isfinite(mm) && mm > 0) {
            range = {std::min(range.low, mm), std::max(range.high, mm)};
        }
    };
    for (const NeedCurve::Job& job : curve.jobs) {
        for (const double mm : {job.low, job.high, job.learned - job.spread, job.learned + job.spread}) {
            hold(mm);
        }
    }
    // To a tenth of a metre, as it is read.
    constexpr double kTenth = 100;
    return {std::floor(range.low / kTenth) * kTenth, std::ceil(range.high / kTenth) * kTenth};
}

void drawNeedCurve(QPainter& painter, const QRectF& area, const NeedCurve& curve, const Palette& palette) {
    if (curve.jobs.empty() || area.isEmpty()) {
        return;
    }
    painter.save();
    NeedPainter(painter, area, curve, palette).draw();
    painter.restore();
}

} // namespace rw::ui
