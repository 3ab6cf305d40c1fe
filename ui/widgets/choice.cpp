// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/choice.h"

#include "ui/widgets/look.h"

#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kArrowWidth = 8;
constexpr int kArrowHeight = 5;
constexpr int kFromEdge = 8;
constexpr int kOneWord = 800; ///< milliseconds within which letters belong to one word
} // namespace

Choice::Choice(QWidget* parent)
    : QComboBox(parent) {
    setFocusPolicy(Qt::StrongFocus);
    // As wide as there is room, not as wide as its longest choice.
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(6);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void Choice::paintEvent(QPaintEvent* event) {
    QComboBox::paintEvent(event);
    const Palette palette = programPalette();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isEnabled() ? palette.softInk : palette.rule);
    const double right = width() - kFromEdge;
    const double top = (height() - kArrowHeight) / 2.0;
    painter.drawPolygon(
        QPolygonF{{right - kArrowWidth, top}, {right, top}, {right - kArrowWidth / 2.0, top + kArrowHeight}});
}

void Choice::focusInEvent(QFocusEvent* event) {
    m_typed.clear();
    QComboBox::focusInEvent(event);
}

bool Choice::moveTo(const QString& start, int from) {
    for (int i = 0; i < count(); ++i) {
        const int row = (from + i) % count();
        if (itemText(row).startsWith(start, Qt::CaseInsensitive)) {
            setCurrentIndex(row);
            return true;
        }
    }
    return false;
}

void Choice::keyPressEvent(QKeyEvent* event) {
    const QString letter = event->text();
    const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    if (!plain || letter.isEmpty() || !letter.front().isPrint() || letter.front().isSpace()) {
        QComboBox::keyPressEvent(event);
        return;
    }
    const bool goesOn = !m_typed.isEmpty() && m_sinceTyped.elapsed() <= kOneWord;
    m_sinceTyped.start();
    if (goesOn && moveTo(m_typed + letter, std::max(0, currentIndex()))) {
        m_typed += letter;
        return;
    }
    // Not the rest of a word: a first letter, from the next choice on.
    moveTo(letter, currentIndex() + 1);
    m_typed = letter;
}

void Choice::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QComboBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

} // namespace rw::ui
