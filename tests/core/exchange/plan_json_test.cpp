// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

using namespace rw;
using namespace rw::exchange;
using testing::HasSubstr;

namespace {

PlanRequest read(std::string_view json) { return planRequestFromJson(json).value(); }

constexpr std::string_view kLeast = R"({"lots": [], "pieces": [], "pieceMix": [{"lengthMm": 6000, "share": 1}],
                                        "shortestUsefulMm": 5000})";

TEST(PlanRequestJson, EveryKeyIsRead) {
    const PlanRequest request = read(R"({
        "lots": [{"id": "K-2", "lengthMm": 23400, "uncertaintyMm": 61.5, "gapMm": 150, "owner": "Petra",
                  "pinnedTo": "J1", "sealed": true, "received": "2026-03-12"},
                 {"id": 4, "lengthMm": 0, "received": "2026-03-12T10:05:00+01:00"}],
        "pieces": [{"id": "mains", "lengthMm": 6150, "job": "J1", "owner": "Petra"},
                   {"id": 7, "lengthMm": 5500, "job": "J1", "owner": "shop"}],
        "pieceMix": [{"lengthMm": 6150, "share": 3}, {"lengthMm": 5500, "share": 1}, {"lengthMm": 9000, "share": 0}],
        "shortestUsefulMm": 4000, "waitingCostMm": 40, "sameReel": true, "limitMs": 250})");
    ASSERT_EQ(request.lots.size(), 2U);
    const stock::QueueLot& lot = request.lots[0];
    EXPECT_EQ(request.lotNames[0].text, "K-2");
    EXPECT_FALSE(request.lotNames[0].isNumber);
    EXPECT_EQ(lot.source.length.millimetres(), 23'400);
    EXPECT_EQ(request.uncertaintiesMm[0], 61.5);
    EXPECT_EQ(lot.source.gap.millimetres(), 150);
    EXPECT_TRUE(lot.source.sealed);
    EXPECT_EQ(lot.source.received, Instant(std::chrono::sys_days(std::chrono::year(2026) / 3 / 12)));
    EXPECT_EQ(lot.owner, request.pieces[0].owner);
    EXPECT_EQ(lot.pinnedTo, request.pieces[0].job);
    EXPECT_TRUE(request.lotNames[1].isNumber);
    EXPECT_EQ(request.lots[1].source.received - lot.source.received, std::chrono::minutes(545));
    EXPECT_EQ(request.pieceNames[1].text, "7");
    EXPECT_EQ(request.pieces[1].length.millimetres(), 5'500);
    EXPECT_EQ(request.pieces[1].job, request.pieces[0].job);
    EXPECT_EQ(request.pieces[1].owner, std::nullopt);
    ASSERT_EQ(request.mix.shares().size(), 2U);
    EXPECT_EQ(request.mix.shares()[1].share, 0.75);
    EXPECT_EQ(request.shortestUseful.millimetres(), 4'000);
    EXPECT_EQ(request.waitingCost.millimetres(), 40);
    EXPECT_TRUE(request.rules.sameReel);
    EXPECT_EQ(request.rules.limit, std::chrono::milliseconds(250));
}

TEST(PlanRequestJson, WhatIsLeftOutIsAsTheGuideSays) {
    const PlanRequest least = read(kLeast);
    EXPECT_EQ(least.waitingCost.millimetres(), 50);
    EXPECT_FALSE(least.rules.sameReel);
    EXPECT_EQ(least.rules.limit, std::chrono::milliseconds(500));
    const PlanRequest request = read(R"({
        "lots": [{"id": "A", "lengthMm": 9000, "pinnedTo": null, "received": null, "owner": null}],
        "pieces": [{"id": "p", "lengthMm": 6000}, {"id": "q", "lengthMm": 6000, "job": null}],
        "pieceMix": [{"lengthMm": 6000, "share": 1}], "shortestUsefulMm": 0})");
    EXPECT_EQ(request.uncertaintiesMm[0], 0);
    EXPECT_EQ(request.lots[0].source.gap.millimetres(), 0);
    EXPECT_EQ(request.lots[0].owner, std::nullopt);
    EXPECT_EQ(request.lots[0].pinnedTo, std::nullopt);
    EXPECT_FALSE(request.lots[0].source.sealed);
    EXPECT_EQ(request.pieces[0].owner, std::nullopt);
    EXPECT_NE(request.pieces[0].job, request.pieces[1].job);
}

/// The smallest request with one of its keys, and one key of its only lot or piece, put differently.
std::string with(const std::string& key, const std::string& value) {
    std::string lot = R"("id": "A", "lengthMm": 9000)";
    std::string piece = R"("id": "p", "lengthMm": 6000)";
    std::string share = R"("lengthMm": 6000, "share": 1)";
    std::string more;
    const auto put = [&](const char* list, std::string& object) {
        if (key.starts_with(list)) {
            const std::string name = "\"" + key.substr(key.find('.') + 1) + "\": ";
            const auto at = object.find(name);
            const auto end = at == std::string::npos ? at : object.find(',', at);
            if (at == std::string::npos) {
                object += ", " + name + value;
            } else {
                object.replace(at, end == std::string::npos ? end : end - at, name + value);
            }
            return true;
        }
        return false;
    };
    if (!put("lots.", lot) && !put("pieces.", piece) && !put("pieceMix.", share)) {
        more = ", \"" + key + "\": " + value;
    }
    return R"({"lots": [{)" + lot + R"(}], "pieces": [{)" + piece + R"(}], "pieceMix": [{)" + share +
           R"(}], "shortestUsefulMm": 5000)" + more + "}";
}

Refusal refusal(const std::string& json) {
    const auto request = planRequestFromJson(json);
    EXPECT_FALSE(request) << json.substr(0, 300);
    return request ? Refusal(Code::NotFound) : request.error();
}

TEST(PlanRequestJson, WhatIsWrongIsNamed) {
    struct Case {
        const char* key;
        const char* value;
        Code code;
        const char* named;
    };
    const Case cases[] = {
        {"lots.id", "null", Code::ImpossibleValue, "lots[0].id"},
        {"lots.id", "\"\"", Code::ImpossibleValue, "lots[0].id"},
        {"lots.id", "1.5", Code::WrongType, "lots[0].id"},
        {"lots.id", "true", Code::WrongType, "lots[0].id"},
        {"lots.lengthMm", "-1", Code::ImpossibleValue, "lots[0].lengthMm"},
        {"lots.lengthMm", "0.5", Code::WrongType, "lots[0].lengthMm"},
        {"lots.lengthMm", "1000001", Code::ImpossibleValue, "lots[0].lengthMm"},
        {"lots.lengthMm", "1e300", Code::WrongType, "lots[0].lengthMm"},
        {"lots.lengthMm", "\"9 m\"", Code::WrongType, "lots[0].lengthMm"},
        {"lots.uncertaintyMm", "-0.1", Code::ImpossibleValue, "lots[0].uncertaintyMm"},
        {"lots.gapMm", "-150", Code::ImpossibleValue, "lots[0].gapMm"},
        {"lots.owner", "[]", Code::WrongType, "lots[0].owner"},
        {"lots.pinnedTo", "{}", Code::WrongType, "lots[0].pinnedTo"},
        {"lots.sealed", "1", Code::WrongType, "lots[0].sealed"},
        {"lots.received", "\"yesterday\"", Code::ImpossibleValue, "lots[0].received"},
        {"lots.received", "\"2026-02-30\"", Code::ImpossibleValue, "lots[0].received"},
        {"lots.received", "20260312", Code::WrongType, "lots[0].received"},
        {"lots.colour", "\"red\"", Code::UnknownKey, "lots[0].colour"},
        {"pieces.lengthMm", "0", Code::ImpossibleValue, "pieces[0].lengthMm"},
        {"pieces.job", "false", Code::WrongType, "pieces[0].job"},
        {"pieceMix.share", "-0.1", Code::ImpossibleValue, "pieceMix[0].share"},
        {"pieceMix.share", "0", Code::ImpossibleValue, "pieceMix"},
        {"pieceMix.lengthMm", "0", Code::ImpossibleValue, "pieceMix[0].lengthMm"},
        {"waitingCostMm", "-1", Code::ImpossibleValue, "waitingCostMm"},
        {"sameReel", "\"yes\"", Code::WrongType, "sameReel"},
        {"limitMs", "-1", Code::ImpossibleValue, "limitMs"},
        {"limitMs", "1e9", Code::ImpossibleValue, "limitMs"},
        {"limit", "1", Code::UnknownKey, "limit"},
    };
    for (const Case& c : cases) {
        const Refusal refused = refusal(with(c.key, c.value));
        EXPECT_EQ(refused.code(), c.code) << c.key << " " << c.value;
        EXPECT_EQ(refused.text("key"), c.named) << c.key << " " << c.value;
    }
}

TEST(PlanRequestJson, WhatIsMissingIsNamed) {
    EXPECT_EQ(refusal("{}").text("what"), "key lots");
    EXPECT_EQ(refusal(R"({"lots": [{"lengthMm": 9000}], "pieces": [], "pieceMix": [], "shortestUsefulMm": 5000})")
                  .text("what"),
              "key lots[0].id");
    EXPECT_EQ(refusal(R"({"lots": [], "pieces": [], "pieceMix": []})").text("what"), "key shortestUsefulMm");
    EXPECT_EQ(refusal(R"({"lots": [], "pieces": [{"id": 1}], "pieceMix": [], "shortestUsefulMm": 1})").text("what"),
              "key pieces[0].lengthMm");
}

TEST(PlanRequestJson, ListsAreLists) {
    EXPECT_EQ(refusal(with("x", "1")).code(), Code::UnknownKey);
    EXPECT_EQ(refusal(R"({"lots": {}, "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})").text("expected"),
              "a list in square brackets");
    EXPECT_EQ(refusal(R"({"lots": [5], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})").text("key"), "lots[0]");
    const Refusal twice = refusal(R"({"lots": [{"id": 1, "lengthMm": 5}, {"id": 1, "lengthMm": 6}], "pieces": [],
                                      "pieceMix": [], "shortestUsefulMm": 1})");
    EXPECT_EQ(twice.text("key"), "lots[1].id");
    std::string many = "{\"lots\": [";
    for (int i = 0; i <= 500; ++i) {
        many += std::string(i > 0 ? "," : "") + "{\"id\": " + std::to_string(i) + ", \"lengthMm\": 5}";
    }
    EXPECT_EQ(refusal(many + R"(], "pieces": [], "pieceMix": [], "shortestUsefulMm": 1})").text("key"), "lots");
}

TEST(PlanRequestJson, AJobIsNeverMistakenForAPieceAlone) {
    const PlanRequest request = read(R"({"lots": [], "pieceMix": [{"lengthMm": 6000, "share": 1}],
        "shortestUsefulMm": 5000, "pieces": [{"id": "a", "lengthMm": 5}, {"id": "b", "lengthMm": 5, "job": 0},
        {"id": "c", "lengthMm": 5, "job": "alone 0"}, {"id": "d", "lengthMm": 5, "job": "\u00000"}]})");
    for (std::size_t i = 1; i < 4; ++i) {
        EXPECT_NE(request.pieces[i].job, request.pieces[0].job);
    }
}

TEST(PlanRequestJson, BrokenTextIsRefusedWhereverItIsBroken) {
    const std::string whole = with("lots.pinnedTo", "\"J1\"");
    ASSERT_TRUE(planRequestFromJson(whole));
    std::mt19937 random(7);
    for (int i = 0; i < 2'000; ++i) {
        std::string broken = whole;
        for (int times = 0; times < 3; ++times) {
            broken[random() % broken.size()] = static_cast<char>(random() % 256);
        }
        const auto request = planRequestFromJson(broken);
        if (!request) {
            EXPECT_FALSE(request.error().arguments().empty()) << broken;
        }
    }
    for (std::size_t end = 0; end < whole.size(); ++end) {
        EXPECT_FALSE(planRequestFromJson(whole.substr(0, end)));
    }
}

TEST(PlanJson, IsWrittenKeyByKey) {
    const PlanRequest request = read(R"({
        "lots": [{"id": "end", "lengthMm": 6300, "uncertaintyMm": 300}, {"id": 4, "lengthMm": 120000}],
        "pieces": [{"id": "p1", "lengthMm": 6000}, {"id": 2, "lengthMm": 200000}],
        "pieceMix": [{"lengthMm": 6000, "share": 1}], "shortestUsefulMm": 5000})");
    const stock::RemnantValue value(request.mix, request.shortestUseful, request.waitingCost);
    const auto plan = stock::planQueue(request.lots, request.pieces, value, request.rules);
    const auto reasons = stock::reasonsFor(plan, request.lots, request.pieces, request.uncertaintiesMm, value);
    const std::vector<std::string> sentences(reasons.size(), "so it is");
    // by hand: 6.3 m were worth 0.35 m of loss, 0.3 m are lost after the cut
    EXPECT_EQ(planToJson(plan, request, reasons, sentences), R"({
  "assignments": [
    {"piece": "p1", "lot": "end"},
    {"piece": 2, "lot": null}
  ],
  "deltaMm": -50.000,
  "proven": true,
  "why": [
    {"kind": "fits-nowhere", "piece": 2, "sentence": "so it is"},
    {"kind": "leaves-scrap", "lot": "end", "leavesMm": 300, "likelyLostMm": 300.000, "sentence": "so it is"},
    {"kind": "measure-first", "lot": "end", "leavesMm": 300, "sentence": "so it is"}
  ]
}
)");
}

} // namespace
