// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/look.h"

#include <QLabel>

namespace rw::ui {

/// The heading of a page of the books.
[[nodiscard]] inline QLabel* pageHeading(const QString& words, QWidget* page) {
    auto* heading = new QLabel(words, page);
    heading->setFont(largeFont(*page, 1.5));
    heading->setTextFormat(Qt::PlainText);
    return heading;
}

/// What is said instead of an empty page, or below its heading.
[[nodiscard]] inline QLabel* pageWords(QWidget* page) {
    auto* words = new QLabel(page);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    return words;
}

} // namespace rw::ui
