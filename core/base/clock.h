// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>

namespace rw {

/// A moment in UTC, to the millisecond. Civil dates and local times are made of it in core/calendar.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;
/// A day on the wall calendar of the shop.
using CivilDate = std::chrono::year_month_day;

/// Where the program asks what time it is. Tests hand in one that stands still.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
};

class SystemClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override {
        return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    }
};

/// A clock that shows what it is told. For tests, pictures and the demo day.
class FixedClock final : public Clock {
public:
    explicit FixedClock(Instant start)
        : m_now(start) {}
    [[nodiscard]] Instant now() const override { return m_now; }
    void advance(std::chrono::milliseconds by) { m_now += by; }
    void set(Instant to) { m_now = to; }

private:
    Instant m_now;
};

} // namespace rw
