// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// The command line of the desktop, where nobody sees a window: it says what is wrong and ends, and waits for nobody.
namespace rw::cli::test {
namespace {

using testing::HasSubstr;

QProcessEnvironment withoutScreen() {
    auto environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
        environment.remove(QString::fromUtf8(name));
    }
    // What Qt says of the platform is not the program's word.
    environment.insert(QStringLiteral("QT_LOGGING_RULES"), QStringLiteral("default.warning=false"));
    return environment;
}

Outcome desktop(const QStringList& words, const QProcessEnvironment& environment = withoutScreen()) {
    return run(QStringLiteral(DESKTOP_PROGRAM), words, {}, environment);
}

/// On Qt's platform without a screen, where a window may open and a dialog would wait for ever.
Outcome offscreen(const QStringList& words) {
    auto environment = withoutScreen();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    return desktop(words, environment);
}

void expectRefusal(const Outcome& outcome, const char* words) {
    EXPECT_EQ(outcome.code, 2);
    EXPECT_EQ(outcome.out, "");
    EXPECT_TRUE(outcome.err.starts_with("reelwright: ")) << outcome.err;
    EXPECT_EQ(std::ranges::count(outcome.err, '\n'), 1) << outcome.err;
    EXPECT_THAT(outcome.err, HasSubstr(words));
}

TEST(Desktop, AnUnknownOptionIsNamed) { expectRefusal(desktop({QStringLiteral("--ladder")}), "ladder"); }

TEST(Desktop, AMissingValueIsNamed) {
    expectRefusal(desktop({QStringLiteral("--ledger")}), "ledger");
    expectRefusal(desktop({QStringLiteral("--pictures")}), "pictures");
}

TEST(Desktop, WhatItDoesNotKnowIsRefused) {
    expectRefusal(desktop({QStringLiteral("shop.sqlite")}), "shop.sqlite");
    expectRefusal(desktop({QStringLiteral("--station"), QStringLiteral("attic")}), "attic");
    expectRefusal(desktop({QStringLiteral("--demo"), QStringLiteral("--ledger"), QStringLiteral("shop.sqlite")}),
                  "--demo");
}

TEST(Desktop, HelpAndVersionNeedNoScreen) {
    const Outcome help = desktop({QStringLiteral("--help")});
    EXPECT_EQ(help.code, 0);
    EXPECT_THAT(help.out, HasSubstr("--ledger"));
    const Outcome version = desktop({QStringLiteral("--version")});
    EXPECT_EQ(version.code, 0);
    EXPECT_TRUE(version.out.starts_with("reelwright ")) << version.out;
}

TEST(Desktop, WithoutAScreenItSaysSoAndLeavesNoLedgerBehind) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("shop.sqlite"));
    expectRefusal(desktop({QStringLiteral("--ledger"), path}), "no screen");
    EXPECT_FALSE(QFile::exists(path));
}

TEST(Desktop, AFileThatIsNoLedgerIsRefusedAndItEnds) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("notes.txt"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("What the shop owes, and to whom: nothing that a program should write over.\n");
    file.close();
    expectRefusal(offscreen({QStringLiteral("--ledger"), path}), "notes.txt");
    expectRefusal(offscreen({QStringLiteral("--ledger"), folder.filePath(QStringLiteral("no/such/folder.sqlite"))}),
                  "folder.sqlite");
}

// Folders and files stand in the way here, because whoever may do everything writes into a folder that is read-only.
TEST(Desktop, PicturesThatCannotBeWrittenAreRefused) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("file")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.close();
    expectRefusal(desktop({QStringLiteral("--pictures"), folder.filePath(QStringLiteral("file/pictures"))}),
                  "cannot be made");
    ASSERT_TRUE(QDir(folder.path()).mkpath(QStringLiteral("counter-empty.png")));
    expectRefusal(desktop({QStringLiteral("--pictures"), folder.path()}), "cannot be written");
}

} // namespace
} // namespace rw::cli::test
