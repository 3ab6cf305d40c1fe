// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/kill_moments.h"

#include <cstdlib>
#include <fstream>
#include <iostream>

namespace rw::stories {

namespace {
constexpr int kMostLines = 60;
constexpr double kNew = 0.3; ///< weight of the newest time in a mean that follows the machine's mood

void follow(double& mean, double newest) { mean += kNew * (newest - mean); }
} // namespace

std::uint64_t seedFor(const std::string& test) {
    const char* given = std::getenv("REELWRIGHT_SEED");
    const std::uint64_t seed = given != nullptr ? std::stoull(given) : std::random_device{}();
    std::cout << test << ": seed " << seed << "\n";
    std::ofstream("kill-seeds.txt", std::ios::app) << test << " " << seed << "\n";
    return seed;
}

void spinFor(std::chrono::microseconds time) {
    const auto end = std::chrono::steady_clock::now() + time;
    while (std::chrono::steady_clock::now() < end) {
    }
}

int KillMoments::linesToHear() {
    m_last = Clock::now();
    m_opened = false;
    return number() % 8 == 0 ? 0 : 1 + static_cast<int>(number() % kMostLines);
}

void KillMoments::heard(const std::string& line) {
    const auto now = Clock::now();
    const double passed = std::chrono::duration<double, std::micro>(now - m_last).count();
    m_last = now;
    if (line == "open") {
        m_opened = true;
        follow(m_opening, passed);
    } else if (line.starts_with("done ")) {
        follow(m_command, passed);
    }
}

std::chrono::microseconds KillMoments::timeLeft() {
    const double longest = m_opened ? 2 * m_command : 1.2 * m_opening;
    return std::chrono::microseconds(
        static_cast<std::int64_t>(std::uniform_real_distribution<double>(0, longest)(m_random)));
}

} // namespace rw::stories
