// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"

#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rw::cli::test {
namespace {
using testing::HasSubstr;

class Draw : public testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const { return m_dir.filePath(QLatin1String(name)); }
    [[nodiscard]] QStringList words(const QString& out) const {
        return {QStringLiteral("draw"), QStringLiteral("--input"), QStringLiteral("-"), QStringLiteral("--out"), out};
    }
    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

private:
    QTemporaryDir m_dir;
};

TEST_F(Draw, LeavesAPictureOfTheRoute) {
    const QString out = path("head.svg");
    const Outcome drawn = cli(words(out), R"({"method": "one-piece", "route": "plain-2"})");
    EXPECT_EQ(drawn.code, 0) << drawn.err;
    EXPECT_THAT(drawn.out, HasSubstr("head.svg"));
    const QByteArray svg = bytesOf(out);
    EXPECT_TRUE(svg.contains("<title>one piece, two top crosses on the short side</title>"));
    EXPECT_TRUE(svg.contains("16 mains and 19 crosses"));
    EXPECT_TRUE(svg.contains(">X19<"));
}

TEST_F(Draw, TheSamePlanIsTheSamePicture) {
    EXPECT_EQ(cli(words(path("one.svg")), "{}").code, 0);
    EXPECT_EQ(cli(words(path("two.svg")), "{}").code, 0);
    EXPECT_FALSE(bytesOf(path("one.svg")).isEmpty());
    EXPECT_EQ(bytesOf(path("one.svg")), bytesOf(path("two.svg")));
}

TEST_F(Draw, RefusesAsCutDoesAndLeavesNoFile) {
    EXPECT_THAT(refusalOf(words(path("head.svg")), R"({"route": "zigzag"})"), HasSubstr("zigzag"));
    EXPECT_FALSE(QFile::exists(path("head.svg")));
    EXPECT_THAT(refusalOf(words(path("nowhere/head.svg")), "{}"), HasSubstr("nowhere"));
}

TEST_F(Draw, NeverReplacesItsOwnRequest) {
    QFile request(path("head.json"));
    ASSERT_TRUE(request.open(QIODevice::WriteOnly));
    request.write("{}");
    request.close();
    EXPECT_THAT(refusalOf({QStringLiteral("draw"), QStringLiteral("--input"), request.fileName(),
                           QStringLiteral("--out"), request.fileName()}),
                HasSubstr("head.json"));
    EXPECT_EQ(bytesOf(request.fileName()), "{}");
}

} // namespace
} // namespace rw::cli::test
