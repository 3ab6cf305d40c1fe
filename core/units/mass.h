// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace rw {

/// What a scale in the shop shows: whole milligrams, signed.
class Mass {
public:
    [[nodiscard]] static constexpr Mass fromMilligrams(std::int64_t mg) { return Mass(mg); }

    /// Reads "236", "236,4 g", "0.236 kg". A bare number is grams. Unreadable, TooFine (below a milligram),
    /// OutOfRange below nothing or beyond 100 kg.
    [[nodiscard]] static Result<Mass> tryParse(std::string_view text);

    [[nodiscard]] constexpr std::int64_t milligrams() const { return m_mg; }
    [[nodiscard]] constexpr double grams() const { return static_cast<double>(m_mg) / 1000.0; }
    [[nodiscard]] constexpr bool isPositive() const { return m_mg > 0; }
    /// "236.4 g": with a point and no trailing noughts. For logs, files and tests; people read ui/text.
    [[nodiscard]] std::string text() const;

    constexpr auto operator<=>(const Mass&) const = default;

private:
    explicit constexpr Mass(std::int64_t mg)
        : m_mg(mg) {}
    std::int64_t m_mg;
};

} // namespace rw
