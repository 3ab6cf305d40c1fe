// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <random>
#include <string>

namespace rw::stories {

/// The seed of a test of random moments: REELWRIGHT_SEED if that is set. Printed, and kept in kill-seeds.txt.
[[nodiscard]] std::uint64_t seedFor(const std::string& test);

/// Passes time without giving the processor away, so that the moment is as fine as the clock.
void spinFor(std::chrono::microseconds time);

/// When a worker is killed: so many lines of its journal and then so much time, anywhere within that of two commands.
/// One in eight dies while it starts and opens the ledger.
class KillMoments {
public:
    explicit KillMoments(std::uint64_t seed)
        : m_random(seed) {}

    /// Called as the worker is started; how many lines to hear.
    [[nodiscard]] int linesToHear();
    void heard(const std::string& line);
    /// How long to wait after the last line that was to be heard.
    [[nodiscard]] std::chrono::microseconds timeLeft();
    /// For other choices of the same run.
    [[nodiscard]] std::uint64_t number() { return m_random(); }

private:
    using Clock = std::chrono::steady_clock;

    std::mt19937_64 m_random;
    Clock::time_point m_last = Clock::now();
    bool m_opened = false;
    double m_opening = 60'000; ///< microseconds from the start to an open ledger
    double m_command = 5'000;  ///< from a command to the word that it is done
};

} // namespace rw::stories
