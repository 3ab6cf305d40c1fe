// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

namespace rw::ui {

class Shift;

/// The day that the shop's calendar shows now.
[[nodiscard]] CivilDate shopDate(const Shift& shift);

/// The same day so many months on or back, or the last of a shorter month.
[[nodiscard]] CivilDate monthsOn(CivilDate day, int months);

} // namespace rw::ui
