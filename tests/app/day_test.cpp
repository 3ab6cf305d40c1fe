// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"
#include "tests/sql/engines.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace rw::cli::test {
namespace {

using testing::HasSubstr;

QStringList words(const char* text) { return QString::fromUtf8(text).split(QLatin1Char(' ')); }

// A Thursday on which the demo shop is open.
const QStringList kDay = words("day --now 2026-03-12T10:05");

class DayOnEngine : public sql::test::OnEngine {
protected:
    QString address() { return QString::fromStdString(place().address()); }
};
ON_BOTH_ENGINES(DayOnEngine);

TEST_P(DayOnEngine, IsTheSameToTheLetter) {
    const Outcome run = cli(kDay + QStringList{QStringLiteral("--ledger"), address()});
    EXPECT_EQ(run.code, 0) << run.err;
    EXPECT_EQ(run.err, "");
    expectGolden("day.txt", run.out);
    const Outcome check = cli({QStringLiteral("check"), QStringLiteral("--ledger"), address()});
    EXPECT_EQ(check.code, 0) << check.out;
    const Outcome stock = cli(words("stock --now 2026-03-12T18:00 --ledger") << address());
    EXPECT_EQ(stock.code, 0);
    expectGolden("stock.txt", stock.out);
    const Outcome forecast = cli(words("forecast --now 2026-03-12T18:00 --ledger") << address());
    EXPECT_EQ(forecast.code, 0) << forecast.err;
    expectGolden("forecast.txt", forecast.out);
    const Outcome history = cli({QStringLiteral("history"), QStringLiteral("--ledger"), address(),
                                 QStringLiteral("--customer"), QStringLiteral("0417")});
    EXPECT_EQ(history.code, 0);
    expectGolden("history.txt", history.out);
}

TEST_P(DayOnEngine, NeedsALedgerOfItsOwn) {
    const QStringList twice = kDay + QStringList{QStringLiteral("--ledger"), address()};
    ASSERT_EQ(cli(twice).code, 0);
    EXPECT_THAT(refusalOf(twice), HasSubstr("not empty"));
    EXPECT_EQ(cli({QStringLiteral("check"), QStringLiteral("--ledger"), address()}).code, 0);
}

TEST(Day, LeavesThePapersAndNothingElse) {
    const QTemporaryDir folder;
    const QString out = folder.filePath(QStringLiteral("a/day"));
    const Outcome run = cli(kDay + QStringList{QStringLiteral("--out"), out});
    ASSERT_EQ(run.code, 0) << run.err;
    EXPECT_EQ(run.err, "");
    EXPECT_EQ(QDir(out).entryList(QDir::AllEntries | QDir::NoDotAndDotDot),
              (QStringList{QStringLiteral("head.png"), QStringLiteral("job-card.pdf")}));
    QFile pdf(QDir(out).filePath(QStringLiteral("job-card.pdf")));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
    EXPECT_FALSE(QImage(QDir(out).filePath(QStringLiteral("head.png"))).isNull());
    EXPECT_THAT(run.out, HasSubstr((out + QStringLiteral("/job-card.pdf")).toStdString()));
}

TEST(Day, SaysWhereItCannotLeaveThem) {
    EXPECT_THAT(refusalOf(kDay + QStringList{QStringLiteral("--out"), QStringLiteral("/proc/day")}),
                HasSubstr("/proc/day"));
}

TEST(Day, AFullDiskIsABrokenWorld) {
    for (const char* paper : {"job-card.pdf", "head.png"}) {
        const QTemporaryDir folder;
        ASSERT_TRUE(QFile::link(QStringLiteral("/dev/full"), folder.filePath(QString::fromUtf8(paper))));
        const Outcome run = cli(kDay + QStringList{QStringLiteral("--out"), folder.path()});
        EXPECT_EQ(run.code, 3) << paper;
        EXPECT_EQ(run.out, "");
        EXPECT_THAT(run.err, HasSubstr(paper));
        EXPECT_THAT(run.err, HasSubstr("No space left on device"));
        EXPECT_EQ(std::ranges::count(run.err, '\n'), 1) << run.err;
    }
}

TEST(Day, HasEveryStationAsJson) {
    const Outcome run = cli(kDay + QStringList{QStringLiteral("--json")});
    ASSERT_EQ(run.code, 0) << run.err;
    const QJsonArray scenes =
        QJsonDocument::fromJson(QByteArray::fromStdString(run.out)).object()[QStringLiteral("scenes")].toArray();
    QStringList stations;
    for (const auto& scene : scenes) {
        stations << scene.toObject()[QStringLiteral("station")].toString();
    }
    for (const char* station : {"counter", "bench", "stockroom"}) {
        EXPECT_TRUE(stations.contains(QString::fromUtf8(station))) << station;
    }
}

TEST(Day, WorksOnAnyDay) {
    for (const char* now : {"2026-03-15T23:59", "2026-03-29T01:30", "2026-12-31T17:55", "2028-02-29T10:00"}) {
        EXPECT_EQ(cli({QStringLiteral("day"), QStringLiteral("--now"), QString::fromUtf8(now)}).code, 0) << now;
    }
    EXPECT_EQ(cli({QStringLiteral("day")}).code, 0);
}

} // namespace
} // namespace rw::cli::test
