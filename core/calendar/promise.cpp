// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/promise.h"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <optional>

namespace rw {

namespace {
using std::chrono::milliseconds;
using std::chrono::minutes;

struct Opening {
    Instant from;
    Instant to;
};

/// A place in the shop's working time: an instant inside an opening, or the end of one.
struct Place {
    std::size_t opening = 0;
    Instant at;
};

/// The openings from a moment on, worked out as far as somebody asks.
class Openings {
public:
    Openings(const OpeningHours& hours, Instant now)
        : m_hours(hours)
        , m_now(now)
        , m_date(localDate(hours, now))
        , m_last(localDate(hours, now + kPromiseHorizon)) {}

    /// The opening of that number; nothing beyond the horizon.
    std::optional<Opening> get(std::size_t number) {
        while (m_openings.size() <= number && std::chrono::sys_days(m_date) <= std::chrono::sys_days(m_last)) {
            if (const auto day = hoursOn(m_hours, m_date)) {
                const Opening opening{std::max(m_now, toInstant(m_hours, m_date, day->from)),
                                      toInstant(m_hours, m_date, day->to)};
                if (opening.from < opening.to) {
                    m_openings.push_back(opening);
                }
            }
            m_date = std::chrono::sys_days(m_date) + std::chrono::days(1);
        }
        return number < m_openings.size() ? std::optional(m_openings[number]) : std::nullopt;
    }

    std::optional<Place> first() {
        const auto opening = get(0);
        return opening ? std::optional(Place{0, opening->from}) : std::nullopt;
    }

    /// `time` of open time after `start`, over as many openings as it takes.
    std::optional<Place> later(Place start, milliseconds time) {
        auto opening = get(start.opening);
        while (opening && opening->to - start.at < time) {
            time -= opening->to - start.at;
            opening = get(++start.opening);
            start.at = opening ? opening->from : start.at;
        }
        return opening ? std::optional(Place{start.opening, start.at + time}) : std::nullopt;
    }

    /// Where a job that begins at `start` or later ends: within one opening, unless none is long enough.
    std::optional<Place> jobsEnd(Place start, milliseconds job) {
        if (job > longestDay()) {
            return later(start, job);
        }
        auto opening = get(start.opening);
        while (opening && opening->to - start.at < job) {
            opening = get(++start.opening);
            start.at = opening ? opening->from : start.at;
        }
        return opening ? std::optional(Place{start.opening, start.at + job}) : std::nullopt;
    }

    /// Open time between the first opening and `place`.
    milliseconds openTimeUntil(Place place) {
        milliseconds sum{0};
        for (std::size_t i = 0; i < place.opening; ++i) {
            sum += get(i)->to - get(i)->from;
        }
        return sum + (place.at - get(place.opening)->from);
    }

private:
    [[nodiscard]] milliseconds longestDay() const {
        minutes longest{0};
        for (const auto& day : m_hours.week) {
            longest = day ? std::max(longest, day->to - day->from) : longest;
        }
        return longest;
    }

    const OpeningHours& m_hours;
    Instant m_now;
    CivilDate m_date;
    CivilDate m_last;
    std::vector<Opening> m_openings;
};

/// Where the last of `jobs` ends when each goes to the pair that is free first.
std::optional<Place> lastJobsEnd(Openings& openings, int pairs, const std::vector<minutes>& jobs) {
    const auto start = openings.first();
    if (!start) {
        return std::nullopt;
    }
    std::vector<Place> freeAt(static_cast<std::size_t>(pairs), *start);
    std::optional<Place> end = start;
    for (const minutes job : jobs) {
        const auto pair = std::ranges::min_element(freeAt, {}, &Place::at);
        end = openings.jobsEnd(*pair, job);
        if (!end) {
            return std::nullopt;
        }
        *pair = *end;
    }
    return end;
}

/// `at`, moved on to the next multiple of `step` on the wall clock of its day.
Instant roundedUpOnWallClock(const OpeningHours& hours, Instant at, minutes step) {
    const Instant whole = std::chrono::ceil<minutes>(at);
    const auto past = localMinutes(hours, whole) % step;
    // Elapsed minutes, not a wall clock reading: in a repeated hour a reading could lie before the work is done.
    return past == minutes(0) ? whole : whole + (step - past);
}
} // namespace

Instant earliestPromise(const Workshop& workshop, Instant now, const std::vector<minutes>& ahead, minutes job) {
    assert(workshop.pairs >= 1 && workshop.marginPercent >= 0 && workshop.step > minutes(0));
    const Instant horizon = now + kPromiseHorizon;
    Openings openings(workshop.hours, now);
    std::vector<minutes> jobs = ahead;
    jobs.push_back(job);
    const auto done = lastJobsEnd(openings, workshop.pairs, jobs);
    if (!done) {
        return horizon;
    }
    const milliseconds margin = openings.openTimeUntil(*done) * workshop.marginPercent / 100;
    const auto ready = openings.later(*done, margin);
    if (!ready) {
        return horizon;
    }
    const Instant rounded = roundedUpOnWallClock(workshop.hours, ready->at, workshop.step);
    if (rounded < openings.get(ready->opening)->to) {
        return rounded;
    }
    const auto next = openings.get(ready->opening + 1);
    return next ? roundedUpOnWallClock(workshop.hours, next->from, workshop.step) : horizon;
}

} // namespace rw
