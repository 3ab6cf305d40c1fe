// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace rw {

/// A length of string as the ledger keeps it: whole millimetres, signed (a movement may be negative).
/// Inside computations lengths are doubles in millimetres; they become a Length only by a named rounding.
class Length {
public:
    [[nodiscard]] static constexpr Length fromMillimetres(std::int64_t mm) { return Length(mm); }
    /// Exact: 1 ft = 304.8 mm (NIST SP 811), so only multiples that are whole millimetres, or rounded down
    /// to the millimetre: a reel is never booked longer than it is.
    [[nodiscard]] static constexpr Length fromFeetRoundedDown(std::int64_t feet) {
        return Length(feet * 3048 / 10);
    }
    /// The next whole millimetre at or above `mm`. A hair (1e-6 mm) of floating-point error is forgiven.
    [[nodiscard]] static Length roundedUp(double mm);

    /// Reads "11.2 m", "11,2", "1120 cm", "11200 mm", "40 ft", "38' 6\"". A bare number is metres.
    /// Unreadable, TooFine (below a millimetre), OutOfRange beyond +-10 km. A leading sign is kept.
    [[nodiscard]] static Result<Length> tryParse(std::string_view text);

    [[nodiscard]] constexpr std::int64_t millimetres() const { return m_mm; }
    [[nodiscard]] constexpr double metres() const { return static_cast<double>(m_mm) / 1000.0; }
    [[nodiscard]] constexpr bool isPositive() const { return m_mm > 0; }
    [[nodiscard]] constexpr bool isNegative() const { return m_mm < 0; }
    /// Up to the next multiple of `step` (which must be positive): 11 183 mm in steps of 50 is 11 200.
    [[nodiscard]] Length roundedUpTo(Length step) const;
    /// "11.2 m": metres with a point and no trailing noughts. For logs, files and tests; people read ui/text.
    [[nodiscard]] std::string text() const;

    constexpr auto operator<=>(const Length&) const = default;
    constexpr Length operator+(Length other) const { return Length(m_mm + other.m_mm); }
    constexpr Length operator-(Length other) const { return Length(m_mm - other.m_mm); }
    constexpr Length operator-() const { return Length(-m_mm); }
    constexpr Length operator*(std::int64_t times) const { return Length(m_mm * times); }
    constexpr Length& operator+=(Length other) { return *this = *this + other; }
    constexpr Length& operator-=(Length other) { return *this = *this - other; }
    /// How many whole `piece`s (positive) are in this length; none in a negative one.
    [[nodiscard]] constexpr std::int64_t wholeTimes(Length piece) const {
        return m_mm <= 0 ? 0 : m_mm / piece.m_mm;
    }

private:
    explicit constexpr Length(std::int64_t mm)
        : m_mm(mm) {}
    std::int64_t m_mm;
};

} // namespace rw
