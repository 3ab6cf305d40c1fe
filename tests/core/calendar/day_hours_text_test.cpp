// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/day_hours_text.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace std::chrono_literals;

TEST(DayHoursText, IsReadAsPeopleWriteIt) {
    const DayHours tenToSix{10h, 18h};
    for (const char* text : {"10:00-18:00", "10-18", "10 - 18", "10.00–18.00", "10:00 – 18", " 10-18 "}) {
        EXPECT_EQ(dayHoursFromText(text), tenToSix) << text;
    }
    EXPECT_EQ(dayHoursFromText("9:30-12:15"), (DayHours{9h + 30min, 12h + 15min}));
    EXPECT_EQ(dayHoursFromText("0-24"), (DayHours{0h, 24h}));
    EXPECT_EQ(dayHoursText(tenToSix), "10:00-18:00");
    EXPECT_EQ(dayHoursText({9h + 5min, 24h}), "09:05-24:00");
}

TEST(DayHoursText, NothingElseIsHours) {
    for (const char* text : {"", "10", "18-10", "10-10", "10-25", "10:60-18", "ten to six", "10-18-20", "10:00:00-18",
                             "-18", "10-", "010-18", "24:01-25"}) {
        EXPECT_EQ(dayHoursFromText(text), std::nullopt) << text;
    }
}

TEST(DaysText, IsAListWithStretches) {
    const auto days = daysFromText("2026-12-26, 2026-08-03 to 2026-08-06;2026-12-25 2026-12-26\n");
    ASSERT_TRUE(days);
    EXPECT_EQ(*days, (std::vector<CivilDate>{2026y / 8 / 3, 2026y / 8 / 4, 2026y / 8 / 5, 2026y / 8 / 6,
                                             2026y / 12 / 25, 2026y / 12 / 26}));
    EXPECT_EQ(daysText(*days), "2026-08-03 to 2026-08-06, 2026-12-25, 2026-12-26");
    EXPECT_EQ(daysFromText("2026-12-30 to 2027-01-02")->size(), 4U);
    EXPECT_TRUE(daysFromText(" ,; ")->empty());
    EXPECT_EQ(daysText({}), "");
}

TEST(DaysText, NamesTheWordThatCannotBeRead) {
    const auto wordOf = [](std::string_view text) {
        const auto days = daysFromText(text);
        return days ? std::string("read") : days.error().text("text");
    };
    EXPECT_EQ(wordOf("2026-12-25 christmas"), "christmas");
    EXPECT_EQ(wordOf("2026-02-30"), "2026-02-30");
    EXPECT_EQ(wordOf("to 2026-12-25"), "to");
    EXPECT_EQ(wordOf("2026-12-25 to"), "to");
    EXPECT_EQ(wordOf("2026-12-25 to to 2026-12-27"), "to");
    EXPECT_EQ(wordOf("2026-12-25 to 2026-12-24"), "2026-12-24") << "backwards";
    EXPECT_EQ(wordOf("2026-12-25 to 2028-12-25"), "2028-12-25") << "nobody is away for two years";
}
