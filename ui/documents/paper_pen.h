// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/documents/tag_code.h"
#include "ui/drawing/palette.h"

#include <QRectF>
#include <QString>

class QPainter;

namespace rw::ui {

/// What every paper is laid out with: lines of text that keep to their box, rules, boxes to tick, the mark of a
/// warning. Works in the painter's own units; the caller has scaled it to millimetres of a sheet.
class PaperPen {
public:
    PaperPen(QPainter& painter, const Palette& palette);

    static constexpr Qt::Alignment kLeft = Qt::AlignLeft | Qt::AlignVCenter;
    static constexpr Qt::Alignment kRight = Qt::AlignRight | Qt::AlignVCenter;

    /// One line, elided to the box; gives back how wide it came out.
    double line(const QRectF& box, const QString& text, double height, const QColor& color, bool bold = false,
                Qt::Alignment alignment = kLeft);
    /// One line as high as asked or as much lower as its width needs: for what must never be cut off. Gives back how
    /// wide it came out.
    double fitted(const QRectF& box, const QString& text, double height, const QColor& color, bool bold = true,
                  Qt::Alignment alignment = kLeft);
    /// Lines from the top of `column` down, at most `most` and none that leaves the column; gives back where the next
    /// thing begins.
    double paragraph(const QRectF& column, const QString& text, double height, const QColor& color, qsizetype most,
                     bool bold = false);
    void rule(double left, double right, double y);
    void checkBox(const QRectF& box, bool done);
    void tick(const QRectF& box, double thickness);
    void warningMark(const QRectF& box);
    /// The code in the middle of `box` with its quiet zone, as large as that allows: black on white whatever the
    /// palette, because that is what scanners read.
    void code(const QRectF& box, const TagCode& code);

    [[nodiscard]] QPainter& painter() const { return m_painter; }
    [[nodiscard]] const Palette& palette() const { return m_palette; }

private:
    QPainter& m_painter;
    const Palette& m_palette;
};

} // namespace rw::ui
