// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/forecast_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace rw;
using namespace rw::exchange;
using namespace std::chrono_literals;

namespace {

ForecastRequest read(std::string_view json) { return forecastRequestFromJson(json).value(); }

Refusal refusal(std::string_view json) {
    const auto request = forecastRequestFromJson(json);
    EXPECT_FALSE(request) << json;
    return request ? Refusal(Code::NotFound) : request.error();
}

TEST(ForecastRequestJson, EveryKeyIsRead) {
    const ForecastRequest request = read(R"({
        "history": [{"date": "2026-03-01", "jobs": 2}, {"date": "2026-03-03", "jobs": 0.5}], "today": "2026-03-04",
        "leadTimes": [4, 12.5], "priorLeadDays": [6], "priorRatePerDay": 0.25, "dailyRatio": 1.4, "service": 0.95,
        "jobsLeft": 7})");
    EXPECT_EQ(request.today, 2026y / 3 / 4);
    const double third = 1.0 / 3;
    EXPECT_EQ(request.leadTimes.mix(), (std::vector<stock::LeadTimes::Likely>{{4, third}, {6, third}, {12.5, third}}));
    EXPECT_EQ(request.service.dailyRatio, 1.4);
    EXPECT_EQ(request.service.chance, 0.95);
    EXPECT_EQ(request.jobsLeft, 7);
    const double fading = std::exp2(-1.0 / 90);
    ASSERT_TRUE(request.demand);
    EXPECT_NEAR(request.demand->shape(), 0.5 + 2 * fading * fading + 0.5, 1e-12);
    EXPECT_NEAR(request.demand->days(), 2 + fading * fading + fading + 1, 1e-12);
}

TEST(ForecastRequestJson, WhatIsLeftOutIsAsTheGuideSays) {
    const ForecastRequest request = read(R"({"history": [{"date": "2026-03-01", "jobs": 1}], "today": "2026-03-05"})");
    EXPECT_EQ(request.leadTimes.mix(),
              (std::vector<stock::LeadTimes::Likely>{{3, 0.25}, {5, 0.25}, {7, 0.25}, {10, 0.25}}));
    EXPECT_EQ(request.service.dailyRatio, 1);
    EXPECT_EQ(request.service.chance, 0.98);
    EXPECT_EQ(request.jobsLeft, std::nullopt);
    // the history's own mean: one job in four days, so 0.5 / 0.25 = 2 days of prior
    const double fading = std::exp2(-1.0 / 90);
    EXPECT_NEAR(request.demand->days(), 2 + 1 + fading + fading * fading + fading * fading * fading, 1e-12);
}

TEST(ForecastRequestJson, DaysAreCountedAsTheyWere) {
    const auto shape = [](const std::string& history) {
        return read("{\"history\": " + history + ", \"today\": \"2026-03-04\", \"priorRatePerDay\": 1}")
            .demand->shape();
    };
    const double once = shape(R"([{"date": "2026-03-01", "jobs": 3}, {"date": "2026-03-03", "jobs": 1}])");
    // out of order, one day in two entries, a day without jobs said, and today
    EXPECT_EQ(shape(R"([{"date": "2026-03-03", "jobs": 1}, {"date": "2026-03-01", "jobs": 1},
                        {"date": "2026-03-02", "jobs": 0}, {"date": "2026-03-01", "jobs": 2},
                        {"date": "2026-03-04", "jobs": 9}])"),
              once);
    EXPECT_EQ(shape("[]"), 0.5);
    EXPECT_EQ(shape(R"([{"date": "2026-03-04", "jobs": 9}])"), 0.5);
}

TEST(ForecastRequestJson, WhatIsWrongIsNamed) {
    struct Case {
        const char* history;
        const char* more;
        Code code;
        const char* named;
    };
    const Case cases[] = {
        {"{}", "", Code::WrongType, "history"},
        {"[1]", "", Code::WrongType, "history[0]"},
        {R"([{"date": "2026-03-01", "jobs": -1}])", "", Code::ImpossibleValue, "history[0].jobs"},
        {R"([{"date": "2026-03-01", "jobs": "1"}])", "", Code::WrongType, "history[0].jobs"},
        {R"([{"date": "2026-03-01", "jobs": 1e300}])", "", Code::ImpossibleValue, "history[0].jobs"},
        {R"([{"date": "2026-02-29", "jobs": 1}])", "", Code::ImpossibleValue, "history[0].date"},
        {R"([{"date": "2026-03-13", "jobs": 1}])", "", Code::ImpossibleValue, "history[0].date"},
        {R"([{"date": null, "jobs": 1}])", "", Code::ImpossibleValue, "history[0].date"},
        {R"([{"date": "2026-03-01", "jobs": 1, "job": 1}])", "", Code::UnknownKey, "history[0].job"},
        {"[]", "", Code::ImpossibleValue, "history"},
        {"[]", R"("priorRatePerDay": 0)", Code::ImpossibleValue, "priorRatePerDay"},
        {"[]", R"("priorRatePerDay": -1)", Code::ImpossibleValue, "priorRatePerDay"},
        {"[]", R"("priorRatePerDay": null)", Code::WrongType, "priorRatePerDay"},
        {"[]", R"("priorRatePerDay": 1, "leadTimes": 5)", Code::WrongType, "leadTimes"},
        {"[]", R"("priorRatePerDay": 1, "leadTimes": [3, "4"])", Code::WrongType, "leadTimes[1]"},
        {"[]", R"("priorRatePerDay": 1, "leadTimes": [-1])", Code::ImpossibleValue, "leadTimes[0]"},
        {"[]", R"("priorRatePerDay": 1, "priorLeadDays": [])", Code::ImpossibleValue, "priorLeadDays"},
        {"[]", R"("priorRatePerDay": 1, "dailyRatio": 0.9)", Code::ImpossibleValue, "dailyRatio"},
        {"[]", R"("priorRatePerDay": 1, "service": 98)", Code::ImpossibleValue, "service"},
        {"[]", R"("priorRatePerDay": 1, "service": 1)", Code::ImpossibleValue, "service"},
        {"[]", R"("priorRatePerDay": 1, "jobsLeft": -1)", Code::ImpossibleValue, "jobsLeft"},
        {"[]", R"("priorRatePerDay": 1, "jobsLeft": 2.5)", Code::WrongType, "jobsLeft"},
        {"[]", R"("priorRatePerDay": 1, "left": 2)", Code::UnknownKey, "left"},
    };
    for (const Case& c : cases) {
        const std::string more = *c.more == '\0' ? "" : std::string(", ") + c.more;
        const Refusal refused = refusal(std::string(R"({"today": "2026-03-12", "history": )") + c.history + more + "}");
        EXPECT_EQ(refused.code(), c.code) << c.history << c.more;
        EXPECT_EQ(refused.text("key"), c.named) << c.history << c.more;
    }
    EXPECT_EQ(refusal(R"({"history": []})").text("what"), "key today");
    EXPECT_EQ(refusal(R"({"today": "2026-03-12"})").text("what"), "key history");
    EXPECT_EQ(refusal(R"({"today": null, "history": []})").text("key"), "today");
    EXPECT_EQ(refusal(R"({"today": "12.3.2026", "history": []})").text("key"), "today");
}

// stock-checks.csv, gpq and runout: a = 12, b = 60 days; Boost and R agree. 11 days are a lead time of 10 and a day of
// review; 14.73 and 29.16 days from 1 March are 15 and 30 March; for 90 % the negative
// binomial, summed term by term, gives 54.96 days, which is 24 April.
TEST(ForecastJson, IsWrittenKeyByKey) {
    const ForecastRequest request = read(R"({
        "history": [{"date": "2026-02-28", "jobs": 11.5}], "today": "2026-03-01", "leadTimes": [10], "priorLeadDays": [],
        "priorRatePerDay": 0.00847457627118644, "jobsLeft": 5})");
    ASSERT_NEAR(request.demand->days(), 60, 1e-9);
    EXPECT_EQ(forecastToJson(forecastOf(request)), R"({
  "s": 6,
  "orderPoint": 6.5,
  "runOut": {"p10": "2026-03-15", "p50": "2026-03-30", "p90": "2026-04-24"},
  "rate": 0.2
}
)");
}

TEST(ForecastJson, HasNoDateWhereThereIsNone) {
    const std::string unused = R"({"history": [{"date": "2026-02-01", "jobs": 0}], "today": "2026-03-01")";
    const std::string nothing = R"({
  "s": 0,
  "orderPoint": 1,
  "runOut": {"p10": null, "p50": null, "p90": null},
  "rate": 0
}
)";
    EXPECT_EQ(forecastToJson(forecastOf(read(unused + R"(, "jobsLeft": 3})"))), nothing);
    EXPECT_EQ(forecastOf(read(unused + "}")).runOut, std::nullopt);
    const Forecast slow =
        forecastOf(read(R"({"history": [], "today": "2026-03-01", "priorRatePerDay": 0.000001, "jobsLeft": 5000})"));
    EXPECT_EQ(slow.runOut->p90, std::nullopt);
}

} // namespace
