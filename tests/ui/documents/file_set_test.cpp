// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/file_set.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace rw::ui::test {
namespace {

class FileSetTest : public testing::Test {
protected:
    QString path(const char* name) { return folder.filePath(QString::fromLatin1(name)); }
    QByteArray textOf(const char* name) {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("no file");
    }
    QStringList names() { return QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot); }

    QTemporaryDir folder;
};

TEST_F(FileSetTest, NothingIsThereBeforeAllAre) {
    QFile old(path("jobs.csv"));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("of yesterday");
    old.close();
    FileSet files;
    ASSERT_TRUE(files.add(path("jobs.csv"), "of today"));
    ASSERT_TRUE(files.add(path("lots.csv"), "K-2"));
    EXPECT_EQ(textOf("jobs.csv"), "of yesterday");
    EXPECT_EQ(textOf("lots.csv"), "no file");
    files.putInPlace();
    EXPECT_EQ(textOf("jobs.csv"), "of today");
    EXPECT_EQ(textOf("lots.csv"), "K-2");
    EXPECT_EQ(names(), (QStringList{QStringLiteral("jobs.csv"), QStringLiteral("lots.csv")}));
}

TEST_F(FileSetTest, ASetThatIsDroppedLeavesNothing) {
    {
        FileSet files;
        ASSERT_TRUE(files.add(path("jobs.csv"), "of today"));
    }
    EXPECT_EQ(names(), QStringList());
}

TEST_F(FileSetTest, WhereNoFileCanBeNoneComes) {
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("lots.csv")));
    FileSet files;
    ASSERT_TRUE(files.add(path("jobs.csv"), "of today"));
    for (const QString& where : {path("lots.csv"), path("no/such/folder/lots.csv"), QStringLiteral("/dev/full")}) {
        const auto added = files.add(where, "K-2");
        ASSERT_FALSE(added) << where.toStdString();
        EXPECT_EQ(added.error().code(), Code::FileUnwritable);
    }
    EXPECT_EQ(textOf("jobs.csv"), "no file");
}

} // namespace
} // namespace rw::ui::test
