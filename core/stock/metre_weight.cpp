// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/metre_weight.h"

#include "core/stock/lot_book.h"
#include "core/stock/weighing.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace rw::stock {

namespace {
constexpr double kTypedSpread = 0.02;
constexpr double kBatchSpread = 0.005;
constexpr double kMistakeSds = 3;
constexpr double kMilligramsPerGram = 1'000;

bool wasCorrected(const std::vector<Movement>& movements, Instant from, Instant to) {
    return std::ranges::any_of(standing(movements), [&](const Movement& movement) {
        const bool correction =
            movement.reason == MovementReason::Measured || movement.reason == MovementReason::Weighed;
        return correction && movement.change != Length::fromMillimetres(0) && movement.by.at > from &&
               movement.by.at <= to;
    });
}

std::optional<Estimate> seenOn(const ScaleLife& reel) {
    if (reel.moments.size() < 2) {
        return std::nullopt;
    }
    std::size_t first = 0;
    for (std::size_t next = 1; next < reel.moments.size(); ++next) {
        if (wasCorrected(reel.movements, reel.moments[next - 1].at, reel.moments[next].at)) {
            first = next;
        }
    }
    const ScaleMoment& before = reel.moments[first];
    const ScaleMoment& after = reel.moments.back();
    const auto cut = knownCut(reel.movements, before.at, after.at);
    return cut ? std::optional(seenGramsPerMetre(before.grossG, after.grossG, *cut)) : std::nullopt;
}
} // namespace

Estimate usualGramsPerMetre(const StringArticle& article) {
    if (article.milligramsPerMetre) {
        const double grams = static_cast<double>(*article.milligramsPerMetre) / kMilligramsPerGram;
        return {grams, kTypedSpread * grams};
    }
    return gramsPerMetreOf(article.material, article.diameterMm());
}

Estimate learnedFrom(const Estimate& known, const std::vector<ScaleLife>& reels) {
    Estimate learned = known;
    for (const ScaleLife& reel : reels) {
        const auto seen = seenOn(reel);
        if (seen && seen->value > 0 &&
            std::abs(seen->value - known.value) <= kMistakeSds * std::hypot(seen->sd, known.sd)) {
            learned = combined(learned, *seen);
        }
    }
    learned.sd = std::max(learned.sd, kBatchSpread * learned.value);
    return learned;
}

} // namespace rw::stock
