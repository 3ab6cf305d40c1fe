// SPDX-License-Identifier: GPL-3.0-or-later
// What of a cut request is a list or has names of its own: evidence, a written route, places; and sets.
#include "core/exchange/cut_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace rw;
using rw::exchange::cutRequestFromJson;
using rw::length::CutRequest;
using rw::length::FinishedPiece;
using rw::length::MeasuredWith;
using testing::HasSubstr;

namespace {

CutRequest read(const std::string& json) { return cutRequestFromJson(json).value(); }

std::vector<FinishedPiece> evidence(const std::string& entries) {
    return read(R"({"evidence": [)" + entries + "]}").finished;
}

Refusal refusal(const std::string& json) {
    auto request = cutRequestFromJson(json);
    if (request) {
        const auto plan = length::planCut(*request);
        EXPECT_FALSE(plan) << json;
        return plan ? Refusal(Code::NotFound) : plan.error();
    }
    return request.error();
}

QJsonObject planned(const std::string& json) {
    const CutRequest request = read(json);
    const std::string out = exchange::cutPlanToJson(length::planCut(request).value(), request);
    return QJsonDocument::fromJson(QByteArray::fromStdString(out)).object();
}

QJsonObject firstPiece(const QJsonObject& plan) { return plan[QStringLiteral("pieces")].toArray()[0].toObject(); }

TEST(EvidenceJson, EveryKindIsRead) {
    const auto seen = evidence(R"(
        {"piece": "mains", "cutMm": 5800, "tailsMm": 700, "measuredWith": "tape"},
        {"piece": "crosses", "cutMm": 5300, "tailsBetweenMm": [60, 200], "measuredWith": "arm spans"},
        {"piece": "whole", "cutMm": 11000, "outcome": "enough", "reelEnd": true},
        {"piece": "short side", "cutMm": 3000, "outcome": "short", "shortByMm": 120, "measuredWith": "head lengths"})");
    ASSERT_EQ(seen.size(), 4U);
    EXPECT_EQ(seen[0].role, PieceRole::Mains);
    EXPECT_EQ(seen[0].outcome, FinishedPiece::Outcome::Tails);
    EXPECT_EQ(seen[0].cutMm, 5800);
    EXPECT_EQ(seen[0].tailsLowMm, 700);
    EXPECT_EQ(seen[0].tailsHighMm, 700);
    EXPECT_EQ(seen[0].measuredWith, MeasuredWith::Tape);
    EXPECT_EQ(seen[1].role, PieceRole::Crosses);
    EXPECT_EQ(seen[1].tailsLowMm, 60);
    EXPECT_EQ(seen[1].tailsHighMm, 200);
    EXPECT_EQ(seen[2].outcome, FinishedPiece::Outcome::Enough);
    EXPECT_TRUE(seen[2].reelEnd);
    EXPECT_FALSE(seen[2].shortSide);
    EXPECT_EQ(seen[3].outcome, FinishedPiece::Outcome::Short);
    EXPECT_EQ(seen[3].shortByMm, 120);
    EXPECT_TRUE(seen[3].shortSide);
}

TEST(EvidenceJson, ErrorsNameTheKeyAndWhatFits) {
    const auto expect = [](const std::string& entry, Code code, const std::string& key, const std::string& says) {
        const Refusal refused =
            refusal(R"({"evidence": [{"piece": "mains", "cutMm": 5800, "outcome": "enough"}, )" + entry + "]}");
        EXPECT_EQ(refused.code(), code) << entry;
        EXPECT_EQ(refused.text(code == Code::Missing ? "what" : "key"), key) << entry;
        EXPECT_THAT(refused.text(code == Code::UnknownKey ? "known" : "expected"), HasSubstr(says)) << entry;
    };
    expect("7", Code::WrongType, "evidence[1]", "an object");
    expect(R"({"piece": "mains", "cutMm": 5800, "outcome": "enough", "tail": 5})", Code::UnknownKey, "evidence[1].tail",
           "tailsBetweenMm");
    expect(R"({"piece": "grip", "cutMm": 5800, "outcome": "enough"})", Code::ImpossibleValue, "evidence[1].piece",
           "mains, crosses, whole or short side");
    expect(R"({"cutMm": 5800, "outcome": "enough"})", Code::Missing, "key evidence[1].piece", "");
    expect(R"({"piece": "mains", "outcome": "enough"})", Code::Missing, "key evidence[1].cutMm", "");
    expect(R"({"piece": "mains", "cutMm": 5800})", Code::ImpossibleValue, "evidence[1]",
           "one of tailsMm, tailsBetweenMm and outcome");
    expect(R"({"piece": "mains", "cutMm": 5800, "tailsMm": 700, "outcome": "enough"})", Code::ImpossibleValue,
           "evidence[1]", "one of tailsMm, tailsBetweenMm and outcome");
    expect(R"({"piece": "mains", "cutMm": 5800, "tailsBetweenMm": [1]})", Code::WrongType, "evidence[1].tailsBetweenMm",
           "two numbers");
    expect(R"({"piece": "mains", "cutMm": 5800, "tailsBetweenMm": [200, 60]})", Code::ImpossibleValue,
           "evidence[1].tailsBetweenMm[1]", "200 to 5800");
    expect(R"({"piece": "mains", "cutMm": 5800, "outcome": "enough", "shortByMm": 20})", Code::ImpossibleValue,
           "evidence[1]", "outcome \"short\"");
    expect(R"({"piece": "mains", "cutMm": 5800, "tailsMm": 5900})", Code::ImpossibleValue, "evidence[1].tailsMm",
           "0 to 5800");
    expect(R"({"piece": "mains", "cutMm": 580, "outcome": "enough"})", Code::ImpossibleValue, "evidence[1].cutMm",
           "by the head's measurements");
    expect(R"({"piece": "whole", "cutMm": 11000, "outcome": "enough"})", Code::ImpossibleValue, "evidence[1].piece",
           "mains or crosses");
}

TEST(EvidenceJson, ThePlanTellsWhatItLearned) {
    const std::string five = [] {
        std::string list;
        for (int i = 0; i < 5; ++i) {
            list += R"({"piece": "mains", "cutMm": 5850, "tailsMm": 700})";
            list += i < 4 ? ", " : "";
        }
        return list;
    }();
    const QJsonObject before = firstPiece(planned("{}"));
    const QJsonObject after = firstPiece(planned(R"({"evidence": [)" + five + "]}"));
    EXPECT_EQ(before[QStringLiteral("evidenceUsed")].toInt(), 0);
    EXPECT_EQ(after[QStringLiteral("evidenceUsed")].toInt(), 5);
    EXPECT_LT(after[QStringLiteral("needSdMm")].toDouble(), 0.7 * before[QStringLiteral("needSdMm")].toDouble());
    for (const QJsonObject& piece : {before, after}) {
        const QJsonObject quantiles = piece[QStringLiteral("quantilesMm")].toObject();
        EXPECT_EQ(quantiles[QStringLiteral("p50")], piece[QStringLiteral("needMm")]);
        EXPECT_GT(quantiles[QStringLiteral("p90")].toDouble(), quantiles[QStringLiteral("p50")].toDouble());
        EXPECT_GT(quantiles[QStringLiteral("p99")].toDouble(), quantiles[QStringLiteral("p90")].toDouble());
    }
    // 5850 - 700 + 2 (300 - 60) mm each time.
    EXPECT_NEAR(after[QStringLiteral("needMm")].toDouble(), 5630, 60);
    const QJsonArray why = planned(R"({"evidence": [)" + five + "]}")[QStringLiteral("why")].toArray();
    QStringList kinds;
    for (const auto& reason : why) {
        kinds << reason.toObject()[QStringLiteral("kind")].toString();
    }
    EXPECT_TRUE(kinds.contains(QStringLiteral("own-jobs")));
    EXPECT_TRUE(kinds.contains(QStringLiteral("own-needs")));
    EXPECT_TRUE(kinds.contains(QStringLiteral("corrected")));
}

const std::string kRoute = R"("pattern": {"mains": 8, "crosses": 6, "mainsStart": "head"},
    "ownRoute": {"short": ["1L", "2L", "3L", "4L", "X1"], "long": ["1R", "2R", "3R", "4R", "X2", "X3", "X4", "X5", "X6"]})";

TEST(OwnRouteJson, IsStrungInOnePiece) {
    const QJsonObject plan = planned("{" + kRoute + "}");
    EXPECT_EQ(firstPiece(plan)[QStringLiteral("name")].toString(), QStringLiteral("whole"));
    const QJsonArray arms = firstPiece(plan)[QStringLiteral("arms")].toArray();
    EXPECT_EQ(arms[0].toObject()[QStringLiteral("strings")].toArray()[4].toObject()[QStringLiteral("id")].toString(),
              QStringLiteral("X1"));
    EXPECT_EQ(arms[0].toObject()[QStringLiteral("side")].toString(), QStringLiteral("left"));
    EXPECT_TRUE(length::planCut(read(R"({"shortSide": "left", )" + kRoute + "}")));
}

TEST(OwnRouteJson, ErrorsNameTheKeyAndWhatFits) {
    Refusal refused = refusal(R"({"shortSide": "right", )" + kRoute + "}");
    EXPECT_EQ(refused.text("key"), "shortSide");
    EXPECT_THAT(refused.text("expected"), HasSubstr("left"));
    refused = refusal(R"({"ownRoute": {"short": ["1L"], "long": ["1R", "2Q"]}})");
    EXPECT_EQ(refused.text("key"), "ownRoute.long[1]");
    EXPECT_THAT(refused.text("expected"), HasSubstr("1L to 8L, 1R to 8R, X1 to X19"));
    refused = refusal(R"({"ownRoute": {"short": ["1L", 5], "long": []}})");
    EXPECT_EQ(refused.text("key"), "ownRoute.short[1]");
    EXPECT_EQ(refusal(R"({"ownRoute": {"short": ["1L"]}})").text("what"), "key ownRoute.long");
    EXPECT_EQ(refusal(R"({"ownRoute": {"short": "1L", "long": []}})").code(), Code::WrongType);
    EXPECT_EQ(refusal(R"({"ownRoute": {"short": [], "long": [], "middle": []}})").code(), Code::UnknownKey);
    EXPECT_EQ(refusal(R"({"route": "plain-2", )" + kRoute + "}").text("key"), "route");
    EXPECT_EQ(refusal(R"({"method": "two-piece", )" + kRoute + "}").text("key"), "method");
}

TEST(PointsJson, AreReadForMainsAndCrosses) {
    const CutRequest request = read(R"({"sport": "squash", "hoop": {"openThroat": true}, "points": {
        "1L": {"head": [-6, 175], "throat": [-8, -200], "wallMm": 25},
        "X18": {"left": [-60, -100], "right": [60, -101]}}})");
    ASSERT_EQ(request.places.size(), 2U);
    EXPECT_EQ(request.places[0].id.text(), "1L");
    EXPECT_EQ(request.places[0].low.y, -200);
    EXPECT_EQ(request.places[0].high.x, -6);
    EXPECT_EQ(request.places[0].wallMm, 25);
    EXPECT_EQ(request.places[1].low.x, -60);
    EXPECT_EQ(request.places[1].high.y, -101);
    EXPECT_FALSE(request.places[1].wallMm);
    EXPECT_TRUE(length::planCut(request));
}

TEST(PointsJson, ErrorsNameTheKeyAndWhatFits) {
    const auto key = [](const std::string& points) {
        const Refusal refused = refusal(R"({"points": )" + points + "}");
        return refused.text(refused.code() == Code::Missing ? "what" : "key");
    };
    EXPECT_EQ(key("[]"), "points");
    EXPECT_EQ(key(R"({"9L": {"head": [0, 1], "throat": [0, -1]}})"), "points.9L");
    EXPECT_EQ(key(R"({"first": {"head": [0, 1], "throat": [0, -1]}})"), "points.first");
    EXPECT_EQ(key(R"({"1L": {"head": [0, 1]}})"), "key points.1L.throat");
    EXPECT_EQ(key(R"({"1L": {"head": [0, 1, 2], "throat": [0, -1]}})"), "points.1L.head");
    EXPECT_EQ(key(R"({"1L": {"left": [0, 1], "right": [0, -1]}})"), "points.1L.left");
    EXPECT_EQ(key(R"({"X1": {"head": [0, 1], "throat": [0, -1]}})"), "points.X1.head");
    EXPECT_EQ(key(R"({"1L": {"head": [-6, 160], "throat": [-6, -999]}})"), "points.1L.throat[1]");
    EXPECT_EQ(key(R"({"1L": {"head": [-6, -160], "throat": [-6, 160]}})"), "points.1L");
}

TEST(SetJson, IsJudgedAndUsedUp) {
    const QJsonObject plan = planned(R"({"setMm": 12000})");
    const QJsonObject set = plan[QStringLiteral("set")].toObject();
    EXPECT_EQ(set[QStringLiteral("lengthMm")].toInt(), 12'000);
    EXPECT_EQ(set[QStringLiteral("verdict")].toString(), QStringLiteral("enough"));
    EXPECT_EQ(set[QStringLiteral("ways")].toArray().size(), 2);
    double cut = 0;
    for (const auto& piece : plan[QStringLiteral("pieces")].toArray()) {
        cut += piece.toObject()[QStringLiteral("cutMm")].toDouble();
    }
    EXPECT_EQ(cut, 12'000);
    EXPECT_FALSE(planned("{}").contains(QStringLiteral("set")));
    EXPECT_EQ(refusal(R"({"setMm": 12})").text("key"), "setMm");
    EXPECT_EQ(refusal(R"({"setMm": "12 m"})").code(), Code::WrongType);
    const QJsonObject little = planned(R"({"setMm": 9000})")[QStringLiteral("set")].toObject();
    EXPECT_EQ(little[QStringLiteral("verdict")].toString(), QStringLiteral("not enough"));
    EXPECT_TRUE(little[QStringLiteral("alternative")].toObject().contains(QStringLiteral("needMm")));
}

TEST(HoopJson, MeasuredStringsFixTheShape) {
    const CutRequest request = read(R"({"hoop": {"lengthMm": 329, "widthMm": 245, "outermostMainMm": 230,
        "lastCrossMm": 165}, "pattern": {"mainsThroatSpanMm": 150}})");
    EXPECT_EQ(request.hoop.outermostMainMm, 230);
    EXPECT_EQ(request.hoop.lastCrossMm, 165);
    EXPECT_EQ(request.mainsThroatSpanMm, 150);
    EXPECT_EQ(refusal(R"({"hoop": {"lengthMm": 329, "widthMm": 245, "outermostMainMm": 340}})").text("key"),
              "hoop.outermostMainMm");
}

} // namespace
