// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/stock/estimate.h"
#include "core/strings/material.h"
#include "core/units/length.h"

#include <optional>
#include <vector>

// What is left on a reel by its weight. Weights are in grams, lengths in millimetres unless a name says otherwise.
// Uncertainties follow the Guide to the Expression of Uncertainty in Measurement, JCGM 100:2008, 5.1.2.
namespace rw::stock {

/// The uncertainty of a scale that shows whole steps of `stepG`: d / sqrt(12).
[[nodiscard]] double scaleSdG(double stepG);

/// A reel on the scale and its spool without string.
struct Weighing {
    Estimate grossG;
    Estimate emptyG;
};

/// The reel when it was new.
struct NewReel {
    Estimate lengthMm;
    Estimate grossG;
};

/// Length left = L0 (G - T) / (G0 - T): the reel against itself, whatever its string weighs.
/// ImpossibleValue {key, text, expected} for a weight below the empty spool, or a new one that is not above it.
[[nodiscard]] Result<Estimate> lengthAgainstNew(const Weighing& weighing, const NewReel& reel);

/// Length left = (G - T) / grams per metre, where no new weight is known. The same refusal.
[[nodiscard]] Result<Estimate> lengthByWeight(const Weighing& weighing, const Estimate& gramsPerMetre);

/// Length left = L0 - (G0 - G) / grams per metre, where the reel was weighed new and its spool is not known: what has
/// gone is surer than what is left while little has gone. The same refusal, for a weight below what such a spool
/// weighs.
[[nodiscard]] Result<Estimate> lengthByWhatIsGone(const Estimate& grossG, const NewReel& reel,
                                                  const Estimate& gramsPerMetre);

/// What a solid round string of this material weighs, in grams per metre, good to 5 %: density * pi d^2 / 4. Densities
/// in kg/m3: nylon 1140 and aramid 1440 as published, polyester 1380 and gut 1300 from memory; multifilament is taken
/// as nylon.
[[nodiscard]] Estimate gramsPerMetreOf(Material material, double diameterMm);

/// What one known cut weighed, `before` less `after` on the same scale, a metre of it. The cut's length is in
/// millimetres and positive.
[[nodiscard]] Estimate seenGramsPerMetre(const Estimate& beforeG, const Estimate& afterG, const Estimate& cutMm);

/// The same, learned: what was known before, and what one known cut weighed.
[[nodiscard]] Estimate learnedGramsPerMetre(const Estimate& known, const Estimate& beforeG, const Estimate& afterG,
                                            const Estimate& cutMm);

/// How long the reel was when new, from what was cut off it since and the share that is left by weight, beside its
/// nominal length. Shows best when about half of it is gone. The same refusal; `cutMm` is positive.
[[nodiscard]] Result<Estimate> newLengthFrom(const Weighing& weighing, const NewReel& nominal, const Estimate& cutMm);

/// What a weighing says beside the book.
struct WeighFinding {
    double differenceMm;             ///< weighed less booked
    bool isFinding;                  ///< the difference is more than three times its uncertainty
    std::optional<int> unbookedJobs; ///< so many whole jobs are missing, within twice the uncertainty
};

/// `perJob` is positive; up to three missing jobs are looked for.
[[nodiscard]] WeighFinding compareWithBook(const Estimate& weighedMm, const Estimate& bookMm, Length perJob);

} // namespace rw::stock
