// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/drawing/palette.h"

#include <QFont>
#include <QPalette>
#include <QString>

class QTableView;
class QWidget;

namespace rw::ui {

/// The program's colours as Qt passes them down to every widget.
[[nodiscard]] QPalette toQPalette(const Palette& palette);
/// The program's colours, for what a widget draws itself.
[[nodiscard]] Palette programPalette();

/// How lines to write on, choices, buttons and lists look.
[[nodiscard]] QString styleSheet(const Palette& palette);

/// Numerals that are read from a distance, `times` as large as the text around them.
[[nodiscard]] QFont largeFont(const QWidget& widget, double times);

/// Softer ink for words that stand beside what they are about.
void quieten(QWidget& words);

/// A table that is read line by line with the arrow keys; Tab leaves it, and nothing is written in it.
void readByLines(QTableView& table);

/// A sheet of paper with its edge, as large as the widget; from its paintEvent.
void paintPaper(QWidget& widget);

} // namespace rw::ui
