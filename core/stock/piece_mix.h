// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"

#include <span>
#include <vector>

namespace rw::stock {

/// The chance that the next piece wanted from a string has a length: f(l) of the remnant values.
class PieceMix {
public:
    struct Share {
        Length length;
        double share;
    };

    /// The shares as parts of a whole, whatever they add up to; equal lengths add up.
    /// Preconditions: at least one share is positive and none negative, every length is positive.
    [[nodiscard]] static PieceMix of(std::vector<Share> shares);
    /// Lengths seen or expected, each spread over a triangle that is nothing `reach` to either side of it (both in
    /// whole centimetres, lengths rounded up): few cuts say what comes next only roughly.
    /// Preconditions: at least one length, each longer than `reach`.
    [[nodiscard]] static PieceMix around(std::span<const Length> lengths, Length reach);

    /// This mix with `weight` (0 to 1) of its chances given to the other.
    [[nodiscard]] PieceMix mixedWith(const PieceMix& other, double weight) const;

    /// Shortest first; the shares add up to 1.
    [[nodiscard]] const std::vector<Share>& shares() const { return m_shares; }

private:
    explicit PieceMix(std::vector<Share> shares)
        : m_shares(std::move(shares)) {}
    std::vector<Share> m_shares;
};

/// What one string's next piece will be: its last 200 cuts (oldest first), spread by 15 cm, with the mix of all strings
/// of the sport, which counts as much as 20 cuts.
[[nodiscard]] PieceMix mixOfString(std::span<const Length> cuts, const PieceMix& ofTheSport);
/// The same for a sport of which nothing was cut yet: the cuts that are expected, spread by 30 cm.
[[nodiscard]] PieceMix mixOfFirstDay(std::span<const Length> expectedCuts);

} // namespace rw::stock
