// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_days.h"

#include "core/desk/demo_data.h"

#include <algorithm>

namespace rw::desk {

namespace {
using std::chrono::days;
using std::chrono::minutes;
using std::chrono::sys_days;

constexpr int kFirstOpenDay = 32; ///< before the oldest row of demo_weeks.cpp
constexpr minutes kUntilStrung{150};
constexpr int kLastStart = 17 * 60; ///< a racket that comes in later than can be begun today waits for tomorrow
} // namespace

DemoDays::DemoDays(Workshop workshop, Instant now)
    : m_workshop(std::move(workshop))
    , m_now(now)
    , m_today(localDate(m_workshop.hours, now)) {}

CivilDate DemoDays::openDay(int openDaysAgo) const {
    sys_days day = m_today;
    while (openDaysAgo > 0) {
        day -= days(1);
        openDaysAgo -= hoursOn(m_workshop.hours, CivilDate(day)) ? 1 : 0;
    }
    return CivilDate(day);
}

CivilDate DemoDays::earlierTwentieth() const {
    const CivilDate firstDay = openDay(kFirstOpenDay);
    const auto month = firstDay.year() / firstDay.month();
    const CivilDate date = month / std::chrono::day(20);
    return sys_days(date) < sys_days(firstDay) ? date : (month - std::chrono::months(1)) / std::chrono::day(20);
}

Instant DemoDays::first() const {
    const CivilDate day = std::min(openDay(kFirstOpenDay), CivilDate(sys_days(earlierTwentieth()) - days(1)));
    return toInstant(m_workshop.hours, day, minutes(9 * 60 + 30));
}

Instant DemoDays::at(int openDaysAgo, int minute) const {
    return toInstant(m_workshop.hours, openDay(openDaysAgo), minutes(minute));
}

JobTimes DemoDays::timesOf(int openDaysAgo, int minute) const {
    const minutes inThe(minute);
    if (openDaysAgo == demo::kOnEarlierTwentieth) {
        const CivilDate day = earlierTwentieth();
        const Instant logged = toInstant(m_workshop.hours, day, inThe);
        return {logged, logged + kUntilStrung, toInstant(m_workshop.hours, CivilDate(sys_days(day) + days(1)), inThe)};
    }
    const Instant logged = at(openDaysAgo, minute);
    const bool today = minute + kUntilStrung.count() <= kLastStart;
    const Instant strung = today ? logged + kUntilStrung : at(openDaysAgo - 1, 10 * 60 + minute % 60);
    return {logged, strung, at(std::max(1, openDaysAgo - 2), 17 * 60 + minute % 60)};
}

Instant DemoDays::promise(std::size_t ahead) const {
    return earliestPromise(m_workshop, m_now, std::vector<minutes>(ahead, minutes(25)), minutes(25));
}

} // namespace rw::desk
