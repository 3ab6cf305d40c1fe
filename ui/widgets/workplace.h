// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QString>
#include <QWidget>

#include <functional>

namespace rw::ui {

/// A part of the window with actions of its own: a station, or a page of one. Its actions stand in a menu, each with
/// its key; the keys work while the part has the keyboard.
class Workplace : public QWidget {
    Q_OBJECT

public:
    /// Asks the ledger again: what is shown may be old. Nothing that was typed changes.
    virtual void refresh() = 0;

    [[nodiscard]] const QList<QAction*>& keys() const { return m_keys; }

Q_SIGNALS:
    /// What happened, for people: "Logged 2121 …". Stays in view until the next.
    void said(const QString& words);
    void keysChanged();
    /// One of its actions was chosen where it is not in view: it must come into view now.
    void wanted();

protected:
    using QWidget::QWidget;

    /// An action that shows something. `keys` empty: in the menu only. Chosen from elsewhere, it goes to its part of
    /// the window first.
    QAction* addKey(const QString& words, const QList<QKeySequence>& keys, std::function<void()> act) {
        return makeAction(words, keys, [this, act = std::move(act)] {
            if (!isVisible()) {
                Q_EMIT wanted();
            }
            act();
        });
    }
    /// An action that writes what is shown. Chosen from elsewhere it only goes there: nobody writes what they do not
    /// see.
    QAction* addCommand(const QString& words, const QList<QKeySequence>& keys, std::function<void()> act) {
        return makeAction(words, keys, [this, act = std::move(act)] {
            if (isVisible()) {
                act();
            } else {
                Q_EMIT wanted();
            }
        });
    }

private:
    QAction* makeAction(const QString& words, const QList<QKeySequence>& keys, std::function<void()> act) {
        auto* action = new QAction(words, this);
        action->setShortcuts(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        action->setAutoRepeat(false);
        connect(action, &QAction::triggered, this, [act = std::move(act)] { act(); });
        addAction(action);
        m_keys << action;
        return action;
    }

    QList<QAction*> m_keys;
};

} // namespace rw::ui
