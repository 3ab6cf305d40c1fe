// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/curve_words.h"

#include <algorithm>

namespace rw::ui {

namespace {
constexpr double kRoom = 400; ///< for words on the left, which end at the field
}

QRectF curveField(const QRectF& area, const PaperText& text, const QString& top, const QString& bottom, double right) {
    const double label = std::max(text.width(top), text.width(bottom));
    return area.adjusted(label + kCurveGap, text.height / 2, -right, -text.lineStep() - kCurveGap);
}

void drawBesideCurve(QPainter& painter, const PaperText& text, const QRectF& field, double at, const QString& words) {
    text.draw(painter, QRectF(field.left() - kCurveGap - kRoom, at - text.height, kRoom, 2 * text.height),
              Qt::AlignRight | Qt::AlignVCenter, words);
}

void drawBelowCurve(QPainter& painter, const PaperText& text, const QRectF& field, const QString& from,
                    const QString& to) {
    const QRectF below(field.left(), field.bottom() + kCurveGap / 2, field.width(), text.lineStep());
    text.draw(painter, below, Qt::AlignLeft | Qt::AlignVCenter, from);
    text.draw(painter, below, Qt::AlignRight | Qt::AlignVCenter, to);
}

} // namespace rw::ui
