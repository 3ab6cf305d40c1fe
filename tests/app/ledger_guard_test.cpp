// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/files/ledger_guard.h"

#include "tests/app/cli.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rw::cli::test {
namespace {

using testing::HasSubstr;

/// A demo ledger under a name that some command would like to write to.
class LedgerGuard : public testing::Test {
protected:
    QString ledgerCalled(const char* name) {
        const QString path = folder.filePath(QString::fromUtf8(name));
        const Outcome demo = cli({QStringLiteral("demo"), QStringLiteral("--ledger"), path});
        EXPECT_EQ(demo.code, 0) << demo.err;
        return path;
    }
    void expectWhole(const QString& ledger) {
        const Outcome check = cli({QStringLiteral("check"), QStringLiteral("--ledger"), ledger});
        EXPECT_EQ(check.code, 0) << check.err;
    }
    QTemporaryDir folder;
};

TEST_F(LedgerGuard, AnExportDoesNotReplaceTheLedgerItReads) {
    const QString ledger = ledgerCalled("movements.csv");
    EXPECT_THAT(refusalOf({QStringLiteral("export"), QStringLiteral("--ledger"), ledger, QStringLiteral("--out"),
                           folder.path()}),
                HasSubstr("it is the ledger"));
    EXPECT_FALSE(QFile::exists(folder.filePath(QStringLiteral("jobs.csv")))) << "nothing was begun";
    expectWhole(ledger);
}

TEST_F(LedgerGuard, NorThroughALink) {
    const QString ledger = ledgerCalled("shop.sqlite");
    ASSERT_TRUE(QFile::link(ledger, folder.filePath(QStringLiteral("jobs.csv"))));
    EXPECT_THAT(refusalOf({QStringLiteral("export"), QStringLiteral("--ledger"), ledger, QStringLiteral("--out"),
                           folder.path()}),
                HasSubstr("it is the ledger"));
    expectWhole(ledger);
}

TEST_F(LedgerGuard, NorDoesADay) {
    const QString ledger = folder.filePath(QStringLiteral("head.png"));
    EXPECT_THAT(
        refusalOf({QStringLiteral("day"), QStringLiteral("--ledger"), ledger, QStringLiteral("--out"), folder.path()}),
        HasSubstr("it is the ledger"));
    expectWhole(ledger);
}

TEST_F(LedgerGuard, TheLogLiesBesideTheFileAndNotBesideALinkToIt) {
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("real")));
    const QString ledger = ledgerCalled("real/shop.sqlite");
    const QString link = folder.filePath(QStringLiteral("shop.sqlite"));
    ASSERT_TRUE(QFile::link(ledger, link));
    QFile log(ledger + QStringLiteral("-wal"));
    ASSERT_TRUE(log.open(QIODevice::WriteOnly));
    const auto guarded = app::mustNotReplaceLedger(log.fileName().toStdString(), link.toStdString());
    ASSERT_FALSE(guarded);
    EXPECT_EQ(guarded.error().code(), Code::FileUnwritable);
    EXPECT_TRUE(
        app::mustNotReplaceLedger(folder.filePath(QStringLiteral("card.pdf")).toStdString(), link.toStdString()));
}

} // namespace
} // namespace rw::cli::test
