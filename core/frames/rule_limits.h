// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/sport.h"

#include <optional>

namespace rw {

/// The largest strung head that a sport's rules allow. A larger one is a warning ("check the tape"), never a
/// refusal: people bring in what they bring in.
struct RuleLimits {
    std::optional<double> lengthMm;
    std::optional<double> widthMm;
    std::optional<double> areaCm2;
};

/// Sources: ITF, Rules of Tennis, Appendix II (394 x 292 mm); World Squash Federation, Rules, appendix on
/// racket dimensions (strings 390 mm, 500 cm2); BWF, Laws of Badminton, Law 4 (280 x 220 mm; 330 mm long
/// where strings run into the throat, which is what `openThroat` says).
[[nodiscard]] RuleLimits ruleLimits(Sport sport, bool openThroat);

} // namespace rw
