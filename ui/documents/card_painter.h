// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "ui/documents/card_words.h"
#include "ui/drawing/palette.h"

#include <QRectF>
#include <QSizeF>

class QPainter;

namespace rw::ui {

/// Puts the words of a card and the drawing of the head on a sheet. Works in millimetres of a sheet that is 186 wide
/// (tall sheets) or 150 high (wide ones); the caller's painter is already scaled to that.
class CardPainter {
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

    void rule(double left, double right, double y);
    void checkBox(const QRectF& box, bool done);
    void tick(const QRectF& box, double thickness);
    void warningMark(const QRectF& box);
    /// One line, elided to the box; gives back how wide it came out.
    double line(const QRectF& box, const QString& text, double height, const QColor& color, bool bold = false,
                Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);
    /// One line as high as asked or as much lower as its width needs: for what must never be cut off.
    double fitted(const QRectF& box, const QString& text, double height, const QColor& color, bool bold = true,
                  Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);
    double cut(const CardWords::Cut& cut, const QRectF& column, double top);

    QPainter& m_painter;
    const CardWords& m_words;
    const length::CutPlan& m_plan;
    const Palette& m_palette;
};

} // namespace rw::ui
