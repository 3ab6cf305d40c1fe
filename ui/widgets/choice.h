// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QElapsedTimer>
#include <QString>

namespace rw::ui {

/// A line on which one of several things is chosen. Typing its first letters moves to it, the same letter again to the
/// next that begins with it; the arrow keys go one on. Whoever comes here begins a new word. While the keyboard is
/// here, letters are no shortcuts, and the Enter or Esc that closes the open list does nothing else. The wheel does
/// nothing unless the keyboard is here, so that scrolling past changes nothing.
class Choice final : public QComboBox {
    Q_OBJECT

public:
    explicit Choice(QWidget* parent = nullptr);
    void showPopup() override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void closePopup(int key);
    /// A letter or a digit that is typed to choose, not a key of the station around it.
    [[nodiscard]] static bool isTyped(const QKeyEvent& event);
    /// Moves to the first choice from `from` on, round and back, that begins with `start`.
    bool moveTo(const QString& start, int from);

    QString m_typed;
    QElapsedTimer m_sinceTyped;
};

} // namespace rw::ui
