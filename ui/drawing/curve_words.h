// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/drawing/paper_text.h"

#include <QRectF>
#include <QString>

class QPainter;

// The words beside a curve over time: at its height on the left, and at both ends below it.
namespace rw::ui {

constexpr double kCurveGap = 8; ///< from a word to the line that it stands by

/// What is left of `area` for the curve beside the wider of two words on its left and a line of words below it; `right`
/// stays free for marks.
[[nodiscard]] QRectF curveField(const QRectF& area, const PaperText& text, const QString& top, const QString& bottom,
                                double right);
/// On the left of the field, at the height `at`.
void drawBesideCurve(QPainter& painter, const PaperText& text, const QRectF& field, double at, const QString& words);
/// Below the field, at its left and its right end.
void drawBelowCurve(QPainter& painter, const PaperText& text, const QRectF& field, const QString& from,
                    const QString& to);

} // namespace rw::ui
