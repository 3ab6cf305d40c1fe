// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>

namespace rw::world {

/// Chance in the simulated shop: the same seed is the same shop, with every compiler.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_bits(seed) {}

    [[nodiscard]] double uniform(); ///< in [0, 1)
    [[nodiscard]] double normal(double mean, double sd);
    /// A normal number, and the border itself where it falls outside.
    [[nodiscard]] double normalWithin(double mean, double sd, double low, double high);
    [[nodiscard]] bool chance(double p) { return uniform() < p; }
    [[nodiscard]] int wholeWithin(int low, int high); ///< each as likely
    [[nodiscard]] int poisson(double mean);           ///< for small means

private:
    std::mt19937_64 m_bits;
};

} // namespace rw::world
