// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

namespace rw {

/// What is known of a frame's head. Everything may be missing; core/length finds an outline from what there
/// is. Lengths are millimetres inside the hoop as doubles, because a hoop may be known in inches.
struct Hoop {
    std::optional<double> lengthMm;    ///< inside, along the shaft; 150 to 450
    std::optional<double> widthMm;     ///< inside, across; 120 to 350
    std::optional<double> headAreaCm2; ///< the size marked on the frame; 200 to 1000
    bool openThroat = false;           ///< squash without a bridge
    std::optional<double>
        widestFromThroat;                 ///< p: where the widest place sits, share of the length; 0.3 to 0.7
    std::optional<double> headExponent;   ///< n_h; 1.2 to 4
    std::optional<double> throatExponent; ///< n_t; 1.2 to 4
    std::optional<double> wallMm;         ///< hoop wall in the string plane; 4 to 20
    std::optional<double>
        outermostMainMm; ///< the outermost main inside the hoop: fixes n_h (and n_t) to the tape
    std::optional<double> lastCrossMm; ///< the cross nearest the throat, likewise: fixes n_t
    bool operator==(const Hoop&) const = default;
};

} // namespace rw
