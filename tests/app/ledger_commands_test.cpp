// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"
#include "tests/app/demo_ledger.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rw::cli::test {
namespace {

using testing::HasSubstr;

class LedgerCommands : public sql::test::OnEngine {
protected:
    void SetUp() override {
        standIn(demoLedger().copy(GetParam()));
        m_ledger = QString::fromStdString(place().address());
    }

    Outcome on(const char* command, QStringList more = {}) {
        return cli(QStringList{QString::fromUtf8(command), QStringLiteral("--ledger"), m_ledger} + more);
    }
    std::string refused(const char* command, QStringList more = {}) {
        return refusalOf(QStringList{QString::fromUtf8(command), QStringLiteral("--ledger"), m_ledger} + more);
    }
    QJsonObject json(const char* command, QStringList more = {}) {
        const Outcome run = on(command, more + QStringList{QStringLiteral("--json")});
        EXPECT_EQ(run.code, 0) << run.err;
        return QJsonDocument::fromJson(QByteArray::fromStdString(run.out)).object();
    }
    QString m_ledger;
};
ON_BOTH_ENGINES(LedgerCommands);

TEST_P(LedgerCommands, ASecondDemoIsRefused) { EXPECT_THAT(refused("demo"), HasSubstr("not empty")); }

TEST_P(LedgerCommands, StockIsWhatTheReelsHold) {
    // The shop of the acceptance scenarios: L-3 holds 48.7 m, of which 32.4 m are promised; T-1 27.6 m.
    const QJsonArray strings = json("stock")[QStringLiteral("strings")].toArray();
    ASSERT_EQ(strings.size(), 4);
    const QJsonObject larkspun = strings[0].toObject(); // it runs short, so it stands first
    EXPECT_EQ(larkspun[QStringLiteral("code")].toString().toStdString(), "L");
    EXPECT_EQ(larkspun[QStringLiteral("leftMm")].toInt(), 48700);
    EXPECT_EQ(larkspun[QStringLiteral("promisedMm")].toInt(), 32400);
    EXPECT_EQ(larkspun[QStringLiteral("freeMm")].toInt(), 16300);
    EXPECT_THAT(on("stock").out, HasSubstr("2 jobs; a third would be 0.3 m short"));
}

TEST_P(LedgerCommands, ThePlanIsTheQueueAsItStands) {
    const QJsonArray strings = json("plan")[QStringLiteral("strings")].toArray();
    ASSERT_EQ(strings.size(), 3); // nobody waits for T
    const QJsonObject kestrelline = strings[0].toObject();
    EXPECT_EQ(kestrelline[QStringLiteral("code")].toString().toStdString(), "K");
    EXPECT_TRUE(kestrelline[QStringLiteral("proven")].toBool());
    ASSERT_EQ(kestrelline[QStringLiteral("cuts")].toArray().size(), 5);
    const QJsonObject first = kestrelline[QStringLiteral("cuts")][0].toObject();
    EXPECT_EQ(first[QStringLiteral("job")].toInt(), 2120);
    EXPECT_EQ(first[QStringLiteral("lengthMm")].toInt(), 11200);
    EXPECT_EQ(first[QStringLiteral("lot")].toString().toStdString(), "K-7");
    EXPECT_TRUE(first[QStringLiteral("pinned")].toBool());
    const QJsonObject why = kestrelline[QStringLiteral("why")][0].toObject();
    EXPECT_EQ(why[QStringLiteral("kind")].toString().toStdString(), "leaves-scrap");
    EXPECT_EQ(why[QStringLiteral("leavesMm")].toInt(), 4000);
    const std::string text = on("plan").out;
    EXPECT_THAT(text, HasSubstr("2120 one piece  11.2 m  off K-7  chosen by hand"));
    EXPECT_THAT(text, HasSubstr("2122 one piece  10.8 m  off L-3  begun"));
    EXPECT_THAT(text, HasSubstr("K-7: leaves 4 m: too short to keep"));
}

TEST_P(LedgerCommands, TheForecastAndTheStockAgree) {
    const QStringList then{QStringLiteral("--now"), QStringLiteral("2026-03-12T11:00")};
    const QJsonArray stock = json("stock", then)[QStringLiteral("strings")].toArray();
    const QJsonArray forecast = json("forecast", then)[QStringLiteral("strings")].toArray();
    ASSERT_EQ(stock.size(), forecast.size());
    for (qsizetype i = 0; i < stock.size(); ++i) {
        for (const char* key : {"code", "wholeJobsFree", "runningShort", "onRequest", "s", "orderPoint", "rate",
                                "chanceOfNone", "runOut"}) {
            EXPECT_FALSE(forecast[i][QLatin1String(key)].isUndefined()) << key;
            EXPECT_EQ(stock[i][QLatin1String(key)], forecast[i][QLatin1String(key)]) << key;
        }
    }
    EXPECT_TRUE(forecast[0][QLatin1String("runningShort")].toBool());
    EXPECT_THAT(refused("forecast", {QStringLiteral("--input"), QStringLiteral("-")}), HasSubstr("--input"));
    EXPECT_THAT(refused("forecast", {QStringLiteral("--now"), QStringLiteral("soon")}), HasSubstr("soon"));
}

TEST_P(LedgerCommands, HistoryFindsByNameAndDigits) {
    EXPECT_EQ(on("history", {QStringLiteral("--customer"), QStringLiteral("lindobi")}).out,
              on("history", {QStringLiteral("--customer"), QStringLiteral("0417")}).out);
    const QJsonObject found = json("history", {QStringLiteral("--customer"), QStringLiteral("Lindobi")});
    const QJsonArray jobs =
        found[QStringLiteral("customers")].toArray()[0].toObject()[QStringLiteral("jobs")].toArray();
    ASSERT_EQ(jobs.size(), 2);
    const QJsonObject asked = jobs[1].toObject()[QStringLiteral("asked")].toObject();
    EXPECT_EQ(asked[QStringLiteral("mains")].toString().toStdString(), "54 lb");
    EXPECT_EQ(asked[QStringLiteral("crosses")].toString().toStdString(), "52 lb");
}

TEST_P(LedgerCommands, LearnTellsWhatTheCutsHaveTaught) {
    // The demo shop has strung for weeks and noted no tails: its frames are told of, the shop is not.
    const QJsonObject taught = json("learn");
    EXPECT_TRUE(taught[QStringLiteral("parts")].toArray().isEmpty());
    const QJsonArray frames = taught[QStringLiteral("frames")].toArray();
    ASSERT_FALSE(frames.isEmpty());
    for (const auto& each : frames) {
        const QJsonObject frame = each.toObject();
        EXPECT_GT(frame[QStringLiteral("n")].toInt(), 0);
        EXPECT_EQ(frame[QStringLiteral("measured")].toInt(), 0);
        EXPECT_EQ(frame[QStringLiteral("bias")].toDouble(), 0);
        EXPECT_GT(frame[QStringLiteral("sd")].toDouble(), 0);
        EXPECT_LT(frame[QStringLiteral("sd")].toDouble(), 0.06);
    }
    const std::string lines = on("learn").out;
    EXPECT_THAT(lines, HasSubstr("No tails were told yet"));
    EXPECT_THAT(lines, HasSubstr("Aldermoor 98"));
    EXPECT_THAT(lines, HasSubstr("came short")) << "a squash string of 7.3 m did";
}

TEST_P(LedgerCommands, NobodyFoundIsAnAnswer) {
    for (const char* text : {"nobody", "'; DROP TABLE customer; --", "%", "_", "", "\\", "٣"}) {
        const Outcome run = on("history", {QStringLiteral("--customer"), QString::fromUtf8(text)});
        EXPECT_TRUE(run.code == 1 || *text == '\0') << text << run.err;
        EXPECT_TRUE(run.code == 0 || run.out.empty());
    }
    EXPECT_EQ(on("check").code, 0);
}

TEST_P(LedgerCommands, ALongNameIsOnlyNotFound) {
    const Outcome run = on("history", {QStringLiteral("--customer"), QString(10000, QLatin1Char('x'))});
    EXPECT_EQ(run.code, 1);
    EXPECT_LT(run.err.size(), 200U);
}

TEST_P(LedgerCommands, ACardIsWritten) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("card.pdf"));
    const QStringList job = {QStringLiteral("--job"), QStringLiteral("2120"), QStringLiteral("--out")};
    const Outcome run = on("card", job + QStringList{path, QStringLiteral("--machine"), QStringLiteral("Bench B")});
    EXPECT_EQ(run.code, 0) << run.err;
    EXPECT_EQ(run.err, "");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    const Outcome tag = on("card", job + QStringList{path, QStringLiteral("--slip"), QStringLiteral("tag")});
    EXPECT_EQ(tag.code, 0) << tag.err;
    EXPECT_THAT(tag.out, HasSubstr("The tag of job 2120 is in"));
    const Outcome roll = on("card", job + QStringList{path, QStringLiteral("--slip"), QStringLiteral("tag"),
                                                      QStringLiteral("--paper"), QStringLiteral("62x90")});
    EXPECT_EQ(roll.code, 0) << roll.err;
    EXPECT_THAT(refused("card", job + QStringList{folder.filePath(QStringLiteral("no/card.pdf"))}),
                HasSubstr("cannot be written"));
    EXPECT_THAT(refused("card", job + QStringList{path, QStringLiteral("--machine"), QStringLiteral("Bench Z")}),
                HasSubstr("Bench Z"));
    EXPECT_THAT(refused("card", {QStringLiteral("--job"), QStringLiteral("99999"), QStringLiteral("--out"), path}),
                HasSubstr("99999"));
}

TEST_P(LedgerCommands, ACardForWhichThereIsNoRoomIsABrokenWorld) {
    const Outcome run = on("card", {QStringLiteral("--job"), QStringLiteral("2120"), QStringLiteral("--out"),
                                    QStringLiteral("/dev/full")});
    EXPECT_EQ(run.code, 3);
    EXPECT_EQ(run.out, "");
    EXPECT_EQ(run.err, "reelwright-cli: The file could not be written, and nothing of it was kept. Make room and do it "
                       "again. (/dev/full: No space left on device)\n");
}

TEST_P(LedgerCommands, TheBooksAddUpToWhatTheLedgerHolds) {
    const QJsonObject books = json("books", {QStringLiteral("--now"), QStringLiteral("2026-03-12T10:05")});
    EXPECT_EQ(books[QStringLiteral("currency")].toString(), QStringLiteral("GBP"));
    EXPECT_FALSE(books[QStringLiteral("open")].toArray().isEmpty());
    // March 2026 by London's clock: from the 1st 00:00 GMT to the 31st 23:00 GMT, when summer time has begun.
    const std::string minor = place().connect()->scalar(
        "SELECT coalesce(sum(amount_minor), 0) FROM payment WHERE at >= 1772323200000 AND at < 1774998000000");
    const Money taken = Money::fromMinor(std::stoll(minor), Currency::pounds());
    EXPECT_GT(taken.minor(), 0);
    EXPECT_EQ(books[QStringLiteral("month")].toObject()[QStringLiteral("total")].toString().toStdString(),
              taken.text());
    EXPECT_THAT(on("books", {QStringLiteral("--now"), QStringLiteral("2026-03-12T10:05")}).out,
                testing::AllOf(HasSubstr("Taken this month"), HasSubstr("owed"), HasSubstr("£")));
}

TEST_P(LedgerCommands, WhereTheOwnerHasAPinWhatTheShopPaidIsLeftOut) {
    const QTemporaryDir folder;
    const auto firstLineOfLots = [&] {
        EXPECT_EQ(on("export", {QStringLiteral("--out"), folder.path()}).code, 0);
        QFile lots(folder.filePath(QStringLiteral("lots.csv")));
        EXPECT_TRUE(lots.open(QIODevice::ReadOnly));
        return lots.readLine().toStdString();
    };
    EXPECT_THAT(firstLineOfLots(), HasSubstr(",price,shipping,"));
    EXPECT_TRUE(json("books")[QStringLiteral("earned")].isObject());
    place().connect()->execute("INSERT INTO setting (name, value) VALUES ('owner.pin-hash', 'a hash')");
    EXPECT_EQ(firstLineOfLots(), "tag,string,kind,owner,nominal_mm,length_mm,batch,received,closed\r\n");
    EXPECT_TRUE(json("books")[QStringLiteral("earned")].isNull());
    EXPECT_THAT(on("books").out, testing::AllOf(HasSubstr("hidden by the owner's PIN"), HasSubstr("Taken this month"),
                                                testing::Not(HasSubstr("string that was cut"))));
}

TEST_P(LedgerCommands, EverythingIsExported) {
    const QTemporaryDir folder;
    const QString out = folder.filePath(QStringLiteral("new/books"));
    const QJsonArray files = json("export", {QStringLiteral("--out"), out})[QStringLiteral("files")].toArray();
    EXPECT_EQ(files.size(), 12);
    const auto connection = place().connect();
    for (const QJsonValue& each : files) {
        const QString path = each.toObject()[QStringLiteral("file")].toString();
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        const QByteArray text = file.readAll();
        EXPECT_TRUE(text.endsWith("\r\n")) << path.toStdString();
        EXPECT_EQ(text.count("\r\n"), each.toObject()[QStringLiteral("rows")].toInt() + 1) << path.toStdString();
    }
    QFile lots(out + QStringLiteral("/lots.csv"));
    ASSERT_TRUE(lots.open(QIODevice::ReadOnly));
    EXPECT_THAT(lots.readAll().toStdString(), HasSubstr("\r\nL-3,L,reel,,200000,48700,"));
    QFile payments(out + QStringLiteral("/payments.csv"));
    ASSERT_TRUE(payments.open(QIODevice::ReadOnly));
    EXPECT_EQ(std::to_string(payments.readAll().count("\r\n") - 1), connection->scalar("SELECT count(*) FROM payment"));
    EXPECT_THAT(refused("export", {QStringLiteral("--out"), QStringLiteral("/dev/null/books")}),
                HasSubstr("cannot be made"));
}

TEST_P(LedgerCommands, CheckNamesWhatIsWrong) {
    EXPECT_EQ(on("check").code, 0);
    EXPECT_TRUE(json("check")[QStringLiteral("whole")].toBool());
    {
        // Somebody reaches behind the ledger's back.
        const auto connection = place().connect();
        connection->execute(onSqlite() ? "DROP TRIGGER lot_length_is_its_movements"
                                       : "DROP TRIGGER lot_length_is_its_movements ON lot");
        connection->execute("UPDATE lot SET length_mm = length_mm + 1000 WHERE tag = 'L-3'");
    }
    const Outcome run = on("check");
    EXPECT_EQ(run.code, 1);
    EXPECT_THAT(run.out, HasSubstr("L-3"));
    const Outcome asJson = on("check", {QStringLiteral("--json")});
    EXPECT_EQ(asJson.code, 1);
    EXPECT_THAT(asJson.out, HasSubstr("\"whole\": false"));
}

} // namespace
} // namespace rw::cli::test
