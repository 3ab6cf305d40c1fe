// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"
#include "core/units/tension.h"

// Values that may be meant, and are more often mistyped: a station says so before it takes them.
namespace rw::desk {

/// More than a fifth off what was planned, either way. Nothing is far from a plan of nothing.
[[nodiscard]] bool isFarFromPlanned(Length length, Length planned);

/// One of the two pulls is more than a fifth off what was asked, as a force.
[[nodiscard]] bool isFarFromAsked(const TensionPair& strung, const TensionPair& asked);

} // namespace rw::desk
