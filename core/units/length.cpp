// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/length.h"

#include "core/units/decimal.h"

#include <cassert>
#include <cmath>

namespace rw {

namespace {
constexpr std::int64_t kLongest = 10'000'000; // 10 km: a hundred thousand times what any reel holds is a typo
constexpr double kHair = 1e-6;

Result<Length> inRange(std::int64_t mm, std::string_view text) {
    if (mm > kLongest || mm < -kLongest) {
        return refuse(Code::OutOfRange, {{"what", "length"},
                                         {"text", std::string(text)},
                                         {"lowest", "-10000 m"},
                                         {"highest", "10000 m"}});
    }
    return Length::fromMillimetres(mm);
}

/// Tenths of a millimetre in one of the unit; 0 for a unit nobody knows.
std::int64_t tenthsIn(std::string_view unit) {
    if (unit.empty() || unit == "m") {
        return 10'000;
    }
    if (unit == "cm") {
        return 100;
    }
    if (unit == "mm") {
        return 10;
    }
    if (unit == "ft" || unit == "'") {
        return 3048;
    }
    if (unit == "in" || unit == "\"") {
        return 254;
    }
    return 0;
}
} // namespace

Length Length::roundedUp(double mm) { return Length(static_cast<std::int64_t>(std::ceil(mm - kHair))); }

Result<Length> Length::tryParse(std::string_view text) {
    const auto unreadable = [&] {
        return refuse(Code::Unreadable, {{"what", "length"}, {"text", std::string(text)}});
    };
    const auto first = parseDecimal("length", text);
    if (!first) {
        return unreadable();
    }
    std::string_view unit = first->rest;
    std::int64_t inches = 0; // tenths of a millimetre from the inches behind "38' 6"
    if (unit.size() > 1 && unit.front() == '\'') {
        const auto second = parseDecimal("length", unit.substr(1));
        if (!second || second->sign != Decimal::Sign::None ||
            (second->rest != "\"" && !second->rest.empty())) {
            return unreadable();
        }
        const auto whole = scaledTo(0, *second, "length", text);
        if (!whole) {
            return tl::unexpected(whole.error());
        }
        if (*whole >= 12) {
            return unreadable(); // a foot has no more; what is longer would also be too much for the sum below
        }
        inches = *whole * 254;
        unit = "'";
    }
    const std::int64_t perUnit = tenthsIn(unit);
    if (perUnit == 0) {
        return unreadable();
    }
    if (first->scaled > kLongest * 1000) {
        return inRange(kLongest + 1, text);
    }
    std::int64_t denominator = 10;
    for (int i = 0; i < first->places; ++i) {
        denominator *= 10;
    }
    const std::int64_t numerator = first->scaled * perUnit + inches * (denominator / 10);
    // Metric must come out whole; feet and inches rarely do and go to the nearest millimetre below.
    const bool metric = perUnit != 3048 && perUnit != 254;
    if (metric && numerator % denominator != 0) {
        return refuse(Code::TooFine, {{"what", "length"}, {"text", std::string(text)}});
    }
    const std::int64_t mm = numerator / denominator;
    return inRange(first->sign == Decimal::Sign::Minus ? -mm : mm, text);
}

Length Length::roundedUpTo(Length step) const {
    assert(step.m_mm > 0);
    const std::int64_t remainder = ((m_mm % step.m_mm) + step.m_mm) % step.m_mm;
    return remainder == 0 ? *this : Length(m_mm + step.m_mm - remainder);
}

std::string Length::text() const { return decimalText(m_mm, 3) + " m"; }

} // namespace rw
