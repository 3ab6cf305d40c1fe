// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command_line.h"

#include "app/cli/commands.h"
#include "app/cli/help.h"
#include "app/cli/moment.h"
#include "tests/app/cli.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rw::cli {
namespace {

using testing::HasSubstr;

Result<CommandLine> parsed(std::vector<std::string> words) { return parseCommandLine(words); }

TEST(CommandLine, OptionsMayStandInAnyOrderAndForm) {
    const auto line = parsed({"card", "--out=card.pdf", "--job", "2120", "--json", "--ledger", "shop.ledger"});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->command->name, "card");
    EXPECT_EQ(line->given.value("--out"), "card.pdf");
    EXPECT_EQ(line->given.value("--job"), "2120");
    EXPECT_TRUE(line->given.has("--json"));
    EXPECT_FALSE(line->given.maybe("--machine"));
}

TEST(CommandLine, AValueMayLookLikeAnything) {
    EXPECT_EQ(parsed({"history", "--ledger", "x", "--customer", "--json"})->given.value("--customer"), "--json");
    EXPECT_EQ(parsed({"history", "--ledger=a=b", "--customer==b"})->given.value("--ledger"), "a=b");
}

TEST(CommandLine, AnEmptyValueIsNone) {
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"cut", "--input", ""}, {"cut", "--input="}, {"cut", "--input"}}) {
        const auto line = parseCommandLine(words);
        ASSERT_FALSE(line);
        EXPECT_EQ(line.error().code(), Code::Missing);
        EXPECT_EQ(line.error().text("what"), "value of --input");
    }
}

TEST(CommandLine, HelpIsUnderstoodWhateverElseIsWrong) {
    for (const std::vector<std::string>& words : {std::vector<std::string>{"--help"},
                                                  {"-h"},
                                                  {"stock", "--help"},
                                                  {"stok", "--help"},
                                                  {"cut", "--inptu", "-h"}}) {
        const auto line = parseCommandLine(words);
        ASSERT_TRUE(line);
        EXPECT_TRUE(line->help);
    }
    EXPECT_EQ(parsed({"stock", "--help"})->command->name, "stock");
}

TEST(CommandLine, HelpNamesEveryCommandOptionAndExitCode) {
    const std::string all = helpText(nullptr);
    for (const Command& command : commands()) {
        EXPECT_THAT(all, HasSubstr("\n  " + std::string(command.name) + " "));
        const std::string own = helpText(&command);
        EXPECT_THAT(own, HasSubstr("Exit codes"));
        for (const Option& option : command.options) {
            EXPECT_THAT(own, HasSubstr(std::string(option.name)));
        }
        for (const char* code : {"\n  0  ", "\n  1  ", "\n  2  ", "\n  3  "}) {
            EXPECT_THAT(own, HasSubstr(code));
        }
    }
}

TEST(CommandLine, HelpFitsATerminal) {
    std::vector<std::string> texts{helpText(nullptr)};
    for (const Command& command : commands()) {
        texts.push_back(helpText(&command));
    }
    for (const std::string& text : texts) {
        std::size_t from = 0;
        for (std::size_t to = text.find('\n'); to != std::string::npos; from = to + 1, to = text.find('\n', from)) {
            EXPECT_LE(to - from, 80U) << text.substr(from, to - from);
        }
    }
}

TEST(CommandLine, TheProgramSaysSoToo) {
    const auto help = test::cli({QStringLiteral("--help")});
    EXPECT_EQ(help.code, 0);
    EXPECT_EQ(help.out, helpText(nullptr));
    EXPECT_EQ(help.err, "");
    EXPECT_THAT(test::cli({QStringLiteral("--version")}).out, HasSubstr("reelwright-cli "));
    const auto nothing = test::cli({});
    EXPECT_EQ(nothing.code, 2);
    EXPECT_EQ(nothing.out, "");
    EXPECT_EQ(nothing.err, helpText(nullptr));
}

TEST(Moment, IsTheShopsClockUnlessAZoneIsWritten) {
    const OpeningHours london{.timeZone = "Europe/London", .week = {}, .closedDays = {}};
    using namespace std::chrono_literals;
    const auto utc = [](std::chrono::year_month_day day, std::chrono::minutes time) {
        return Instant(std::chrono::sys_days(day) + time);
    };
    EXPECT_EQ(*parseMoment("2026-03-12T10:05", london), utc(2026y / 3 / 12, 605min));
    EXPECT_EQ(*parseMoment("2026-07-12T10:05", london), utc(2026y / 7 / 12, 545min)); // summer time
    EXPECT_EQ(*parseMoment("2026-07-12T10:05:00Z", london), utc(2026y / 7 / 12, 605min));
    EXPECT_EQ(*parseMoment("2026-07-12T10:05+02:00", london), utc(2026y / 7 / 12, 485min));
    for (const char* bad : {"", "noon", "12.3.2026", "2026-13-01T10:00", "2026-03-12T25:00", "0001-01-01T00:00"}) {
        EXPECT_EQ(parseMoment(bad, london).error().code(), Code::Unreadable) << bad;
    }
}

} // namespace
} // namespace rw::cli
