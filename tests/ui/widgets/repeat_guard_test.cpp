// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/repeat_guard.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QShortcutEvent>
#include <QWidget>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

/// Counts the keys that reach it.
class Counting final : public QWidget {
public:
    int enters = 0;
    int others = 0;

protected:
    void keyPressEvent(QKeyEvent* event) override { ++(event->key() == Qt::Key_Return ? enters : others); }
};

class HeldEnter : public testing::Test {
protected:
    void send(QEvent::Type type, quint64 at, int key = Qt::Key_Return, bool repeat = false) {
        QKeyEvent event(type, key, Qt::NoModifier, QString(), repeat);
        event.setTimestamp(at);
        QApplication::sendEvent(&widget, &event);
    }
    void down(quint64 at) { send(QEvent::KeyPress, at); }
    void up(quint64 at) { send(QEvent::KeyRelease, at); }

    RepeatGuard guard{*qApp};
    Counting widget;
};

TEST_F(HeldEnter, IsOneEnterHoweverItsRepeatsAreReported) {
    down(100);
    EXPECT_EQ(widget.enters, 1);
    send(QEvent::KeyPress, 400, Qt::Key_Return, true); // said to be a repeat
    EXPECT_EQ(widget.enters, 1);
    for (const quint64 at : {quint64{500}, quint64{533}, quint64{566}}) {
        up(at); // as X11 tells of a key that is held
        down(at);
    }
    EXPECT_EQ(widget.enters, 1);
}

TEST_F(HeldEnter, TwoQuickOnesAreTwo) {
    down(100);
    up(140);
    down(180);
    EXPECT_EQ(widget.enters, 2);
}

TEST_F(HeldEnter, NorDoesItTriggerAShortcut) {
    down(100);
    up(500);
    send(QEvent::ShortcutOverride, 500);
    QAction action;
    int triggered = 0;
    QObject::connect(&action, &QAction::triggered, [&] { ++triggered; });
    QShortcutEvent held(QKeySequence(Qt::Key_Return), 1);
    QApplication::sendEvent(&action, &held);
    EXPECT_EQ(triggered, 0);
    up(540);
    send(QEvent::ShortcutOverride, 900); // pressed again
    QShortcutEvent pressed(QKeySequence(Qt::Key_Return), 1);
    QApplication::sendEvent(&action, &pressed);
    EXPECT_EQ(triggered, 1);
}

TEST_F(HeldEnter, OtherKeysRepeat) {
    for (int i = 0; i < 3; ++i) {
        send(QEvent::KeyPress, 100, Qt::Key_Backspace, i > 0);
    }
    EXPECT_EQ(widget.others, 3);
}

} // namespace
} // namespace rw::ui
