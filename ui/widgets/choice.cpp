// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/choice.h"

#include "ui/widgets/look.h"

#include <QPainter>
#include <QWheelEvent>

namespace rw::ui {

namespace {
constexpr int kArrowWidth = 8;
constexpr int kArrowHeight = 5;
constexpr int kFromEdge = 8;
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
    painter.drawPolygon(QPolygonF{{right - kArrowWidth, top}, {right, top}, {right - kArrowWidth / 2.0, top + kArrowHeight}});
}

void Choice::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QComboBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

} // namespace rw::ui
