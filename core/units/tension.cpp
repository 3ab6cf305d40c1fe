// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/tension.h"

#include "core/units/decimal.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace rw {

namespace {
// Below 4 lb no machine holds a string; above 100 lb no frame stands. Both catch slips such as "540" for "54.0".
constexpr double kLowestNewtons = 4 * kNewtonsPerPound;
constexpr double kHighestNewtons = 100 * kNewtonsPerPound;

double newtonsPer(TensionUnit unit) {
    return unit == TensionUnit::Pound ? kNewtonsPerPound : kNewtonsPerKilogram;
}

std::string lowered(std::string_view text) {
    std::string out(text);
    std::ranges::transform(out, out.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}
} // namespace

std::string_view unitText(TensionUnit unit) { return unit == TensionUnit::Pound ? "lb" : "kg"; }

std::optional<TensionUnit> unitFromText(std::string_view text) {
    const std::string unit = lowered(trimmed(text));
    if (unit == "lb" || unit == "lbs") {
        return TensionUnit::Pound;
    }
    if (unit == "kg" || unit == "kgs") {
        return TensionUnit::Kilogram;
    }
    return std::nullopt;
}

Result<Tension> Tension::fromHundredths(std::int64_t hundredths, TensionUnit unit) {
    const Tension tension(hundredths, unit);
    if (tension.newtons() < kLowestNewtons - 1e-9 || tension.newtons() > kHighestNewtons + 1e-9) {
        const bool pounds = unit == TensionUnit::Pound;
        return refuse(Code::OutOfRange, {{"what", "tension"},
                                         {"text", tension.text()},
                                         {"lowest", pounds ? "4 lb" : "1.82 kg"},
                                         {"highest", pounds ? "100 lb" : "45.35 kg"}});
    }
    return tension;
}

Result<Tension> Tension::tryParse(std::string_view text, TensionUnit defaultUnit,
                                  const std::optional<Tension>& old) {
    const auto decimal = parseDecimal("tension", text);
    if (!decimal) {
        return tl::unexpected(decimal.error());
    }
    const bool isChange = decimal->sign != Decimal::Sign::None;
    TensionUnit unit = isChange && old ? old->unit() : defaultUnit;
    if (!decimal->rest.empty()) {
        const auto written = unitFromText(decimal->rest);
        if (!written) {
            return refuse(Code::Unreadable, {{"what", "tension"}, {"text", std::string(text)}});
        }
        unit = *written;
    }
    const auto hundredths = scaledTo(2, *decimal, "tension", text);
    if (!hundredths) {
        return tl::unexpected(hundredths.error());
    }
    if (!isChange) {
        return fromHundredths(*hundredths, unit);
    }
    if (!old) {
        return refuse(Code::NothingToChange, {{"what", "tension"}, {"text", std::string(text)}});
    }
    const double change = static_cast<double>(*hundredths) * newtonsPer(unit) / newtonsPer(old->unit());
    return fromHundredths(old->hundredths() + std::llround(change), old->unit());
}

double Tension::newtons() const { return static_cast<double>(m_hundredths) / 100.0 * newtonsPer(m_unit); }

double Tension::in(TensionUnit unit) const {
    return unit == m_unit ? static_cast<double>(m_hundredths) / 100.0 : newtons() / newtonsPer(unit);
}

std::string Tension::numberText() const { return decimalText(m_hundredths, 2); }

std::string Tension::text() const { return numberText() + " " + std::string(unitText(m_unit)); }

} // namespace rw
