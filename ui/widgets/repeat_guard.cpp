// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/repeat_guard.h"

#include <QKeyEvent>
#include <QShortcutEvent>

namespace rw::ui {

namespace {
/// No finger lets go and presses again so fast.
constexpr quint64 kSameMoment = 5;

bool isEnter(int key) { return key == Qt::Key_Return || key == Qt::Key_Enter; }
} // namespace

RepeatGuard::RepeatGuard(QObject& application)
    : QObject(&application) {
    application.installEventFilter(this);
}

bool RepeatGuard::isRepeat(const QKeyEvent& press) const {
    return press.isAutoRepeat() || (m_releasedAt && press.timestamp() >= *m_releasedAt &&
                                    press.timestamp() - *m_releasedAt <= kSameMoment);
}

bool RepeatGuard::eventFilter(QObject*, QEvent* event) {
    switch (event->type()) {
    case QEvent::ShortcutOverride:
    case QEvent::KeyPress: {
        const auto& press = *static_cast<QKeyEvent*>(event);
        m_repeating = isEnter(press.key()) && isRepeat(press);
        return m_repeating;
    }
    case QEvent::KeyRelease:
        if (const auto& release = *static_cast<QKeyEvent*>(event); isEnter(release.key())) {
            m_releasedAt = release.timestamp();
        }
        return false;
    case QEvent::Shortcut:
        return m_repeating && isEnter(static_cast<QShortcutEvent*>(event)->key()[0].key());
    default:
        return false;
    }
}

} // namespace rw::ui
