// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace rw {

enum class TensionUnit { Pound, Kilogram };

/// The pull a machine is set to, as it was asked for: the number and the unit that were typed. Comparable
/// values are derived (newtons); converting never replaces what was typed.
/// 1 lbf = 4.4482216152605 N, 1 kgf = 9.80665 N (NIST SP 811, Appendix B.8).
class Tension {
public:
    /// `hundredths` of the unit: 5250 is 52.5. OutOfRange outside 4 to 100 lb (1.8 to 45.3 kg).
    [[nodiscard]] static Result<Tension> fromHundredths(std::int64_t hundredths, TensionUnit unit);

    /// Reads "52", "52,5 lb", "23.5 kg", "26#" is not read. Without a unit, `defaultUnit`. A leading sign is
    /// a change and needs `old`; a change in the other unit is applied in the old value's unit, to its
    /// nearest hundredth. Unreadable, TooFine (over two decimals), OutOfRange, NothingToChange.
    [[nodiscard]] static Result<Tension> tryParse(std::string_view text, TensionUnit defaultUnit,
                                                  const std::optional<Tension>& old = std::nullopt);

    [[nodiscard]] std::int64_t hundredths() const { return m_hundredths; }
    [[nodiscard]] TensionUnit unit() const { return m_unit; }
    [[nodiscard]] double newtons() const;
    /// The value in the unit asked for, not rounded.
    [[nodiscard]] double in(TensionUnit unit) const;
    /// "52 lb", "23.5 kg".
    [[nodiscard]] std::string text() const;
    /// "52": the number alone.
    [[nodiscard]] std::string numberText() const;

    /// Same number and same unit. To compare pulls, compare newtons().
    bool operator==(const Tension&) const = default;

private:
    Tension(std::int64_t hundredths, TensionUnit unit)
        : m_hundredths(hundredths)
        , m_unit(unit) {}
    std::int64_t m_hundredths;
    TensionUnit m_unit;
};

[[nodiscard]] std::string_view unitText(TensionUnit unit);          ///< "lb", "kg"
[[nodiscard]] std::optional<TensionUnit> unitFromText(std::string_view text); ///< lb, lbs, kg, kgs, any case

constexpr double kNewtonsPerPound = 4.4482216152605;
constexpr double kNewtonsPerKilogram = 9.80665;

/// Mains first, then crosses: they are always a pair, in that order.
struct TensionPair {
    Tension mains;
    Tension crosses;
    bool operator==(const TensionPair&) const = default;
};

} // namespace rw
