// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace rw::ui::test {

/// While it lives, whatever Qt has to say fails the test, but for what the offscreen platform always says: that it
/// knows no size hints and no runtime folder, and, when a list opens, that it cannot raise it or grab the keyboard for
/// it.
class OnlyKnownWarnings {
public:
    OnlyKnownWarnings()
        : m_before(qInstallMessageHandler(judge)) {}
    ~OnlyKnownWarnings() { qInstallMessageHandler(m_before); }
    OnlyKnownWarnings(const OnlyKnownWarnings&) = delete;
    OnlyKnownWarnings& operator=(const OnlyKnownWarnings&) = delete;

private:
    static constexpr std::array kKnown{"propagateSizeHints", "XDG_RUNTIME_DIR", "does not support raise()",
                                       "does not support grabbing the keyboard"};

    static void judge(QtMsgType, const QMessageLogContext&, const QString& message) {
        const bool known =
            std::ranges::any_of(kKnown, [&](const char* words) { return message.contains(QLatin1String(words)); });
        if (!known) {
            ADD_FAILURE() << "Qt said: " << message.toStdString();
        }
    }
    QtMessageHandler m_before;
};

} // namespace rw::ui::test
