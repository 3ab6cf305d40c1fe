// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "ui/documents/card_words.h"
#include "ui/documents/paper_pen.h"

#include <QRectF>
#include <QSizeF>

namespace rw::ui {

/// Puts the words of a card and the drawing of the head on a sheet. Works in millimetres of a sheet that is 186 wide
/// (tall sheets) or 150 high (wide ones); the caller's painter is already scaled to that.
class CardPainter : private PaperPen {
public:
    CardPainter(QPainter& painter, const CardWords& words, const length::CutPlan& plan, const Palette& palette);

    /// The sheet's size for an area of this shape.
    [[nodiscard]] static QSizeF sheetFor(const QSizeF& area);
    void paint(const QSizeF& sheet);

private:
    // Each paints one block from `top` down in a column and gives back where the next one begins.
    double heading(const QRectF& column);
    double notices(const QRectF& column);
    double steps(const QRectF& column);
    double pulls(const QRectF& column);
    void pull(const CardWords::Pull& pull, const QRectF& box, bool dialed);
    double cuts(const QRectF& column, double top);
    double shortSide(const QRectF& column, double top);
    void words(const QRectF& column);
    /// How high the cautions at the foot are on a sheet of this width.
    [[nodiscard]] double footHeight(double width) const;
    void foot(const QRectF& area);
    void drawing(const QRectF& area);

    double cut(const CardWords::Cut& cut, const QRectF& column, double top);

    const CardWords& m_words;
    const length::CutPlan& m_plan;
};

} // namespace rw::ui
