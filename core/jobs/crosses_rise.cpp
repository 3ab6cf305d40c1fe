// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/crosses_rise.h"

#include "core/units/decimal.h"

#include <cmath>

namespace rw {

namespace {
constexpr std::string_view kWhat = "crosses higher";
constexpr std::string_view kPercent = "%";
constexpr std::int64_t kMostPercent = 50'00;
constexpr std::int64_t kMostPounds = 20'00;
constexpr std::int64_t kMostKilograms = 9'00;

std::int64_t most(const std::optional<TensionUnit>& unit) {
    return !unit ? kMostPercent : unit == TensionUnit::Pound ? kMostPounds : kMostKilograms;
}

std::string_view unitOrPercent(const std::optional<TensionUnit>& unit) { return unit ? unitText(*unit) : kPercent; }
} // namespace

Result<CrossesRise> CrossesRise::tryParse(std::string_view text) {
    if (trimmed(text).empty()) {
        return none();
    }
    const auto decimal = parseDecimal(kWhat, text);
    if (!decimal) {
        return tl::unexpected(decimal.error());
    }
    const auto hundredths = scaledTo(2, *decimal, kWhat, text);
    if (!hundredths) {
        return tl::unexpected(hundredths.error());
    }
    if (*hundredths == 0) {
        return none();
    }
    CrossesRise rise;
    rise.m_hundredths = *hundredths;
    rise.m_unit = unitFromText(decimal->rest);
    if (!rise.m_unit && decimal->rest != kPercent) {
        return refuse(Code::Unreadable, {{"what", std::string(kWhat)}, {"text", std::string(text)}});
    }
    if (*hundredths < 0 || *hundredths > most(rise.m_unit)) {
        const std::string unit = ' ' + std::string(unitOrPercent(rise.m_unit));
        return refuse(Code::OutOfRange, {{"what", std::string(kWhat)},
                                         {"text", std::string(text)},
                                         {"lowest", "0" + unit},
                                         {"highest", decimalText(most(rise.m_unit), 2) + unit}});
    }
    return rise;
}

std::string CrossesRise::text() const {
    return isNone() ? std::string() : decimalText(m_hundredths, 2) + ' ' + std::string(unitOrPercent(m_unit));
}

Result<Tension> CrossesRise::over(const Tension& mains) const {
    if (m_unit == mains.unit() || isNone()) {
        return Tension::fromHundredths(mains.hundredths() + m_hundredths, mains.unit());
    }
    const double hundredths = static_cast<double>(m_hundredths);
    const double inNewtons = m_unit == TensionUnit::Kilogram ? kNewtonsPerKilogram : kNewtonsPerPound;
    const double perUnit = mains.unit() == TensionUnit::Kilogram ? kNewtonsPerKilogram : kNewtonsPerPound;
    const double rise = m_unit ? hundredths * inNewtons / perUnit
                               : static_cast<double>(mains.hundredths()) * hundredths / 100'00;
    const double tenths = (static_cast<double>(mains.hundredths()) + rise) / 10;
    return Tension::fromHundredths(std::llround(tenths) * 10, mains.unit());
}

Tension crossesOfOneNumber(const Tension& number, Sport sport, const CrossesRise& badminton) {
    return sport == Sport::Badminton ? badminton.over(number).value_or(number) : number;
}

} // namespace rw
