// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <QString>

#include <gtest/gtest.h>

namespace {

/// Qt says on standard error what a program has done wrong with a database. Nobody would read it there.
void failOnWarning(QtMsgType type, const QMessageLogContext&, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg) {
        ADD_FAILURE() << "Qt warns: " << message.toStdString();
    }
}

} // namespace

// Qt finds its database drivers through the application object.
int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    qInstallMessageHandler(failOnWarning);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
