// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rw::cli::test {
namespace {

using testing::HasSubstr;

const QStringList kForecast = {QStringLiteral("forecast"), QStringLiteral("--input"), QStringLiteral("-"),
                               QStringLiteral("--json")};

// stock-checks.csv, gpq and runout: a = 12, b = 60 days; Boost and R agree.
TEST(ForecastCommand, AnswersTheChecks) {
    const QByteArray input = R"({"history": [{"date": "2026-02-28", "jobs": 11.5}], "today": "2026-03-01",
        "leadTimes": [10], "priorLeadDays": [], "priorRatePerDay": 0.00847457627118644, "jobsLeft": 5})";
    const Outcome json = cli(kForecast, input);
    EXPECT_EQ(json.code, 0);
    EXPECT_EQ(json.err, "");
    EXPECT_THAT(json.out, HasSubstr("\"s\": 6,"));
    EXPECT_THAT(json.out, HasSubstr(R"({"p10": "2026-03-15", "p50": "2026-03-30", )"));
    const Outcome words = cli({QStringLiteral("forecast"), QStringLiteral("--input=-")}, input);
    EXPECT_EQ(words.out, "about 1.4 jobs a week\n"
                         "order at 6 jobs or fewer: about 1 in 50 that none is left before the delivery\n"
                         "runs out: likely 30 March 2026, could be 15 March 2026\n");
}

TEST(ForecastCommand, AHostileRequestIsRefusedByName) {
    struct Bad {
        const char* json;
        const char* named;
    };
    const Bad bads[] = {
        {"", "empty"},
        {"{", "JSON"},
        {"[1, 2]", "object"},
        {"{}", "history"},
        {R"({"history": []})", "today"},
        {R"({"history": "often", "today": "2026-03-01"})", "history"},
        {R"({"history": [], "today": "2026-03-01"})", "history"},
        {R"({"history": [], "today": "2026-99-01"})", "2026-99-01"},
        {R"({"history": [{"date": "2026-01-01", "jobs": 1e999}], "today": "2026-03-01"})", "jobs"},
        {R"({"history": [{"date": "2026-01-01", "jobs": -3}], "today": "2026-03-01"})", "history[0].jobs"},
        {R"({"history": [{"date": "2027-01-01", "jobs": 3}], "today": "2026-03-01"})", "history[0].date"},
        {R"({"history": [], "today": "2026-03-01", "priorRatePerDay": 1, "leadTimes": [[]]})", "leadTimes[0]"},
        {R"({"history": [], "today": "2026-03-01", "priorRatePerDay": 1, "service": 2})", "service"},
        {R"({"history": [], "today": "2026-03-01", "today": "2026-03-02"})", "given twice"},
        {R"({"history": [], "today": "2026-03-01", "x\u001b[31m": 1})", "not known"},
    };
    for (const Bad& bad : bads) {
        const std::string sentence = refusalOf(kForecast, bad.json);
        EXPECT_THAT(sentence, HasSubstr(bad.named)) << bad.json;
        EXPECT_EQ(sentence.find('\x1b'), std::string::npos);
    }
    EXPECT_THAT(refusalOf(kForecast, QByteArray(3 << 20, '[')), HasSubstr("1 MB"));
    EXPECT_THAT(refusalOf({QStringLiteral("forecast")}), HasSubstr("--ledger or --input is missing"));
}

/// The most that may be asked: eighty centuries, the busiest days, the slowest suppliers.
TEST(ForecastCommand, TheLargestRequestIsAnswered) {
    const Outcome run = cli(kForecast, R"({"history": [{"date": "0001-01-01", "jobs": 10000}],
        "today": "9999-12-31", "leadTimes": [1000, 0], "priorRatePerDay": 10000, "dailyRatio": 100, "service": 0.9999,
        "jobsLeft": 100000})");
    EXPECT_EQ(run.code, 0) << run.err;
    EXPECT_THAT(run.out, HasSubstr("\"p10\": null"));
}

} // namespace
} // namespace rw::cli::test
