// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/choice.h"

#include "ui/widgets/look.h"

#include <QAbstractItemView>
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

void Choice::showPopup() {
    QComboBox::showPopup();
    view()->removeEventFilter(this);
    view()->installEventFilter(this); // in front of Qt's own, which would let the key go on to a shortcut
}

bool Choice::eventFilter(QObject* watched, QEvent* event) {
    const bool isKey = event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (watched == view() && isKey) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape) {
            event->accept();
            if (event->type() == QEvent::KeyPress) {
                closePopup(key);
            }
            return true;
        }
    }
    return QComboBox::eventFilter(watched, event);
}

void Choice::closePopup(int key) {
    const int row = view()->currentIndex().row();
    hidePopup();
    if (key != Qt::Key_Escape && row >= 0) {
        setCurrentIndex(row);
        Q_EMIT activated(row);
    }
}

bool Choice::isTyped(const QKeyEvent& event) {
    const QString letter = event.text();
    const bool plain = (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    return plain && !letter.isEmpty() && letter.front().isPrint() && !letter.front().isSpace();
}

bool Choice::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isTyped(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QComboBox::event(event);
}

void Choice::keyPressEvent(QKeyEvent* event) {
    if (!isTyped(*event)) {
        QComboBox::keyPressEvent(event);
        return;
    }
    const QString letter = event->text();
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
