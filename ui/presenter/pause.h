// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>

#include <chrono>
#include <functional>

namespace rw::ui {

/// Waits until somebody has stopped typing for a moment, then acts once. Without a wait it acts at once (in tests).
class Pause {
public:
    Pause(std::chrono::milliseconds wait, std::function<void()> act)
        : m_act(std::move(act)) {
        m_timer.setSingleShot(true);
        m_timer.setInterval(wait);
        QObject::connect(&m_timer, &QTimer::timeout, &m_timer, [this] { m_act(); });
    }

    void again() {
        if (m_timer.intervalAsDuration().count() == 0) {
            m_act();
        } else {
            m_timer.start();
        }
    }
    void now() {
        m_timer.stop();
        m_act();
    }
    void stop() { m_timer.stop(); }

private:
    std::function<void()> m_act;
    QTimer m_timer;
};

/// Long enough that a word is not searched letter by letter, short enough to feel live.
constexpr std::chrono::milliseconds kTypingPause{120};

/// For what is answered sooner than the next letter comes: whom a piece of a name finds.
constexpr std::chrono::milliseconds kNoPause{0};

} // namespace rw::ui
