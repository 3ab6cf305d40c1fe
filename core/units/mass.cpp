// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/mass.h"

#include "core/units/decimal.h"

namespace rw {

namespace {
constexpr std::int64_t kHeaviest = 100'000'000; // 100 kg: no reel and no scale on a bench comes near
constexpr int kGramPlaces = 3;
constexpr int kKilogramPlaces = 6;
} // namespace

Result<Mass> Mass::tryParse(std::string_view text) {
    const auto decimal = parseDecimal("weight", text);
    const bool kilograms = decimal && decimal->rest == "kg";
    if (!decimal || (!kilograms && !decimal->rest.empty() && decimal->rest != "g")) {
        return refuse(Code::Unreadable, {{"what", "weight"}, {"text", std::string(text)}});
    }
    const auto mg = scaledTo(kilograms ? kKilogramPlaces : kGramPlaces, *decimal, "weight", text);
    if (!mg) {
        return tl::unexpected(mg.error());
    }
    if (*mg < 0 || *mg > kHeaviest) {
        return refuse(Code::OutOfRange,
                      {{"what", "weight"}, {"text", std::string(text)}, {"lowest", "0 g"}, {"highest", "100000 g"}});
    }
    return Mass(*mg);
}

std::string Mass::text() const { return decimalText(m_mg, kGramPlaces) + " g"; }

} // namespace rw
