// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/moment_text.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
/// Thursday 12 March 2026, eleven o'clock, in winter time.
constexpr Instant kNow = sys_days(std::chrono::year(2026) / 3 / 12) + 11h;

OpeningHours hours() {
    OpeningHours open;
    open.timeZone = "Europe/London";
    for (std::size_t day = 0; day < 6; ++day) {
        open.week[day] = DayHours{10h, 18h};
    }
    return open;
}
Instant on(unsigned month, unsigned day, std::chrono::minutes time, int year = 2026) {
    return toInstant(hours(), std::chrono::year(year) / month / day, time);
}
Result<Instant> read(const char* text, const QLocale& locale = kBritish) {
    return momentFromText(QString::fromUtf8(text), kNow, hours(), locale);
}

TEST(MomentText, IsReadAsPeopleSayIt) {
    const struct {
        const char* typed;
        Instant meant;
    } cases[] = {
        {"17:00", on(3, 12, 17h)},
        {"9:30", on(3, 13, 9h + 30min)}, // that is over today
        {"today", on(3, 12, 18h)},
        {"today 16:30", on(3, 12, 16h + 30min)},
        {"tomorrow 17:00", on(3, 13, 17h)},
        {"Tomorrow", on(3, 13, 18h)},
        {"fri", on(3, 13, 18h)},
        {"friday 17:00", on(3, 13, 17h)},
        {"thu 17:00", on(3, 12, 17h)},
        {"thu 10:00", on(3, 19, 10h)},
        {"sun", on(3, 15, 24h)}, // closed: the end of the day
        {"13 mar", on(3, 13, 18h)},
        {"Fri 13 Mar 17:00", on(3, 13, 17h)},
        {"13.3. 17:00", on(3, 13, 17h)},
        {"13/3", on(3, 13, 18h)},
        {"2 jan", on(1, 2, 18h, 2027)},
        {"Mon 1 Feb 2027 10:30", on(2, 1, 10h + 30min, 2027)},
        {"2026-03-13 17:00", on(3, 13, 17h)},
    };
    for (const auto& c : cases) {
        const auto moment = read(c.typed);
        ASSERT_TRUE(moment) << c.typed;
        EXPECT_EQ(*moment, c.meant) << c.typed;
    }
    EXPECT_EQ(read("3/13", QLocale(QLocale::English, QLocale::UnitedStates)), on(3, 13, 18h));
}

TEST(MomentText, WhatIsNoTimeIsRefused) {
    for (const char* text : {"soon", "25:00", "17", "mar", "31.2.", "fri mon", "17:00 18:00", "", "today tomorrow"}) {
        const auto moment = read(text);
        ASSERT_FALSE(moment) << text;
        EXPECT_EQ(moment.error().code(), Code::Unreadable) << text;
    }
    EXPECT_EQ(read("today 10:00").error().code(), Code::ImpossibleValue);
    EXPECT_EQ(read("2026-03-11").error().code(), Code::ImpossibleValue);
}

} // namespace
} // namespace rw::ui
