// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cut_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ctime>
#include <random>

using namespace rw;
using rw::exchange::cutRequestFromJson;
using rw::length::CutRequest;
using testing::HasSubstr;

namespace {

CutRequest read(std::string_view json) { return cutRequestFromJson(json).value(); }

Refusal refusal(std::string_view json) {
    const auto request = cutRequestFromJson(json);
    EXPECT_FALSE(request) << json.substr(0, 200);
    return request ? Refusal(Code::NotFound) : request.error();
}

TEST(CutRequestJson, EveryKeyIsRead) {
    const CutRequest request = read(R"({
        "sport": "squash",
        "hoop": {"lengthMm": 360.5, "widthMm": 190, "headAreaCm2": 496, "openThroat": true, "widestFromThroat": 0.61,
                 "headExponent": 2.1, "throatExponent": 1.6, "wallMm": 10.5},
        "pattern": {"mains": 14, "crosses": 17, "mainsSpanMm": 142, "crossesSpanMm": 250, "crossesCentreMm": 18,
                    "spread": 0.3, "mainsStart": "throat"},
        "method": "one-piece", "route": "plain-1", "shortSide": "right",
        "mains": {"material": "polyester", "diameterMm": 1.15, "tension": "26.5 lb"},
        "crosses": {"material": "polyester", "diameterMm": 1.15, "tension": "12 kg"},
        "ends": {"reachMm": 280, "startingKnotMm": 140, "knotUseMm": 55, "crossesStart": "clamp"},
        "stretch": false, "crimp": false, "ceiling": 0.02, "tapeStepMm": 10, "costPerMetre": 0.4,
        "spoiledJobCost": 20})");
    EXPECT_EQ(request.sport, Sport::Squash);
    EXPECT_EQ(request.hoop, (Hoop{.lengthMm = 360.5,
                                  .widthMm = 190,
                                  .headAreaCm2 = 496,
                                  .openThroat = true,
                                  .widestFromThroat = 0.61,
                                  .headExponent = 2.1,
                                  .throatExponent = 1.6,
                                  .wallMm = 10.5,
                                  .outermostMainMm = std::nullopt,
                                  .lastCrossMm = std::nullopt}));
    EXPECT_EQ(request.pattern, (Pattern{14, 17, 142, 250, 18, 0.3, HoopEnd::Throat}));
    EXPECT_EQ(request.method, Method::OnePiece);
    EXPECT_EQ(request.route, "plain-1");
    EXPECT_EQ(request.shortSide, Side::Right);
    EXPECT_EQ(request.mains.material, Material::Polyester);
    EXPECT_EQ(request.mains.diameterMm, 1.15);
    EXPECT_EQ(request.mains.tension.text(), "26.5 lb");
    EXPECT_EQ(request.crosses.tension.text(), "12 kg");
    EXPECT_EQ(request.ends.reachMm, 280);
    EXPECT_EQ(request.ends.startingKnotMm, 140);
    EXPECT_EQ(request.ends.knotUseMm, 55);
    EXPECT_TRUE(request.ends.crossesStartClamped);
    EXPECT_FALSE(request.stretch);
    EXPECT_FALSE(request.crimp);
    EXPECT_EQ(request.ceiling, 0.02);
    EXPECT_EQ(request.tapeStep.millimetres(), 10);
    EXPECT_EQ(request.costPerMetre, 0.4);
    EXPECT_EQ(request.spoiledJobCost, 20);
}

TEST(CutRequestJson, WhatIsLeftOutIsTheSportsDefault) {
    const CutRequest tennis = read("{}");
    EXPECT_EQ(tennis.sport, Sport::Tennis);
    EXPECT_EQ(tennis.pattern, (Pattern{}));
    EXPECT_EQ(tennis.mains.tension.text(), "55 lb");
    const CutRequest badminton = read(R"({"sport": "badminton", "hoop": {}, "pattern": {"mainsStart": "unknown"}})");
    EXPECT_EQ(badminton.pattern.mains, 22);
    EXPECT_EQ(badminton.pattern.crosses, 21);
    EXPECT_EQ(badminton.mains.diameterMm, 0.68);
    EXPECT_EQ(badminton.mains.tension.text(), "24 lb");
    EXPECT_EQ(badminton.crosses.tension.text(), "26 lb");
    EXPECT_EQ(badminton.pattern.mainsStart, std::nullopt);
    EXPECT_EQ(badminton.tapeStep.millimetres(), 50);
}

TEST(CutRequestJson, OnePieceIsOneString) {
    const CutRequest one = read(R"({"method": "one-piece", "mains": {"material": "polyester", "diameterMm": 1.25}})");
    EXPECT_EQ(one.crosses.material, Material::Polyester);
    EXPECT_EQ(one.crosses.diameterMm, 1.25);
    const CutRequest fromCrosses = read(R"({"sport": "squash", "crosses": {"material": "natural gut"}})");
    EXPECT_EQ(fromCrosses.mains.material, Material::NaturalGut);
    const CutRequest hybrid = read(R"({"mains": {"material": "polyester"}})");
    EXPECT_EQ(hybrid.crosses.material, Material::Nylon);
    const auto two = length::planCut(
        read(R"({"method": "one-piece", "mains": {"material": "polyester"}, "crosses": {"material": "nylon"}})"));
    ASSERT_FALSE(two);
    EXPECT_EQ(two.error().text("key"), "crosses.material");
}

TEST(CutRequestJson, UnknownKeysAreNamedWithTheKnownOnes) {
    EXPECT_EQ(refusal(R"({"sprot": "tennis"})").code(), Code::UnknownKey);
    EXPECT_EQ(refusal(R"({"sprot": "tennis"})").text("key"), "sprot");
    EXPECT_THAT(refusal(R"({"sprot": "tennis"})").text("known"), HasSubstr("sport, hoop, pattern"));
    EXPECT_EQ(refusal(R"({"hoop": {"lenghtMm": 329}})").text("key"), "hoop.lenghtMm");
    EXPECT_THAT(refusal(R"({"hoop": {"lenghtMm": 329}})").text("known"), HasSubstr("lengthMm"));
    EXPECT_EQ(refusal(R"({"pattern": {"": 1}})").text("key"), "pattern.");
    EXPECT_EQ(refusal(R"({"mains": {"stretchPercent": 5}})").text("key"), "mains.stretchPercent");
    EXPECT_EQ(refusal(R"({"ends": {"reach": 5}})").text("key"), "ends.reach");
}

TEST(CutRequestJson, WrongTypesAreNamed) {
    struct Case {
        std::string_view json;
        std::string_view key;
        std::string_view expected;
    };
    const Case cases[] = {
        {R"({"sport": 1})", "sport", "text in quotes"},
        {R"({"hoop": 329})", "hoop", "an object in braces"},
        {R"({"hoop": null})", "hoop", "an object in braces"},
        {R"({"hoop": {"lengthMm": "329"}})", "hoop.lengthMm", "a number"},
        {R"({"hoop": {"lengthMm": null}})", "hoop.lengthMm", "a number"},
        {R"({"hoop": {"lengthMm": [329]}})", "hoop.lengthMm", "a number"},
        {R"({"hoop": {"openThroat": 1}})", "hoop.openThroat", "true or false"},
        {R"({"pattern": {"mains": 16.5}})", "pattern.mains", "a whole number of ordinary size"},
        {R"({"pattern": {"mains": 1e300}})", "pattern.mains", "a whole number of ordinary size"},
        {R"({"pattern": []})", "pattern", "an object in braces"},
        {R"({"mains": {"tension": 55}})", "mains.tension", R"(text with its unit, as in "55 lb")"},
        {R"({"route": 2})", "route", "text in quotes"},
        {R"({"stretch": "yes"})", "stretch", "true or false"},
        {R"({"tapeStepMm": 12.5})", "tapeStepMm", "a whole number of ordinary size"},
        {R"({"ceiling": "1 %"})", "ceiling", "a number"},
        {R"([1])", "the input", "one object in braces"},
        {"null", "the input", "one object in braces"},
        {" 3\n", "the input", "one object in braces"},
        {R"("{}")", "the input", "one object in braces"},
        {"[1, 1e999]", "the input", "one object in braces"},
    };
    for (const Case& c : cases) {
        EXPECT_EQ(refusal(c.json).code(), Code::WrongType) << c.json;
        EXPECT_EQ(refusal(c.json).text("key"), c.key) << c.json;
        EXPECT_EQ(refusal(c.json).text("expected"), c.expected) << c.json;
    }
}

TEST(CutRequestJson, ImpossibleValuesAreNamedWithWhatFits) {
    struct Case {
        std::string_view json;
        std::string_view key;
        std::string_view expected;
    };
    const Case cases[] = {
        {R"({"sport": "golf"})", "sport", "tennis, squash or badminton"},
        {R"({"sport": "Tennis"})", "sport", "tennis, squash or badminton"},
        {R"({"sport": "tennis "})", "sport", "tennis, squash or badminton, with no blank before or behind it"},
        {R"({"method": "three-piece"})", "method", "two-piece or one-piece"},
        {R"({"shortSide": "long"})", "shortSide", "left or right"},
        {R"({"pattern": {"mainsStart": "tip"}})", "pattern.mainsStart", "throat, head or unknown"},
        {R"({"ends": {"crossesStart": "bow"}})", "ends.crossesStart", "knot or clamp"},
        {R"({"mains": {"material": "rope"}})", "mains.material",
         "natural gut, nylon, multifilament, polyester or aramid"},
        {R"({"crosses": {"diameterMm": 0.39}})", "crosses.diameterMm", "0.4 to 2"},
        {R"({"hoop": {"lengthMm": -329}})", "hoop.lengthMm", "150 to 450"},
        {R"({"hoop": {"lengthMm": 1e300}})", "hoop.lengthMm", "150 to 450"},
        {R"({"hoop": {"widthMm": 0}})", "hoop.widthMm", "120 to 350"},
        {R"({"hoop": {"headAreaCm2": 98}})", "hoop.headAreaCm2", "200 to 1000"},
        {R"({"hoop": {"widestFromThroat": 0.8}})", "hoop.widestFromThroat", "0.3 to 0.7"},
        {R"({"hoop": {"throatExponent": 5}})", "hoop.throatExponent", "1.2 to 4"},
        {R"({"hoop": {"wallMm": 3}})", "hoop.wallMm", "4 to 20"},
        {R"({"pattern": {"mains": 5}})", "pattern.mains", "6 to 30"},
        {R"({"pattern": {"crosses": 35}})", "pattern.crosses", "6 to 34"},
        {R"({"pattern": {"spread": -0.1}})", "pattern.spread", "0 to 2"},
        {R"({"ends": {"reachMm": -1}})", "ends.reachMm", "0 to 2000"},
        {R"({"ceiling": 0})", "ceiling", "0.000001 to 0.5"},
        {R"({"ceiling": 1})", "ceiling", "0.000001 to 0.5"},
        {R"({"tapeStepMm": 0})", "tapeStepMm", "1 to 1000"},
        {R"({"costPerMetre": 0})", "costPerMetre", "0.001 to 1000000000"},
        {R"({"spoiledJobCost": -1})", "spoiledJobCost", "0 to 1000000000"},
    };
    for (const Case& c : cases) {
        EXPECT_EQ(refusal(c.json).code(), Code::ImpossibleValue) << c.json;
        EXPECT_EQ(refusal(c.json).text("key"), c.key) << c.json;
        EXPECT_EQ(refusal(c.json).text("expected"), c.expected) << c.json;
    }
}

TEST(CutRequestJson, TensionsAreText) {
    EXPECT_EQ(read(R"({"mains": {"tension": "52,5 lb"}})").mains.tension.text(), "52.5 lb");
    EXPECT_EQ(read(R"({"mains": {"tension": "24kg"}})").mains.tension.text(), "24 kg");
    // Without its unit 24 may be either, and 80 reads only as one of them: neither is guessed.
    for (const std::string text : {"24", "55", "80", "abc", "-3", "5000 lb", "55 N", "", "NaN"}) {
        const Refusal refused = refusal(R"({"mains": {"tension": ")" + text + R"("}})");
        EXPECT_EQ(refused.code(), Code::ImpossibleValue) << text;
        EXPECT_EQ(refused.text("key"), "mains.tension");
        EXPECT_EQ(refused.text("text"), text);
    }
}

TEST(CutRequestJson, RoutesThatNobodyKnows) {
    EXPECT_EQ(refusal(R"({"route": "zigzag"})").code(), Code::RouteUnknown);
    EXPECT_EQ(refusal(R"({"route": ""})").code(), Code::RouteUnknown);
    EXPECT_THAT(refusal(R"({"route": "zigzag"})").text("known"), HasSubstr("plain-2-reversed"));
}

TEST(CutRequestJson, AKeyGivenTwiceIsRefused) {
    const auto twice = [](std::string_view json) {
        const Refusal refused = refusal(json);
        EXPECT_EQ(refused.code(), Code::ImpossibleValue) << json;
        EXPECT_EQ(refused.text("text"), "given twice") << json;
        return refused.text("key");
    };
    EXPECT_EQ(twice(R"({"ceiling": 0.01, "ceiling": 0.02})"), "ceiling");
    EXPECT_EQ(twice(R"({"hoop": {"lengthMm": 329, "widthMm": 245, "lengthMm": 329}})"), "hoop.lengthMm");
    EXPECT_EQ(twice(R"({"hoop": {"lengthMm": 329, "l\u0065ngthMm": 329}})"), "hoop.lengthMm");
    EXPECT_EQ(twice(R"({"hoop": {}, "pattern": {}, "hoop": {}})"), "hoop");
    // The same key in two objects, and a key's name as a value, are no repetition.
    EXPECT_TRUE(cutRequestFromJson(R"({"mains": {"material": "nylon"}, "crosses": {"material": "nylon"}})"));
    EXPECT_EQ(refusal(R"({"sport": "sport"})").text("text"), "sport");
}

TEST(CutRequestJson, ANumberTooLargeToHoldIsNamed) {
    const auto key = [](std::string_view json) {
        const Refusal refused = refusal(json);
        EXPECT_EQ(refused.code(), Code::ImpossibleValue) << json;
        EXPECT_EQ(refused.text("text"), "-1.5e+999") << json;
        return refused.text("key");
    };
    EXPECT_EQ(key(R"({"ceiling":-1.5e+999})"), "ceiling");
    EXPECT_EQ(refusal("{\"ceiling\": " + std::string(500'000, '1') + "}").text("key"), "ceiling");
    EXPECT_EQ(key(R"({"hoop": {}, "pattern": {"mains": 16, "spread": -1.5e+999}, "stretch": true})"), "pattern.spread");
    EXPECT_EQ(key(R"({"hoop": {"lengthMm": 329, "w\u0069dthMm" : -1.5e+999 }})"), "hoop.widthMm");
    EXPECT_EQ(key(R"({"sport": "ten\"nis: {", "hoop": [1, [-1.5e+999]]})"), "hoop");
}

/// Processor seconds until a file of so many different keys is refused.
double secondsForKeys(int keys) {
    std::string json = R"({"hoop": {"k0": 0)";
    for (int i = 1; i < keys; ++i) {
        json += ",\"k" + std::to_string(i) + "\":0";
    }
    const std::clock_t begun = std::clock();
    EXPECT_EQ(refusal(json + "}}").code(), Code::UnknownKey);
    return static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
}

// Eight times the keys take about eight times as long; where each is compared with all before it, 64 times.
TEST(CutRequestJson, ManyKeysAreReadInLine) { EXPECT_LT(secondsForKeys(80'000), 24 * secondsForKeys(10'000)); }

TEST(CutRequestJson, GarbageIsRefusedWithItsReason) {
    const std::string deep = R"({"hoop": )" + std::string(5000, '[') + std::string(5000, ']') + "}";
    const std::string huge = R"({"sport": ")" + std::string(2'000'000, 'x') + "\"}";
    for (const std::string_view json : std::initializer_list<std::string_view>{
             "", "   \n", "tennis", "{", "{}{}", "{} x", "{\"sport\": tennis}", "{'sport': 'tennis'}",
             R"({"ceiling": NaN})", R"({"ceiling": Infinity})", R"({"ceiling": 01})", R"({"sport": "tennis",})",
             "{\"sport\": \"\xff\xfe\"}", "\x89PNG\r\n", "null null", "1, 2", R"({"ceiling": 1e})", deep, huge}) {
        const Refusal refused = refusal(json);
        EXPECT_EQ(refused.code(), Code::FileUnreadable) << json.substr(0, 60);
        EXPECT_FALSE(refused.text("reason").empty());
    }
    EXPECT_THAT(refusal("").text("reason"), HasSubstr("empty"));
    EXPECT_EQ(refusal(std::string_view("{}\0", 3)).code(), Code::FileUnreadable);
}

// Whatever a file holds, reading it ends in a request or in a refusal.
TEST(CutRequestJson, DamagedFilesNeverBreakIt) {
    const std::string good = R"({"sport": "squash", "hoop": {"lengthMm": 360.5, "openThroat": true}, "pattern":
        {"mains": 14, "mainsStart": "throat"}, "mains": {"tension": "26 lb"}, "ceiling": 1e-2})";
    std::mt19937 random(20240219);
    for (int round = 0; round < 5000; ++round) {
        std::string json = good;
        const std::size_t changes = 1 + random() % 4;
        for (std::size_t i = 0; i < changes; ++i) {
            const std::size_t at = random() % json.size();
            switch (random() % 3) {
            case 0:
                json[at] = static_cast<char>(random() % 256);
                break;
            case 1:
                json.erase(at, 1 + random() % 8);
                break;
            default:
                json.insert(at, 1, R"({}[]",:\0a9-)"[random() % 12]);
            }
        }
        const auto request = cutRequestFromJson(json);
        if (request) {
            (void)length::planCut(*request);
        } else {
            EXPECT_FALSE(request.error().arguments().empty()) << json;
        }
    }
}

} // namespace
