// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/stories/step.h"

#include <cstdint>
#include <functional>
#include <random>
#include <string>

namespace rw::stories {

/// A stringer's day as commands: a reel onto the shelf, then job after job from the counter to the rack, a length lost
/// now and then. What it does next it reads from the ledger, as somebody does who comes back to the bench.
class WorkingDay {
public:
    /// Gives a command; false when it was refused.
    using Give = std::function<bool(const Step&)>;

    /// `prefix` keeps the keys of this day apart from those of others; the same seed makes the same day.
    WorkingDay(std::string prefix, std::uint64_t seed, Give give)
        : m_prefix(std::move(prefix))
        , m_random(seed)
        , m_give(std::move(give)) {}

    /// Brings to an end what stands in the ledger logged or on a machine.
    void takeUpWhatWasLeft(desk::Ledger& ledger);
    void nextJob(desk::Ledger& ledger);

private:
    void give(const Step& step);
    void finish(desk::Ledger& ledger, const std::string& key);
    [[nodiscard]] bool oneIn(unsigned times) { return m_random() % times == 0; }

    std::string m_prefix;
    std::mt19937_64 m_random;
    Give m_give;
    int m_jobs = 0;
};

} // namespace rw::stories
