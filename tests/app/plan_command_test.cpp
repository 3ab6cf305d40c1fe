// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"
#include "tests/core/stock/stock_data.h"

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
using namespace stock::test;

const QStringList kPlan = {QStringLiteral("plan"), QStringLiteral("--input"), QStringLiteral("-"),
                           QStringLiteral("--json")};

QJsonArray mixAsJson() {
    const stock::PieceMix mix = mixedPieces();
    QJsonArray shares;
    for (const stock::PieceMix::Share& share : mix.shares()) {
        shares.append(QJsonObject{{QStringLiteral("lengthMm"), qint64{share.length.millimetres()}},
                                  {QStringLiteral("share"), share.share}});
    }
    return shares;
}

/// A list of things that have an id and a length in metres.
QJsonArray listAsJson(const char* prefix, const std::vector<double>& lengths) {
    QJsonArray list;
    for (const Length length : metres(lengths)) {
        list.append(QJsonObject{{QStringLiteral("id"), QLatin1String(prefix) + QString::number(list.size())},
                                {QStringLiteral("lengthMm"), qint64{length.millimetres()}}});
    }
    return list;
}

QByteArray question(const std::vector<double>& lots, const std::vector<double>& pieces, int shortestUsefulMm = 5'000) {
    return QJsonDocument(QJsonObject{{QStringLiteral("lots"), listAsJson("lot", lots)},
                                     {QStringLiteral("pieces"), listAsJson("piece", pieces)},
                                     {QStringLiteral("pieceMix"), mixAsJson()},
                                     {QStringLiteral("shortestUsefulMm"), shortestUsefulMm}})
        .toJson();
}

QJsonObject planned(const QByteArray& input) {
    const Outcome run = cli(kPlan, input);
    EXPECT_EQ(run.code, 0) << run.err;
    EXPECT_EQ(run.err, "");
    return QJsonDocument::fromJson(QByteArray::fromStdString(run.out)).object();
}

/// Every piece has a lot, and no lot gives more than it holds.
void expectWholePlan(const QJsonObject& plan, const std::vector<double>& lots, const std::vector<double>& pieces) {
    std::vector<Length> left = metres(lots);
    const QJsonArray assignments = plan[QLatin1String("assignments")].toArray();
    ASSERT_EQ(static_cast<std::size_t>(assignments.size()), pieces.size());
    for (qsizetype i = 0; i < assignments.size(); ++i) {
        const QJsonObject one = assignments[i].toObject();
        EXPECT_EQ(one[QLatin1String("piece")].toString(), QStringLiteral("piece%1").arg(i));
        const QString lot = one[QLatin1String("lot")].toString();
        ASSERT_TRUE(lot.startsWith(QLatin1String("lot")));
        left.at(lot.mid(3).toULong()) -= metres(pieces[static_cast<std::size_t>(i)]);
    }
    for (const Length length : left) {
        EXPECT_FALSE(length.isNegative());
    }
}

// remnant-exact-cases.json: made for this project by another program, by trying every plan; to a millimetre.
TEST(PlanCommand, FindsTheOptimumOfTheExactCases) {
    for (const ExactCase& each : exactCases()) {
        const QJsonObject plan = planned(question(each.stocks, each.pieces));
        expectWholePlan(plan, each.stocks, each.pieces);
        EXPECT_NEAR(plan[QLatin1String("deltaMm")].toDouble(), each.optimum * 1'000, 1);
        EXPECT_TRUE(plan[QLatin1String("proven")].toBool());
    }
}

// cut-instances.json: queues up to 30 pieces on 6 lots. Its optimum has another aim; here they only have to be planned
// whole, with room to spare on the first lot.
TEST(PlanCommand, PlansOrdinaryQueues) {
    for (const char* set : {"brief", "mixed", "two"}) {
        for (const ScrapCase& each : scrapCases(set)) {
            expectWholePlan(planned(question(each.stocks, each.pieces)), each.stocks, each.pieces);
        }
    }
}

TEST(PlanCommand, SaysItInWordsToo) {
    const QByteArray input = R"({"lots": [{"id": "K-2", "lengthMm": 12300, "uncertaintyMm": 30},
                                          {"id": "K-4", "lengthMm": 200000, "sealed": true}],
        "pieces": [{"id": "mains", "lengthMm": 6200}, {"id": "rope", "lengthMm": 250000}],
        "pieceMix": [{"lengthMm": 6000, "share": 1}], "shortestUsefulMm": 5000})";
    const Outcome run = cli({QStringLiteral("plan"), QStringLiteral("--input=-")}, input);
    EXPECT_EQ(run.code, 0);
    EXPECT_EQ(run.out, "mains  6.2 m  off K-2\n"
                       "rope   250 m  no lot\n"
                       "\n"
                       "rope: there is no lot for it\n"
                       "K-2: leaves 6.1 m: one more piece later\n");
}

TEST(PlanCommand, AHostileRequestIsRefusedByName) {
    struct Bad {
        const char* json;
        const char* named;
    };
    const Bad bads[] = {
        {"", "empty"},
        {"nonsense", "JSON"},
        {"[]", "object"},
        {"{}", "key lots is missing"},
        {R"({"lots": 1})", "key pieces is missing"},
        {R"({"lots": {}, "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})", "lots must be a list"},
        {R"({"lots": [[]], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})", "lots[0]"},
        {R"({"lots": [{"id": "a"}], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})", "lots[0].lengthMm"},
        {R"({"lots": [{"id": "a", "lengthMm": -5}], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})",
         "lots[0].lengthMm"},
        {R"({"lots": [{"id": "a", "lengthMm": 1e999}], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})",
         "lengthMm"},
        {R"({"lots": [{"id": "a", "id": "b", "lengthMm": 5}], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})",
         "given twice"},
        {R"({"lots": [], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})", "pieceMix"},
        {R"({"lots": [], "pieces": [], "pieceMix": [{"lengthMm": 1, "share": "all"}], "shortestUsefulMm": 1})",
         "pieceMix[0].share"},
        {R"({"lots": [], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1, "lot\u001b[31m": 1})", "not known"},
    };
    for (const Bad& bad : bads) {
        const std::string sentence = refusalOf(kPlan, bad.json);
        EXPECT_THAT(sentence, HasSubstr(bad.named)) << bad.json;
        EXPECT_EQ(sentence.find('\x1b'), std::string::npos);
    }
    EXPECT_THAT(refusalOf(kPlan, QByteArray(3 << 20, '[')), HasSubstr("1 MB"));
    EXPECT_THAT(refusalOf({QStringLiteral("plan"), QStringLiteral("--json")}), HasSubstr("--ledger or --input is missing"));
    EXPECT_THAT(refusalOf({QStringLiteral("plan"), QStringLiteral("--input"), QStringLiteral("/no/such.json")}),
                HasSubstr("/no/such.json"));
}

/// As many lots and pieces as are allowed, all different: an answer in bounded time, with an honest flag.
TEST(PlanCommand, TheLargestRequestIsAnswered) {
    for (const int step : {1, 10, 500}) {
        QJsonArray lots;
        QJsonArray pieces;
        for (int i = 0; i < 500; ++i) {
            lots.append(QJsonObject{{QStringLiteral("id"), i}, {QStringLiteral("lengthMm"), 20'000 + (i + 1) * step}});
            pieces.append(QJsonObject{{QStringLiteral("id"), i}, {QStringLiteral("lengthMm"), 5'000 + (i + 1) * step}});
        }
        const QJsonObject request{{QStringLiteral("lots"), lots},
                                  {QStringLiteral("pieces"), pieces},
                                  {QStringLiteral("pieceMix"), mixAsJson()},
                                  {QStringLiteral("shortestUsefulMm"), 5'000},
                                  {QStringLiteral("limitMs"), 100}};
        const QJsonObject plan = planned(QJsonDocument(request).toJson(QJsonDocument::Compact));
        EXPECT_EQ(plan[QLatin1String("assignments")].toArray().size(), 500);
        EXPECT_FALSE(plan[QLatin1String("proven")].toBool());
        const QJsonArray why = plan[QLatin1String("why")].toArray();
        EXPECT_EQ(why.last().toObject()[QLatin1String("kind")].toString(), QStringLiteral("time-was-up"));
    }
}

} // namespace
} // namespace rw::cli::test
