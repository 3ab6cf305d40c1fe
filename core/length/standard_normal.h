// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace rw::length {

// The standard normal distribution. Plain functions, because a plan asks them thousands of times.

[[nodiscard]] double normalDensity(double z);
/// P(Z > z), exact in relative terms far into the tail.
[[nodiscard]] double normalAbove(double z);
/// ln P(Z <= z), finite for any finite z.
[[nodiscard]] double logNormalBelow(double z);
/// The z that is exceeded with this chance (0 < chance < 1).
[[nodiscard]] double normalExceededWith(double chance);

} // namespace rw::length
