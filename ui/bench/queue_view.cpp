// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/queue_view.h"

#include <QKeyEvent>

namespace rw::ui {

bool QueueView::event(QEvent* event) {
    // While a number is typed its Enter is no "next step" of the card that still lies there.
    if (event->type() == QEvent::ShortcutOverride && !m_tag.digits().isEmpty() &&
        m_tag.isNext(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QListView::event(event);
}

void QueueView::keyPressEvent(QKeyEvent* event) {
    const QString before = m_tag.digits();
    const bool isTags = m_tag.take(*event);
    if (m_tag.digits() != before) {
        Q_EMIT tagTyped();
    }
    if (const auto number = m_tag.finished()) {
        Q_EMIT tagEntered(*number);
    }
    if (!isTags) {
        QListView::keyPressEvent(event);
    }
}

} // namespace rw::ui
