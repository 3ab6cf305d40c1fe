// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/opening_hours.h"

#include "core/base/world_error.h"

#include <QByteArray>
#include <QDateTime>
#include <QTimeZone>

#include <algorithm>

namespace rw {

namespace {
using std::chrono::milliseconds;
using std::chrono::minutes;

QTimeZone zoneNamed(std::string_view name) {
    // UTC needs no zone data, and is what a shop has until somebody says where it is.
    return name == "UTC" ? QTimeZone::utc() : QTimeZone(QByteArray(name.data(), static_cast<qsizetype>(name.size())));
}

QTimeZone zoneOf(const OpeningHours& hours) {
    if (!isTimeZone(hours.timeZone)) {
        throw WorldError("this machine has no time zone " + hours.timeZone);
    }
    return zoneNamed(hours.timeZone);
}

QDateTime utc(Instant at) { return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), Qt::UTC); }

milliseconds offsetAt(const QTimeZone& zone, Instant at) { return std::chrono::seconds(zone.offsetFromUtc(utc(at))); }

/// The instant whose wall clock, written as if it were UTC, is shown.
Instant wallClock(const OpeningHours& hours, Instant at) { return at + offsetAt(zoneOf(hours), at); }
} // namespace

std::optional<DayHours> hoursOn(const OpeningHours& hours, CivilDate date) {
    return workingHoursOn(hours, Worker{}, date);
}

std::optional<DayHours> shared(const std::optional<DayHours>& one, const std::optional<DayHours>& other) {
    if (!one || !other) {
        return std::nullopt;
    }
    const DayHours both{std::max(one->from, other->from), std::min(one->to, other->to)};
    return both.from < both.to ? std::optional(both) : std::nullopt;
}

std::optional<DayHours> workingHoursOn(const OpeningHours& shop, const Worker& worker, CivilDate date) {
    const auto contains = [date](const std::vector<CivilDate>& days) {
        return std::ranges::find(days, date) != days.end();
    };
    if (contains(shop.closedDays) || contains(worker.daysOff)) {
        return std::nullopt;
    }
    const std::size_t day = std::chrono::weekday(std::chrono::sys_days(date)).iso_encoding() - 1;
    return shared(shop.week.at(day), worker.week ? worker.week->at(day) : shop.week.at(day));
}

bool isTimeZone(std::string_view name) {
    return !name.empty() && zoneNamed(name).isValid(); // to Qt an empty name is the zone of this machine
}

Instant toInstant(const OpeningHours& hours, CivilDate date, minutes sinceMidnight) {
    const QTimeZone zone = zoneOf(hours);
    const Instant wall = Instant(std::chrono::sys_days(date)) + sinceMidnight;
    // What the zone says a day earlier and a day later; they differ only where the clocks change in between.
    const milliseconds before = offsetAt(zone, wall - std::chrono::days(1));
    const milliseconds after = offsetAt(zone, wall + std::chrono::days(1));
    const Instant early = wall - std::max(before, after);
    const Instant late = wall - std::min(before, after);
    for (const Instant candidate : {early, late}) {
        if (candidate + offsetAt(zone, candidate) == wall) {
            return candidate;
        }
    }
    const QTimeZone::OffsetData change = zone.nextTransition(utc(early));
    return change.atUtc.isValid() ? Instant(milliseconds(change.atUtc.toMSecsSinceEpoch())) : late;
}

CivilDate localDate(const OpeningHours& hours, Instant at) {
    return CivilDate(std::chrono::floor<std::chrono::days>(wallClock(hours, at)));
}

minutes localMinutes(const OpeningHours& hours, Instant at) {
    const Instant wall = wallClock(hours, at);
    return std::chrono::floor<minutes>(wall - std::chrono::floor<std::chrono::days>(wall));
}

} // namespace rw
