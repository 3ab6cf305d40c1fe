// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/remnant_value.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace rw::stock {

namespace {
/// A length that may be wanted next, in steps of the grid.
struct Wanted {
    std::size_t steps;
    double chance;
};

/// Shortest first, as the mix is; what is longer than the grid never fits.
std::vector<Wanted> onGrid(const PieceMix& mix) {
    std::vector<Wanted> wanted;
    for (const PieceMix::Share& share : mix.shares()) {
        const Length length = share.length.roundedUpTo(RemnantValue::kStep);
        const auto steps = static_cast<std::size_t>(length.wholeTimes(RemnantValue::kStep));
        if (length > RemnantValue::kConstantFrom) {
            break;
        }
        if (!wanted.empty() && wanted.back().steps == steps) {
            wanted.back().chance += share.share;
        } else {
            wanted.push_back({steps, share.share});
        }
    }
    return wanted;
}

double meanMm(const PieceMix& mix) {
    return std::accumulate(mix.shares().begin(), mix.shares().end(), 0.0, [](double sum, const PieceMix::Share& share) {
        return sum + share.share * static_cast<double>(share.length.millimetres());
    });
}

/// The w that solves the equation for an end of `steps`, by Newton's method from `above`, which it is not more than: the
/// left side is convex and piecewise straight, so it comes down to the root in a few steps and stops exactly there.
/// `above` itself when no w does.
double reservationValue(std::span<const Wanted> wanted, std::size_t steps, const std::vector<double>& lostMm,
                        double costMm, double above) {
    double value = above;
    for (;;) {
        double chance = 0;
        double lost = 0;
        for (const Wanted& piece : wanted) {
            if (piece.steps > steps) {
                break;
            }
            const double after = lostMm[steps - piece.steps];
            if (after < value) {
                chance += piece.chance;
                lost += piece.chance * after;
            }
        }
        const double next = chance > 0 ? (costMm + lost) / chance : value;
        if (next >= value) {
            return value;
        }
        value = next;
    }
}
} // namespace

RemnantValue::RemnantValue(const PieceMix& mix, Length shortestUseful, Length waitingCost)
    : m_shortestUseful(shortestUseful)
    , m_meanWantedMm(meanMm(mix)) {
    assert(!shortestUseful.isNegative() && !waitingCost.isNegative());
    const std::vector<Wanted> wanted = onGrid(mix);
    const auto costMm = static_cast<double>(waitingCost.millimetres());
    const auto last = static_cast<std::size_t>(kConstantFrom.wholeTimes(kStep));
    m_lostMm.reserve(last + 1);
    for (std::size_t steps = 0; steps <= last; ++steps) {
        const Length end = kStep * static_cast<std::int64_t>(steps);
        // A step more of string is at most a step more of scrap: who has it may always throw that step away first.
        const double above = steps == 0 ? 0 : m_lostMm.back() + static_cast<double>(kStep.millimetres());
        m_lostMm.push_back(end < shortestUseful ? static_cast<double>(end.millimetres())
                                                : reservationValue(wanted, steps, m_lostMm, costMm, above));
    }
}

double RemnantValue::likelyLost(Length remnant) const {
    assert(!remnant.isNegative());
    const auto steps = static_cast<std::size_t>(remnant.wholeTimes(kStep));
    return m_lostMm[std::min(steps, m_lostMm.size() - 1)];
}

double usableMm(std::span<const Length> lots, const RemnantValue& value) {
    return std::accumulate(lots.begin(), lots.end(), 0.0, [&](double sum, Length lot) {
        return sum + static_cast<double>(lot.millimetres()) - value.likelyLost(lot);
    });
}

} // namespace rw::stock
