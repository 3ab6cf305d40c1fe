// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/promise.h"

#include <chrono>
#include <cstddef>

namespace rw::desk {

struct JobTimes {
    Instant logged;
    Instant strung;
    Instant collected;
};

/// The calendar of the demo shop's past: open days are counted back from the day of `now`, which is not one of them, so
/// everything lies before `now` whatever the hour.
class DemoDays {
public:
    DemoDays(Workshop workshop, Instant now);

    [[nodiscard]] const OpeningHours& hours() const { return m_workshop.hours; }
    /// The morning on which the ledger began: before the earliest job.
    [[nodiscard]] Instant first() const;
    /// `minute` after midnight of the open day that lies so many open days back; >= 1.
    [[nodiscard]] Instant at(int openDaysAgo, int minute) const;
    /// When a job came in, was strung and collected; kOnEarlierTwentieth as demo_data.h has it.
    [[nodiscard]] JobTimes timesOf(int openDaysAgo, int minute) const;
    /// What can be promised now behind `ahead` jobs of 25 minutes.
    [[nodiscard]] Instant promise(std::size_t ahead) const;

private:
    [[nodiscard]] CivilDate openDay(int openDaysAgo) const;
    /// The last twentieth of a month before the weeks of the other jobs, so that the ledger has no empty months behind
    /// it.
    [[nodiscard]] CivilDate earlierTwentieth() const;

    Workshop m_workshop;
    Instant m_now;
    CivilDate m_today;
};

} // namespace rw::desk
