// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>

#include <gtest/gtest.h>

namespace rw::ui::test {

/// While it lives, whatever Qt has to say fails the test, but for the two things that the offscreen platform always
/// says: that it knows no size hints, and that nobody gave it a runtime folder.
class OnlyKnownWarnings {
public:
    OnlyKnownWarnings()
        : m_before(qInstallMessageHandler(judge)) {}
    ~OnlyKnownWarnings() { qInstallMessageHandler(m_before); }
    OnlyKnownWarnings(const OnlyKnownWarnings&) = delete;
    OnlyKnownWarnings& operator=(const OnlyKnownWarnings&) = delete;

private:
    static void judge(QtMsgType, const QMessageLogContext&, const QString& message) {
        const bool known = message.contains(QStringLiteral("propagateSizeHints")) ||
                           message.contains(QStringLiteral("XDG_RUNTIME_DIR"));
        if (!known) {
            ADD_FAILURE() << "Qt said: " << message.toStdString();
        }
    }
    QtMessageHandler m_before;
};

} // namespace rw::ui::test
