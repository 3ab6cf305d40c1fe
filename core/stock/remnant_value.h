// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/piece_mix.h"
#include "core/units/length.h"

#include <span>
#include <vector>

namespace rw::stock {

/// How much of what is left on a lot will end as scrap, if its string is used with sense.
///
/// W(r) = r below the shortest useful piece u; else min(r, w), where w solves
///     sum over l <= r of f(l) * max(0, w - W(r - l)) = c.
/// An end waits for the piece that suits it, and c is what one more piece of waiting costs: a reservation value, as in
/// J. J. McCall, "Economics of information and job search", 1970, and M. L. Weitzman, "Optimal search for the best
/// alternative", 1979. This use of it was derived for this program.
///
/// On a grid of 1 cm up to 60 m and constant beyond; lengths are rounded up and remnants down to the grid.
class RemnantValue {
public:
    static constexpr Length kStep = Length::fromMillimetres(10);
    static constexpr Length kConstantFrom = Length::fromMillimetres(60'000);
    static constexpr Length kUsualWaitingCost = Length::fromMillimetres(50);

    /// Preconditions: shortestUseful and waitingCost are not negative.
    RemnantValue(const PieceMix& mix, Length shortestUseful, Length waitingCost = kUsualWaitingCost);

    /// W(r) in millimetres. Precondition: the remnant is not negative.
    [[nodiscard]] double likelyLost(Length remnant) const;
    /// What cutting `piece` off a lot of `length` loses: W(length - piece) - W(length) in millimetres, negative when
    /// the lot is worth more without it.
    [[nodiscard]] double lostByCutting(Length length, Length piece) const {
        return likelyLost(length - piece) - likelyLost(length);
    }
    [[nodiscard]] Length shortestUseful() const { return m_shortestUseful; }
    [[nodiscard]] double meanWantedMm() const { return m_meanWantedMm; } ///< of the mix

private:
    Length m_shortestUseful;
    double m_meanWantedMm;
    std::vector<double> m_lostMm; ///< by whole steps
};

/// What planning and ordering may count on in these lots, in millimetres: each less what will likely be lost of it.
/// Four ends of 6 m are not 24 m.
[[nodiscard]] double usableMm(std::span<const Length> lots, const RemnantValue& value);

} // namespace rw::stock
