// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cut_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

using namespace rw;
using namespace rw::exchange;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

namespace {

std::string written(std::string_view request) {
    const auto read = cutRequestFromJson(request).value();
    return cutPlanToJson(length::planCut(read).value(), read);
}

QJsonObject parsed(const std::string& json) {
    return QJsonDocument::fromJson(QByteArray::fromStdString(json)).object();
}

/// Keys in the order in which they stand at this indent, from the line that holds `from` until the text steps out.
std::vector<std::string> keysAt(const std::string& json, const std::string& from, std::size_t indent) {
    std::vector<std::string> keys;
    std::istringstream lines(json.substr(json.find(from)));
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line)) {
        const std::size_t begins = line.find_first_not_of(' ');
        if (begins < indent && line[begins] != '{' && line[begins] != '}') {
            break;
        }
        if (begins == indent && line[begins] == '"') {
            keys.push_back(line.substr(begins + 1, line.find('"', begins + 1) - begins - 1));
        }
    }
    return keys;
}

TEST(CutPlanJson, TwoPiecesKeyByKey) {
    const std::string json = written(R"({"hoop": {"lengthMm": 329, "widthMm": 245}})");
    EXPECT_THAT(keysAt(json, "{", 2), ElementsAre("hoop", "pieces", "chanceShortJob", "why"));
    EXPECT_THAT(keysAt(json, "\"hoop\"", 4),
                ElementsAre("lengthMm", "widthMm", "areaCm2", "openThroat", "widestFromThroat", "headExponent",
                            "throatExponent", "wallMm", "standsOn"));
    EXPECT_THAT(keysAt(json, "\"pieces\"", 6),
                ElementsAre("name", "arms", "wallsMm", "linksMm", "crimpMm", "pathMm", "stretchPercent", "endsMm",
                            "needMm", "needSdMm", "quantilesMm", "evidenceUsed", "cutMm", "chanceShort", "heldAtPacket",
                            "name", "arms", "wallsMm", "linksMm", "crimpMm", "pathMm", "stretchPercent", "endsMm",
                            "needMm", "needSdMm", "quantilesMm", "evidenceUsed", "cutMm", "chanceShort",
                            "heldAtPacket"));
    EXPECT_THAT(json, HasSubstr("\"standsOn\": \"measured\""));
    EXPECT_THAT(json, HasSubstr("\"lengthMm\": 329.000"));
    EXPECT_THAT(json, HasSubstr("\"endsMm\": 600.000"));
    EXPECT_THAT(json, HasSubstr("{\"id\": \"X19\", \"chordMm\": "));
    EXPECT_THAT(json, Not(HasSubstr("shortSideMm")));
    const QJsonArray pieces = parsed(json)[QStringLiteral("pieces")].toArray();
    ASSERT_EQ(pieces.size(), 2);
    EXPECT_EQ(pieces[0].toObject()[QStringLiteral("name")].toString(), QStringLiteral("mains"));
    EXPECT_EQ(pieces[0].toObject()[QStringLiteral("arms")].toArray().size(), 2);
    EXPECT_EQ(pieces[1].toObject()[QStringLiteral("arms")].toArray().size(), 1);
}

TEST(CutPlanJson, OnePieceHasItsShortSide) {
    const std::string json = written(R"({"sport": "squash", "hoop": {"openThroat": true}})");
    const QJsonObject piece = parsed(json)[QStringLiteral("pieces")].toArray()[0].toObject();
    EXPECT_EQ(piece[QStringLiteral("name")].toString(), QStringLiteral("whole"));
    const double measure = piece[QStringLiteral("shortSideMm")].toDouble();
    EXPECT_GT(measure, piece[QStringLiteral("shortSideNeedMm")].toDouble());
    EXPECT_GT(piece[QStringLiteral("shortSideHeadLengths")].toDouble(), 7);
    const QJsonObject arm = piece[QStringLiteral("arms")].toArray()[0].toObject();
    EXPECT_EQ(arm[QStringLiteral("side")].toString(), QStringLiteral("left"));
    EXPECT_EQ(arm[QStringLiteral("endsAt")].toString(), QStringLiteral("head, left"));
    EXPECT_THAT(json, HasSubstr("\"openThroat\": true"));
    EXPECT_THAT(json, HasSubstr("{\"kind\": \"route-chosen\", \"text\": \"plain-2\", \"value\": 0, \"other\": 0}"));
    EXPECT_THAT(json, HasSubstr("{\"kind\": \"start-end-assumed\", \"text\": \"throat\","));
}

TEST(CutPlanJson, IsTheSameTextEveryTimeAndValidJson) {
    const std::string once = written("{}");
    EXPECT_EQ(once, written("{}"));
    EXPECT_TRUE(once.ends_with("}\n"));
    QJsonParseError error{};
    (void)QJsonDocument::fromJson(QByteArray::fromStdString(once), &error);
    EXPECT_EQ(error.error, QJsonParseError::NoError);
}

TEST(CutPlanJson, SentencesStandBesideTheirReasons) {
    const auto request = cutRequestFromJson("{}").value();
    const auto plan = length::planCut(request).value();
    std::vector<std::string> sentences(plan.why.size(), "Said with \"quotes\", a \\ and a\ttab.");
    const std::string json = cutPlanToJson(plan, request, sentences);
    const QJsonArray why = parsed(json)[QStringLiteral("why")].toArray();
    ASSERT_EQ(why.size(), static_cast<qsizetype>(plan.why.size()));
    EXPECT_EQ(why[0].toObject()[QStringLiteral("sentence")].toString(),
              QStringLiteral("Said with \"quotes\", a \\ and a\ttab."));
}

} // namespace
