// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/estimate.h"
#include "core/stock/movement.h"
#include "core/strings/string_article.h"

#include <vector>

// What a metre of a string weighs, in grams: by its material, by what somebody typed, and by reels that were weighed
// before and after known cuts.
namespace rw::stock {

/// A reel on the scale.
struct ScaleMoment {
    Estimate grossG;
    Instant at;
};
/// The life of one reel on the scale, both oldest first.
struct ScaleLife {
    std::vector<ScaleMoment> moments;
    std::vector<Movement> movements;
};

/// Before anything was weighed: what somebody typed for the string, taken as good to 2 %, or its material (5 %).
[[nodiscard]] Estimate usualGramsPerMetre(const StringArticle& article);

/// `known`, with what each of these reels tells: its last stretch of weighings between which the book was never found
/// to be wrong, from the first to the last. One that is more than three times its uncertainty from what is known tells
/// of a mistake and is left out. Never surer than 0.5 %: batches differ (taken here, not measured).
[[nodiscard]] Estimate learnedFrom(const Estimate& known, const std::vector<ScaleLife>& reels);

} // namespace rw::stock
