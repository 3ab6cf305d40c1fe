// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rw::cli::test {
namespace {

using testing::HasSubstr;

const QStringList kCut = {QStringLiteral("cut"), QStringLiteral("--input"), QStringLiteral("-"),
                          QStringLiteral("--json")};

struct BadCut {
    const char* json;
    const char* named; ///< what the sentence must name
};

const BadCut kBadCuts[] = {
    {"", "empty"},
    {"nonsense", "JSON"},
    {"{", "JSON"},
    {"{} {}", "JSON"},
    {"[]", "object"},
    {"\"tennis\"", "the input must be one object"},
    {"null", "the input must be one object"},
    {" 1\n", "the input must be one object"},
    {"1, 2", "JSON"},
    {"\xff\xfe", ""},
    {R"({"sprot": "tennis"})", "sprot"},
    {R"({"Sport": "tennis"})", "Sport"},
    {R"({"sport": "cricket"})", "tennis, squash or badminton"},
    {R"({"sport": 7})", "sport"},
    {R"({"sport": null})", "sport"},
    {R"({"sport": "tennis", "sport": "squash"})", "sport is given twice"},
    {R"({"hoop": []})", "hoop"},
    {R"({"hoop": {"length": 329}})", "hoop.length"},
    {R"({"hoop": {"lengthMm": "329"}})", "hoop.lengthMm"},
    {R"({"hoop": {"lengthMm": -5}})", "150 to 450"},
    {R"({"hoop": {"lengthMm": 1e308}})", "hoop.lengthMm"},
    {R"({"hoop": {"lengthMm": 1e999}})", "hoop.lengthMm cannot be “1e999”"},
    {R"({"sport": "tennis "})", "no blank before or behind it"},
    {R"({"hoop": {"openThroat": "yes"}})", "hoop.openThroat"},
    {R"({"hoop": {"wallMm": 0}})", "hoop.wallMm"},
    {R"({"pattern": {"mains": 3}})", "pattern.mains"},
    {R"({"pattern": {"mains": 16.5}})", "pattern.mains"},
    {R"({"pattern": {"mains": 99999999999}})", "pattern.mains"},
    {R"({"pattern": {"crosses": -19}})", "pattern.crosses"},
    {R"({"pattern": {"mainsSpanMm": 900}})", "pattern.mainsSpanMm"},
    {R"({"pattern": {"mainsStart": "left"}})", "pattern.mainsStart"},
    {R"({"method": "three-piece"})", "method"},
    {R"({"method": "one-piece", "route": "spiral"})", "plain-2"},
    {R"({"route": 2})", "route"},
    {R"({"method": "one-piece", "route": "plain-1", "pattern": {"mainsStart": "throat"}})", "wrap-first-2"},
    {R"({"shortSide": "middle"})", "shortSide"},
    {R"({"mains": {"tension": "abc"}})", "abc"},
    {R"({"mains": {"tension": "5000 lb"}})", "5000 lb"},
    {R"({"mains": {"tension": "-3"}})", "-3"},
    {R"({"mains": {"tension": ""}})", "mains.tension"},
    {R"({"mains": {"tension": 55}})", "as in \"55 lb\""},
    {R"({"mains": {"tension": "55"}})", "as in \"55 lb\""},
    {R"({"mains": {"tension": "55 stone"}})", "55 stone"},
    {R"({"mains": {"material": "steel"}})", "mains.material"},
    {R"({"mains": {"diameterMm": 13}})", "mains.diameterMm"},
    {R"({"mains": {"colour": "black"}})", "mains.colour"},
    {R"({"ends": {"reachMm": -1}})", "ends.reachMm"},
    {R"({"ends": {"crossesStart": "glue"}})", "ends.crossesStart"},
    {R"({"stretch": "no"})", "stretch"},
    {R"({"crimp": 1})", "crimp"},
    {R"({"ceiling": 0})", "ceiling"},
    {R"({"ceiling": 2})", "ceiling"},
    {R"({"tapeStepMm": 0})", "tapeStepMm"},
    {R"({"tapeStepMm": 0.5})", "tapeStepMm"},
    {R"({"costPerMetre": -1, "spoiledJobCost": 10})", "costPerMetre"},
};

TEST(BadInput, ACutThatCannotBePlannedIsRefusedByName) {
    for (const BadCut& bad : kBadCuts) {
        EXPECT_THAT(refusalOf(kCut, bad.json), HasSubstr(bad.named)) << bad.json;
    }
}

TEST(BadInput, AKeyOfAnyContentsStaysOneLine) {
    const std::string sentence = refusalOf(kCut, R"({"a\nb\u001b[31m\u202e": 1})");
    EXPECT_EQ(sentence.find('\x1b'), std::string::npos);
    EXPECT_LT(refusalOf(kCut, "{\"" + QByteArray(200000, 'k') + "\": 1}").size(), 1000U);
}

TEST(BadInput, TooMuchIsRefusedBeforeItIsRead) {
    EXPECT_THAT(refusalOf(kCut, QByteArray(3 << 20, ' ')), HasSubstr("1 MB"));
}

TEST(BadInput, DeepNestingIsRefused) { EXPECT_THAT(refusalOf(kCut, QByteArray(20000, '[')), HasSubstr("JSON")); }

TEST(BadInput, FilesThatCannotBeRead) {
    const QTemporaryDir folder;
    const auto cut = [](const QString& path) {
        return refusalOf({QStringLiteral("cut"), QStringLiteral("--input"), path, QStringLiteral("--json")});
    };
    EXPECT_THAT(cut(folder.filePath(QStringLiteral("missing.json"))), HasSubstr("missing.json"));
    EXPECT_THAT(cut(folder.path()), HasSubstr("directory"));
    EXPECT_THAT(cut(QString()), HasSubstr("value of --input is missing"));
}

TEST(BadInput, WordsThatAreNoCommandLine) {
    const auto refused = [](const char* words) {
        return refusalOf(QString::fromUtf8(words).split(QLatin1Char(' '), Qt::SkipEmptyParts));
    };
    EXPECT_THAT(refused("stok"), HasSubstr("day, check, demo, stock, order, weigh, history, books, learn, export, card, cut"));
    EXPECT_THAT(refused("stock"), HasSubstr("--ledger is missing"));
    EXPECT_THAT(refused("stock --ledger"), HasSubstr("value of --ledger is missing"));
    EXPECT_THAT(refused("stock --legder x"), HasSubstr("--legder"));
    EXPECT_THAT(refused("stock --ledger x --ledger y"), HasSubstr("given twice"));
    EXPECT_THAT(refused("stock shop.ledger"), HasSubstr("shop.ledger"));
    EXPECT_THAT(refused("cut --input x --json=yes"), HasSubstr("--json=yes"));
    EXPECT_THAT(refused("day --now tomorrow"), HasSubstr("tomorrow"));
    EXPECT_THAT(refused("day --now 2026-02-30T10:00"), HasSubstr("2026-02-30"));
    EXPECT_THAT(refused("card --ledger x --job N --out y"), HasSubstr("“N” cannot be read as a job number"));
    EXPECT_THAT(refused("card --ledger x --job 0 --out y"), HasSubstr("job number"));
    EXPECT_THAT(refused("card --ledger x --job 1 --out y --paper A3"), HasSubstr("A4, A5, A6, A7, 62x90 or 62x25"));
    EXPECT_THAT(refused("card --ledger x --job 1 --out y --slip receipt"), HasSubstr("card, tag, ticket, label or ready"));
}

TEST(BadInput, LedgersThatAreNone) {
    const QTemporaryDir folder;
    const QString text = folder.filePath(QStringLiteral("notes.txt"));
    const QByteArray words = "Petra: 54/52, felt a touch stiff\n";
    {
        QFile file(text);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(words);
    }
    for (const char* command : {"check", "stock", "demo"}) {
        const auto refused = [&](const QString& ledger) {
            return refusalOf({QString::fromUtf8(command), QStringLiteral("--ledger"), ledger});
        };
        EXPECT_THAT(refused(text), HasSubstr("not a ledger"));
        EXPECT_THAT(refused(folder.path()), HasSubstr("folder"));
        EXPECT_THAT(refused(QStringLiteral("/no/such/folder/shop.ledger")), HasSubstr("/no/such/folder"));
        EXPECT_THAT(refused(QStringLiteral("/proc/shop.ledger")), HasSubstr("/proc/shop.ledger cannot be opened"));
        EXPECT_THAT(refused(QString()), HasSubstr("missing"));
        EXPECT_THAT(refused(QStringLiteral(" \n")), HasSubstr("missing"));
        EXPECT_THAT(refused(QStringLiteral("postgresql://nobody@localhost:1/none")), HasSubstr("cannot be opened"));
    }
    QFile file(text);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), words);
}

TEST(BadInput, LookingDoesNotMakeALedger) {
    const QTemporaryDir folder;
    const QString missing = folder.filePath(QStringLiteral("shop.ledger"));
    for (const char* command : {"check", "stock"}) {
        EXPECT_THAT(refusalOf({QString::fromUtf8(command), QStringLiteral("--ledger"), missing}),
                    HasSubstr("shop.ledger"));
    }
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

} // namespace
} // namespace rw::cli::test
