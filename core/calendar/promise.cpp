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

/// The openings of the shop in which somebody works, from a moment on, worked out as far as somebody asks.
class Openings {
public:
    Openings(const OpeningHours& shop, const Worker& worker, Instant now)
        : m_shop(shop)
        , m_worker(worker)
        , m_now(now)
        , m_date(localDate(shop, now))
        , m_last(localDate(shop, now + kPromiseHorizon)) {}

    /// The opening of that number; nothing beyond the horizon.
    std::optional<Opening> get(std::size_t number) {
        while (m_openings.size() <= number && std::chrono::sys_days(m_date) <= std::chrono::sys_days(m_last)) {
            if (const auto day = workingHoursOn(m_shop, m_worker, m_date)) {
                const Opening opening{std::max(m_now, toInstant(m_shop, m_date, day->from)),
                                      toInstant(m_shop, m_date, day->to)};
                if (opening.from < opening.to) {
                    m_openings.push_back(opening);
                }
            }
            m_date = std::chrono::sys_days(m_date) + std::chrono::days(1);
        }
        return number < m_openings.size() ? std::optional(m_openings[number]) : std::nullopt;
    }

    /// The first place that is not before `at`, looked for from `from` on; the end of an opening is one.
    std::optional<Place> placeAt(Instant at, std::size_t from = 0) {
        auto opening = get(from);
        while (opening && opening->to < at) {
            opening = get(++from);
        }
        return opening ? std::optional(Place{from, std::max(at, opening->from)}) : std::nullopt;
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
        for (std::size_t day = 0; day < m_shop.week.size(); ++day) {
            const auto hours = shared(m_shop.week[day], m_worker.week ? (*m_worker.week)[day] : m_shop.week[day]);
            longest = hours ? std::max(longest, hours->to - hours->from) : longest;
        }
        return longest;
    }

    const OpeningHours& m_shop;
    const Worker& m_worker;
    Instant m_now;
    CivilDate m_date;
    CivilDate m_last;
    std::vector<Opening> m_openings;
};

/// The people and machines as they take one job after another.
class Crew {
public:
    Crew(const Workshop& workshop, Instant now)
        : m_machinesFree(static_cast<std::size_t>(workshop.machines), now) {
        for (const Worker& worker : workshop.people) {
            m_people.push_back({Openings(workshop.hours, worker, now), {}, now});
        }
    }

    /// Gives the job to the person and the machine that finish it first, and says when; nothing beyond the horizon.
    std::optional<Instant> take(minutes job) {
        const auto machine = std::ranges::min_element(m_machinesFree);
        Person* first = nullptr;
        std::optional<Place> end;
        for (Person& person : m_people) {
            const auto start = person.openings.placeAt(std::max(person.free, *machine), person.opening);
            const auto theirs = start ? person.openings.jobsEnd(*start, job) : std::nullopt;
            if (theirs && (!end || theirs->at < end->at)) {
                first = &person;
                end = theirs;
            }
        }
        if (!end) {
            return std::nullopt;
        }
        first->opening = end->opening;
        first->free = end->at;
        *machine = end->at;
        return end->at;
    }

private:
    struct Person {
        Openings openings;
        std::size_t opening; ///< in which `free` lies
        Instant free;
    };
    std::vector<Person> m_people;
    std::vector<Instant> m_machinesFree;
};

/// `at`, moved on to the next multiple of `step` on the wall clock of its day.
Instant roundedUpOnWallClock(const OpeningHours& hours, Instant at, minutes step) {
    const Instant whole = std::chrono::ceil<minutes>(at);
    const auto past = localMinutes(hours, whole) % step;
    // Elapsed minutes, not a wall clock reading: in a repeated hour a reading could lie before the work is done.
    return past == minutes(0) ? whole : whole + (step - past);
}
} // namespace

std::vector<Instant> workDone(const Workshop& workshop, Instant now, const std::vector<minutes>& jobs) {
    assert(workshop.machines >= 1);
    Crew crew(workshop, now);
    std::vector<Instant> done;
    done.reserve(jobs.size());
    for (const minutes job : jobs) {
        done.push_back(crew.take(job).value_or(now + kPromiseHorizon));
    }
    return done;
}

Instant earliestPromise(const Workshop& workshop, Instant now, const std::vector<minutes>& ahead, minutes job) {
    assert(workshop.marginPercent >= 0 && workshop.step > minutes(0));
    const Instant horizon = now + kPromiseHorizon;
    std::vector<minutes> jobs = ahead;
    jobs.push_back(job);
    const Worker shopItself;
    Openings openings(workshop.hours, shopItself, now);
    const auto done = openings.placeAt(workDone(workshop, now, jobs).back());
    if (!done || done->at >= horizon) {
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
