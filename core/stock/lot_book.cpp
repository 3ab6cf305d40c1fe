// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/lot_book.h"

#include "core/stock/book_uncertainty.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace rw::stock {

namespace {
constexpr Length kNothing = Length::fromMillimetres(0);

bool isCut(const Movement& movement) {
    return movement.reason == MovementReason::Cut || movement.reason == MovementReason::Lost;
}

BookUncertainty after(const BookUncertainty& before, const Movement& movement,
                      const std::map<MovementId, double>& weighedSdMm) {
    switch (movement.reason) {
    case MovementReason::Received:
        return BookUncertainty::ofNew(movement.change);
    case MovementReason::Cut:
    case MovementReason::Lost:
        return before.afterCut(-movement.change, CutMeasure::Tape);
    case MovementReason::Measured:
        return BookUncertainty::measured();
    case MovementReason::Weighed:
        if (const auto weighed = weighedSdMm.find(*movement.id); weighed != weighedSdMm.end()) {
            return BookUncertainty::weighed(weighed->second);
        }
        return before;
    case MovementReason::Returned:
    case MovementReason::ThrownAway:
        return before;
    }
    return before;
}
} // namespace

std::vector<Movement> standing(const std::vector<Movement>& movements) {
    std::vector<Movement> left;
    std::ranges::copy_if(movements, std::back_inserter(left), [&](const Movement& movement) {
        return !movement.corrects && std::ranges::find(movements, movement.id, &Movement::corrects) == movements.end();
    });
    return left;
}

Estimate bookEstimate(const std::vector<Movement>& movements, const std::map<MovementId, double>& weighedSdMm) {
    Length length = kNothing;
    BookUncertainty sureness = BookUncertainty::ofNew(kNothing);
    for (const Movement& movement : standing(movements)) {
        length += movement.change;
        sureness = after(sureness, movement, weighedSdMm);
    }
    return {static_cast<double>(length.millimetres()), sureness.sdMm()};
}

std::optional<Estimate> knownCut(const std::vector<Movement>& movements, Instant from, Instant to) {
    Length cut = kNothing;
    BookUncertainty sureness = BookUncertainty::ofNew(kNothing);
    for (const Movement& movement : standing(movements)) {
        if (movement.by.at <= from || movement.by.at > to || movement.change == kNothing) {
            continue;
        }
        if (!isCut(movement)) {
            return std::nullopt;
        }
        cut -= movement.change;
        sureness = sureness.afterCut(-movement.change, CutMeasure::Tape);
    }
    return cut.isPositive() ? std::optional(Estimate{static_cast<double>(cut.millimetres()), sureness.sdMm()})
                            : std::nullopt;
}

} // namespace rw::stock
