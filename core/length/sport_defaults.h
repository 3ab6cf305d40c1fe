// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/hoop.h"
#include "core/frames/pattern.h"
#include "core/frames/sport.h"
#include "core/length/piece_role.h"
#include "core/units/length.h"

namespace rw::length {

/// The head that is assumed where nothing else is known, in millimetres inside the hoop.
struct UsualHead {
    double lengthMm;
    double widthMm;
    double lengthToWidth;    ///< used where the size is known and the shape is not
    double widestFromThroat; ///< p
    double headExponent;
    double throatExponent;
};

/// Tennis 329 x 245 (a measured 98 in2 head, L : W 1.343), squash 310 x 200 or with an open throat 360 x 190,
/// badminton 245 x 190. Tennis and badminton have no open throat of their own: `openThroat` changes squash
/// only.
[[nodiscard]] UsualHead usualHead(Sport sport, bool openThroat);

/// The hoop wall in the string plane, mm.
[[nodiscard]] double usualWall(Sport sport);

/// Where the strings lie when nobody measured. From two measured 98 in2 frames (tennis) and from the usual
/// hoop and hole counts (squash, badminton).
struct BedSpans {
    double mainsSpanMm;
    double crossesSpanMm;
    double crossesCentreMm;
    double spread;
};

/// The pattern's own spans where it has them, the sport's usual ones for a head of this size where not.
[[nodiscard]] BedSpans bedSpans(Sport sport, bool openThroat, const Pattern& pattern, double lengthMm, double widthMm);

/// What the trade strings this sport's jobs from every day, for the whole job: 12.2 m tennis (40 ft; the
/// longer of the 12.0 and 12.2 m that are sold), 10 m badminton, 10 m squash (the longer of 9.1 and 10 m).
[[nodiscard]] Length usualPacket(Sport sport);

/// What a job of this sport is strung in where nobody chose.
[[nodiscard]] Method usualMethod(Sport sport);

} // namespace rw::length
