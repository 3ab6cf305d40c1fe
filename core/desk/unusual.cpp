// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/unusual.h"

#include <cmath>

namespace rw::desk {

namespace {
constexpr double kFar = 0.2; // a metre in five, a key beside the right one: what a hand does by mistake is more
constexpr double kHair = 1e-9;

bool isFar(double value, double expected) { return std::abs(value - expected) > expected * kFar + kHair; }
} // namespace

bool isFarFromPlanned(Length length, Length planned) {
    return planned.isPositive() &&
           isFar(static_cast<double>(length.millimetres()), static_cast<double>(planned.millimetres()));
}

bool isFarFromAsked(const TensionPair& strung, const TensionPair& asked) {
    return isFar(strung.mains.newtons(), asked.mains.newtons()) ||
           isFar(strung.crosses.newtons(), asked.crosses.newtons());
}

} // namespace rw::desk
