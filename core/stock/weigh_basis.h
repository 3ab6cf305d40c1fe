// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/stock/estimate.h"

#include <optional>
#include <string_view>

namespace rw::stock {

/// What a weighing is held against.
enum class WeighBasis {
    AgainstNew, ///< the reel when new, with its spool: needs no word on what a metre weighs
    ByMetre,    ///< what a metre weighs, on a spool that is known
    ByGone      ///< what a metre weighs and the reel when new, on a spool that is not known
};
[[nodiscard]] std::string_view weighBasisText(WeighBasis basis); ///< "new", "metre", "gone"
[[nodiscard]] std::optional<WeighBasis> weighBasisFromText(std::string_view text);

/// A reel on the scale, with what is known of it. Weights in grams.
struct ReelOnScale {
    Estimate grossG;
    std::optional<Estimate> emptyG;
    std::optional<Estimate> newG;
    Estimate nominalMm; ///< when new
    Estimate gramsPerMetre;
};
struct WeighedLength {
    WeighBasis basis;
    Estimate lengthMm;
};
/// By the surest basis that there is: the new reel, then the spool, then what is gone. Missing {what: empty spool}
/// where neither spool nor new reel was ever weighed; ImpossibleValue {key, text, expected} for a weight below the
/// spool.
[[nodiscard]] Result<WeighedLength> weighedLength(const ReelOnScale& reel);

} // namespace rw::stock
