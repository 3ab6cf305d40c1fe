// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>
#include <QStringList>

class QPainter;

namespace rw::ui {

/// A line of text whose size is a length in the painter's own units, as everything else in a drawing is. Sizes in
/// points depend on the device and sizes in pixels are whole numbers; neither is of use in a picture that is scaled.
struct PaperText {
    double height = 10; ///< of the em square, in the painter's units; positive
    bool bold = false;

    [[nodiscard]] double width(const QString& text) const;
    /// As much of `text` as fits, with an ellipsis where something is left out: at its end, or in the middle where the
    /// end says the most.
    [[nodiscard]] QString elided(const QString& text, double width, Qt::TextElideMode where = Qt::ElideRight) const;
    /// Lines that fit, broken between words (inside one that is longer than a line); at most `most` of them, the last
    /// one elided. White space is made single. Empty text is no line.
    [[nodiscard]] QStringList wrapped(const QString& text, double width, qsizetype most) const;

    /// One line in the painter's pen colour, aligned in `box`; what is larger than the box stands out of it.
    void draw(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text) const;

    /// From one line's top to the next one's.
    [[nodiscard]] double lineStep() const { return height * 1.28; }
};

} // namespace rw::ui
