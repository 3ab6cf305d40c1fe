// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/promise.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace std::chrono;

namespace {

// 2026: 14 May is a Thursday.
constexpr CivilDate kThursday = 2026y / May / 14;
constexpr CivilDate kFriday = 2026y / May / 15;
constexpr CivilDate kSaturday = 2026y / May / 16;
constexpr CivilDate kMonday = 2026y / May / 18;

/// Harbour Lane Strings: 10 to 18, Monday to Saturday; no margin until a test says so.
Workshop shop(int pairs) {
    Workshop workshop;
    workshop.hours.timeZone = "Europe/London";
    for (std::size_t day = 0; day < 6; ++day) {
        workshop.hours.week[day] = DayHours{10h, 18h};
    }
    workshop.people.assign(static_cast<std::size_t>(pairs), Worker{});
    workshop.machines = pairs;
    workshop.marginPercent = 0;
    return workshop;
}

std::vector<minutes> jobs(std::size_t count) { return std::vector<minutes>(count, 25min); }

Instant at(const Workshop& workshop, CivilDate date, minutes time) { return toInstant(workshop.hours, date, time); }

/// "14 May 11:30": the promise on the shop's own wall clock.
std::string promised(const Workshop& workshop, CivilDate date, minutes now, const std::vector<minutes>& ahead,
                     minutes job = 25min) {
    const Instant promise = earliestPromise(workshop, at(workshop, date, now), ahead, job);
    const CivilDate day = localDate(workshop.hours, promise);
    const auto time = localMinutes(workshop.hours, promise).count();
    const auto two = [](auto number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return std::to_string(static_cast<unsigned>(day.month())) + "-" + two(static_cast<unsigned>(day.day())) + " " +
           two(time / 60) + ":" + two(time % 60);
}

// The design's check table for promises.
TEST(Promise, EmptyQueue) { EXPECT_EQ(promised(shop(2), kThursday, 11h, {}), "5-14 11:30"); }

TEST(Promise, ThreeJobsAhead) { EXPECT_EQ(promised(shop(2), kThursday, 11h, jobs(3)), "5-14 12:00"); }

TEST(Promise, ATeamBehindNineJobsIsReadyOnFriday) {
    EXPECT_EQ(promised(shop(2), kThursday, 16h + 30min, jobs(32)), "5-15 16:00"); // the last is done 15:50
}

TEST(Promise, TheSameWithOnePersonRunsIntoSaturday) {
    EXPECT_EQ(promised(shop(1), kThursday, 16h + 30min, jobs(32)), "5-16 14:45"); // the last is done 14:35
}

TEST(Promise, TooLateForTodayIsTheNextOpening) {
    EXPECT_EQ(promised(shop(2), kThursday, 17h + 50min, {}), "5-15 10:30"); // done 10:25
}

TEST(Promise, NoJobIsSplitOverNight) {
    EXPECT_EQ(promised(shop(1), kThursday, 17h + 20min, jobs(1)), "5-15 10:30");
    EXPECT_EQ(promised(shop(1), kThursday, 17h, jobs(1)), "5-15 10:00"); // done 17:50: nobody is there at 18:00
    EXPECT_EQ(promised(shop(1), kThursday, 17h + 20min, {}), "5-14 17:45");
}

TEST(Promise, LiesWithinOpeningHours) {
    EXPECT_EQ(promised(shop(1), kSaturday, 17h + 35min, {}), "5-18 10:00"); // done at closing time
    EXPECT_EQ(promised(shop(1), kSaturday, 20h, {}), "5-18 10:30");
    EXPECT_EQ(promised(shop(1), kMonday, 7h, {}), "5-18 10:30");
    Workshop late = shop(1);
    late.hours.week[3] = DayHours{10h + 5min, 17h + 50min};
    EXPECT_EQ(promised(late, kThursday, 17h + 21min, {}), "5-15 10:00");
    EXPECT_EQ(promised(late, kThursday, 10h + 5min, {}), "5-14 10:30");
}

TEST(Promise, ClosedDaysAreSkipped) {
    Workshop workshop = shop(1);
    workshop.hours.closedDays = {kFriday, kSaturday};
    EXPECT_EQ(promised(workshop, kThursday, 17h + 50min, {}), "5-18 10:30");
}

TEST(Promise, MarginIsAShareOfTheOpenTimeUntilThen) {
    Workshop workshop = shop(2);
    workshop.marginPercent = 15;
    EXPECT_EQ(promised(workshop, kThursday, 11h, {}), "5-14 11:30");               // 11:25 and 3.75 minutes
    EXPECT_EQ(promised(workshop, kThursday, 11h, jobs(3)), "5-14 12:00");          // 11:50 and 7.5
    EXPECT_EQ(promised(workshop, kThursday, 16h + 30min, jobs(32)), "5-15 17:00"); // 15:50 and 66 = 440 x 15 %
    workshop.people.resize(1);
    EXPECT_EQ(promised(workshop, kThursday, 17h, jobs(1)), "5-15 10:00"); // 17:50 and 7.5
    EXPECT_EQ(promised(workshop, kThursday, 15h, jobs(6)),
              "5-15 10:30"); // 17:55, 5 of 26.25 minutes tonight, the rest by 10:21
}

TEST(Promise, PeopleWorkTheirOwnHoursWithinTheShops) {
    Workshop workshop = shop(2);
    workshop.people[0].week.emplace();
    workshop.people[0].week->at(3) = DayHours{12h, 20h}; // Thursday
    workshop.people[1].daysOff = {kThursday};
    EXPECT_EQ(promised(workshop, kThursday, 11h, {}), "5-14 12:30");
    EXPECT_EQ(promised(workshop, kThursday, 17h + 40min, {}), "5-15 10:30") << "the shop closes at 18";
    EXPECT_EQ(promised(workshop, kThursday, 12h, jobs(1)), "5-14 13:00") << "one of the two is away";
    EXPECT_EQ(promised(workshop, kFriday, 10h, jobs(1)), "5-15 11:00") << "and the other on Friday";
}

TEST(Promise, AMachineIsWaitedFor) {
    Workshop workshop = shop(2);
    workshop.machines = 1;
    EXPECT_EQ(promised(workshop, kThursday, 11h, jobs(1)), "5-14 12:00"); // 11:25, 11:50
}

TEST(Promise, WithoutAnybodyWhoStringsItEndsAtTheHorizon) {
    Workshop workshop = shop(1);
    workshop.people.clear();
    const Instant now = at(workshop, kThursday, 11h);
    EXPECT_EQ(earliestPromise(workshop, now, {}, 25min), now + kPromiseHorizon);
}

TEST(Promise, TellsWhenEachJobIsDone) {
    const Workshop workshop = shop(2);
    const Instant eleven = at(workshop, kThursday, 11h);
    const std::vector<Instant> done = {eleven + 60min, eleven + 10min, eleven + 20min};
    EXPECT_EQ(workDone(workshop, eleven, {60min, 10min, 10min}), done);
}

TEST(Promise, GoesToThePairThatIsFreeFirst) {
    EXPECT_EQ(promised(shop(2), kThursday, 11h, {60min, 10min, 10min}), "5-14 11:45");
    EXPECT_EQ(promised(shop(3), kThursday, 11h, {60min, 40min}), "5-14 11:30");
}

TEST(Promise, RoundsUpToTheShopsStepAndNeverDown) {
    Workshop workshop = shop(1);
    EXPECT_EQ(promised(workshop, kThursday, 11h + 5min, {}), "5-14 11:30");
    EXPECT_EQ(promised(workshop, kThursday, 11h + 6min, {}), "5-14 11:45");
    workshop.step = 60min;
    EXPECT_EQ(promised(workshop, kThursday, 11h, {}), "5-14 12:00");
    workshop.step = 1min;
    const Instant odd = at(workshop, kThursday, 11h) + 1ms;
    EXPECT_EQ(earliestPromise(workshop, odd, {}, 25min), at(workshop, kThursday, 11h + 26min));
}

TEST(Promise, AJobLongerThanAnyDayIsCarriedOver) { EXPECT_EQ(promised(shop(1), kThursday, 16h, {}, 9h), "5-15 17:00"); }

TEST(Promise, AShopThatNeverOpensEndsAtTheHorizon) {
    Workshop workshop = shop(2);
    workshop.hours.week = {};
    const Instant now = at(workshop, kThursday, 11h);
    EXPECT_EQ(earliestPromise(workshop, now, jobs(3), 25min), now + kPromiseHorizon);
}

TEST(Promise, MoreWorkThanAYearHoldsEndsAtTheHorizon) {
    const Instant now = at(shop(1), kThursday, 11h);
    EXPECT_EQ(earliestPromise(shop(1), now, jobs(20'000), 25min), now + kPromiseHorizon);
}

// London, IANA tz database: 29 March 2026 01:00 becomes 02:00; 25 October 2026 02:00 becomes 01:00.
TEST(Promise, WorksThroughTheNightsWhenTheClocksChange) {
    Workshop workshop = shop(1);
    workshop.hours.week.fill(DayHours{0h, 24h});
    EXPECT_EQ(promised(workshop, 2026y / March / 29, 50min, {}), "3-29 02:15");
    EXPECT_EQ(promised(workshop, 2026y / March / 29, 30min, {}), "3-29 02:00"); // 00:55, and 01:00 is 02:00
    const Instant repeated = at(workshop, 2026y / October / 25, 1h + 50min);
    EXPECT_EQ(earliestPromise(workshop, repeated, {}, 25min), repeated + 25min); // 01:15 for the second time
    // 23 hours of March, 25 of October
    EXPECT_EQ(promised(workshop, 2026y / March / 29, 0h, std::vector<minutes>(22, 60min), 60min), "3-30 00:00");
    EXPECT_EQ(promised(workshop, 2026y / October / 25, 0h, std::vector<minutes>(23, 60min), 60min), "10-25 23:00");
}

TEST(Promise, OpensByTheWallClockOnBothSidesOfAClockChange) {
    EXPECT_EQ(promised(shop(1), 2026y / March / 28, 17h + 50min, {}), "3-30 10:30"); // Saturday to Monday
    EXPECT_EQ(promised(shop(1), 2026y / October / 24, 17h + 50min, {}), "10-26 10:30");
}

} // namespace
