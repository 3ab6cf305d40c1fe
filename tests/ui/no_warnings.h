// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>

#include <gtest/gtest.h>

namespace rw::ui {

/// While it lives, whatever Qt has to say fails the test: a warning of a painter or a document is a fault of ours.
class NoWarnings {
public:
    NoWarnings()
        : m_before(qInstallMessageHandler(fail)) {}
    ~NoWarnings() { qInstallMessageHandler(m_before); }
    NoWarnings(const NoWarnings&) = delete;
    NoWarnings& operator=(const NoWarnings&) = delete;

private:
    static void fail(QtMsgType, const QMessageLogContext&, const QString& message) {
        ADD_FAILURE() << "Qt said: " << message.toStdString();
    }
    QtMessageHandler m_before;
};

} // namespace rw::ui
