// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/opening_hours.h"

#include "core/base/world_error.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace std::chrono;

namespace {

OpeningHours hoursIn(const std::string& zone) {
    OpeningHours hours;
    hours.timeZone = zone;
    for (std::size_t day = 0; day < 6; ++day) {
        hours.week[day] = DayHours{10h, 18h};
    }
    return hours;
}

Instant utc(CivilDate date, milliseconds time) { return Instant(sys_days(date)) + time; }

TEST(OpeningHours, MondayToSaturdayAndNotOnClosedDays) {
    OpeningHours hours = hoursIn("Europe/London");
    EXPECT_EQ(hoursOn(hours, 2026y / May / 4), (DayHours{10h, 18h})); // a Monday
    EXPECT_EQ(hoursOn(hours, 2026y / May / 9), (DayHours{10h, 18h}));
    EXPECT_EQ(hoursOn(hours, 2026y / May / 10), std::nullopt);
    hours.closedDays = {2026y / May / 4};
    EXPECT_EQ(hoursOn(hours, 2026y / May / 4), std::nullopt);
    hours.week[1] = DayHours{18h, 10h};
    EXPECT_EQ(hoursOn(hours, 2026y / May / 5), std::nullopt);
}

TEST(OpeningHours, WallClockAndInstantInWinterAndSummer) {
    const OpeningHours hours = hoursIn("Europe/London");
    EXPECT_EQ(toInstant(hours, 2026y / January / 20, 10h), utc(2026y / January / 20, 10h));
    EXPECT_EQ(toInstant(hours, 2026y / July / 20, 10h), utc(2026y / July / 20, 9h));
    EXPECT_EQ(localMinutes(hours, utc(2026y / July / 20, 9h + 5min + 59s)), 10h + 5min);
    EXPECT_EQ(localDate(hours, utc(2026y / July / 20, 23h)), 2026y / July / 21);
    EXPECT_EQ(toInstant(hours, 2026y / July / 20, 24h), toInstant(hours, 2026y / July / 21, 0h));
}

// The clocks of London went forward on 29 March 2026 at 01:00 and back on 25 October 2026 at 02:00 (IANA tz database).
TEST(OpeningHours, ASkippedHourMeansTheMomentAfterIt) {
    const OpeningHours hours = hoursIn("Europe/London");
    const CivilDate day = 2026y / March / 29;
    EXPECT_EQ(toInstant(hours, day, 59min), utc(day, 59min));
    EXPECT_EQ(toInstant(hours, day, 1h), utc(day, 1h));
    EXPECT_EQ(toInstant(hours, day, 1h + 30min), utc(day, 1h));
    EXPECT_EQ(toInstant(hours, day, 2h), utc(day, 1h));
    EXPECT_EQ(toInstant(hours, day, 10h), utc(day, 9h));
    EXPECT_EQ(localMinutes(hours, utc(day, 1h)), 2h);
}

TEST(OpeningHours, ARepeatedHourMeansTheEarlierOne) {
    const OpeningHours hours = hoursIn("Europe/London");
    const CivilDate day = 2026y / October / 25;
    EXPECT_EQ(toInstant(hours, day, 59min), utc(2026y / October / 24, 23h + 59min));
    EXPECT_EQ(toInstant(hours, day, 1h + 30min), utc(day, 30min));
    EXPECT_EQ(toInstant(hours, day, 2h), utc(day, 2h));
    EXPECT_EQ(localMinutes(hours, utc(day, 1h + 30min)), 1h + 30min);
}

// Chatham goes back from +13:45 to +12:45 on 5 April 2026 at 03:45 (IANA tz database).
TEST(OpeningHours, KnowsZonesFarFromGreenwichAndOddOffsets) {
    const OpeningHours hours = hoursIn("Pacific/Chatham");
    EXPECT_EQ(toInstant(hours, 2026y / April / 5, 0h), utc(2026y / April / 4, 10h + 15min));
    EXPECT_EQ(toInstant(hours, 2026y / April / 5, 3h), utc(2026y / April / 4, 13h + 15min));
    EXPECT_EQ(toInstant(hours, 2026y / April / 5, 10h), utc(2026y / April / 4, 21h + 15min));
    EXPECT_EQ(localDate(hours, utc(2026y / April / 4, 21h + 15min)), 2026y / April / 5);
}

TEST(OpeningHours, TellsAZoneThatDoesNotExist) {
    EXPECT_TRUE(isTimeZone("Europe/London"));
    EXPECT_TRUE(isTimeZone("UTC"));
    EXPECT_FALSE(isTimeZone("Harbour/Lane"));
    EXPECT_FALSE(isTimeZone(""));
    EXPECT_THROW((void)localDate(hoursIn("Harbour/Lane"), Instant{}), WorldError);
}

} // namespace
