// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <optional>

class QKeyEvent;

namespace rw::ui {

/// While it lives, an Enter that is held down is one Enter: its repeats reach nobody. What Enter confirms is cut, paid
/// or handed over, and the next question may stand there before the key is up. Some desktops report a repeat as a
/// release and a press at the same moment, without saying what it is; those are known by their times.
class RepeatGuard final : public QObject {
    Q_OBJECT

public:
    /// Watches every key of the application.
    explicit RepeatGuard(QObject& application);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// A press of Enter, or the question before it whether it is a shortcut.
    [[nodiscard]] bool isRepeat(const QKeyEvent& press) const;

    std::optional<quint64> m_releasedAt; ///< of an Enter, in milliseconds
    bool m_repeating = false;            ///< the press that is on its way is a repeat
};

} // namespace rw::ui
