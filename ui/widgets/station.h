// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"

#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QString>
#include <QWidget>

#include <functional>
#include <optional>

namespace rw::ui {

/// A way of working, as the window holds it. Its actions stand in the menu of its name, each with its key; the keys
/// work while the station has the keyboard.
class Station : public QWidget {
    Q_OBJECT

public:
    [[nodiscard]] virtual QString name() const = 0;
    [[nodiscard]] virtual QString menuName() const = 0; ///< the same with its letter for Alt
    /// Which page of the guide explains it: "counter".
    [[nodiscard]] virtual QString guidePage() const = 0;
    /// The station comes into view: it asks the ledger again and puts the keyboard where work begins.
    virtual void enter() = 0;
    /// Somebody else wrote: what is shown may be old. Nothing that was typed changes.
    virtual void refresh() = 0;

    /// The job whose papers are printed from here: the one that is looked at or was just logged.
    [[nodiscard]] virtual std::optional<JobId> paperJob() const { return std::nullopt; }

    [[nodiscard]] const QList<QAction*>& keys() const { return m_keys; }

Q_SIGNALS:
    /// What happened, for people: "Logged 2121 …". Stays in view until the next.
    void said(const QString& words);
    void keysChanged();
    /// One of its actions was chosen where it is not in view: it must come into view now.
    void wanted();

protected:
    using QWidget::QWidget;

    /// An action that shows something. `keys` empty: in the menu only. Chosen from elsewhere, it goes to its station
    /// first.
    QAction* addKey(const QString& words, const QList<QKeySequence>& keys, std::function<void()> act) {
        return makeAction(words, keys, [this, act = std::move(act)] {
            if (!isVisible()) {
                Q_EMIT wanted();
            }
            act();
        });
    }
    /// An action that writes what the station shows. Chosen from elsewhere it only goes there: nobody writes what they
    /// do not see.
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
