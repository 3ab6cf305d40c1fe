// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace rw::ui {

/// The few colours of the program: paper, graphite, one warm accent. Every colour that text is written in stands out
/// from `paper` and from `shade` by at least 4.5 to 1 (WCAG 2.1, success criterion 1.4.3).
struct Palette {
    QColor paper;    ///< what everything lies on
    QColor shade;    ///< a quieter paper for bands and the hoop
    QColor ink;      ///< text and strings
    QColor softInk;  ///< text that may be overlooked
    QColor rule;     ///< hairlines; never text
    QColor accent;   ///< the one warm colour: the short side, what is promised, where to look
    QColor onAccent; ///< text on a filled accent

    [[nodiscard]] static Palette light();
    [[nodiscard]] static Palette dark();
    [[nodiscard]] static Palette print(); ///< white paper, for documents
};

/// Contrast of two colours, 1 to 21 (WCAG 2.1, relative luminance).
[[nodiscard]] double contrastRatio(const QColor& one, const QColor& other);

} // namespace rw::ui
