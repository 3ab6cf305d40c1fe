// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QString>
#include <QTest>
#include <QWidget>

#include <gtest/gtest.h>

// The keyboard, and nothing else, as somebody at a station uses it: keys go where the keyboard is.
namespace rw::ui::test {

inline QWidget* whereTheKeyboardIs() {
    QWidget* focus = QApplication::focusWidget();
    return focus != nullptr ? focus : QApplication::activeWindow();
}

inline void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    ASSERT_NE(whereTheKeyboardIs(), nullptr) << "no window has the keyboard";
    QTest::keyClick(whereTheKeyboardIs(), key, modifiers);
}

inline void type(const char* text) {
    ASSERT_NE(whereTheKeyboardIs(), nullptr) << "no window has the keyboard";
    for (const char32_t letter : QString::fromUtf8(text).toUcs4()) {
        if (letter < 128) {
            QTest::keyClick(whereTheKeyboardIs(), static_cast<char>(letter));
        } else {
            // What no key of the test's keyboard bears comes as text, as an input method sends it.
            QTest::sendKeyEvent(QTest::Click, whereTheKeyboardIs(), Qt::Key_unknown, QString::fromUcs4(&letter, 1),
                                Qt::NoModifier);
        }
    }
}

/// Long enough for a slow machine; what is waited for is usually there at once.
constexpr int kPatience = 20'000;

template<class Predicate>
[[nodiscard]] bool becomes(Predicate predicate) {
    return QTest::qWaitFor(predicate, kPatience);
}

} // namespace rw::ui::test
