// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/frames/sport.h"
#include "core/units/tension.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace rw {

/// How much higher the crosses are strung when somebody names one number for both, as is the custom for badminton.
class CrossesRise {
public:
    [[nodiscard]] static CrossesRise none() { return {}; }
    /// Reads "2 lb", "1 kg", "10 %"; "" and "0" are none. Unreadable {what: crosses higher}, also without a unit; TooFine;
    /// OutOfRange below nothing, or above 20 lb, 9 kg, 50 %.
    [[nodiscard]] static Result<CrossesRise> tryParse(std::string_view text);

    [[nodiscard]] bool isNone() const { return m_hundredths == 0; }
    /// "2 lb", "10 %"; "" for none.
    [[nodiscard]] std::string text() const;
    /// The crosses to these mains, in their unit: to a tenth of it unless the rise is in that very unit. OutOfRange when
    /// nothing can be strung so high.
    [[nodiscard]] Result<Tension> over(const Tension& mains) const;

    bool operator==(const CrossesRise&) const = default;

private:
    std::int64_t m_hundredths = 0;
    std::optional<TensionUnit> m_unit; ///< nothing: percent
};

/// The crosses that one number for both means: higher by the shop's rise in badminton, else the same. The same too where
/// nothing can be strung so high.
[[nodiscard]] Tension crossesOfOneNumber(const Tension& number, Sport sport, const CrossesRise& badminton);

} // namespace rw
