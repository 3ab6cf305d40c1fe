// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

namespace rw::length {

// What the shop's own cuts say about r = ln(need / predicted need). Of one group (a frame model, a piece, a material)
// r is theta, the group's own effect, plus one job's scatter.

/// How far geometry is off for a whole shop, for one frame, and how far two jobs on the same frame lie apart. Guesses
/// of the trade's own scatter until a ledger has enough measured tails: a shop's tape, reach and knots move every cut
/// by about 2.5 %, a frame's real outline by 2 %, one job by 1.5 %.
constexpr double kShopSpread = 0.025;
constexpr double kFrameSpread = 0.02;
constexpr double kJobSpread = 0.015;

/// One finished piece: its r lay somewhere from `low` to `high`, either of which may be infinite. Equal ends are an
/// exact observation.
struct Observation {
    double low;
    double high;
    double sd = kJobSpread; ///< one job's scatter, and how finely the cut was measured; positive

    [[nodiscard]] bool isExact() const { return low == high; }
    auto operator<=>(const Observation&) const = default;
};

/// A normal belief; no spread is certainty.
struct Belief {
    double mean;
    double sd;
};

/// A shop of which nothing is known.
constexpr Belief kUnknownShop{0, kShopSpread};

/// What is believed of a group's theta before its own observations: the shop's bias, widened by one frame's spread and
/// by the material's (a share of the need).
[[nodiscard]] Belief groupBelief(const Belief& shopBias, double materialSpread);

/// The belief after the exact observations among `seen`, in closed form. The others change nothing here.
[[nodiscard]] Belief afterExact(const Belief& before, std::span<const Observation> seen);

/// The shop's bias for one role of piece (mains, crosses, one piece, short side), learned from the exact observations
/// of its groups, each span one group; what a group says is blurred by one frame's spread. Leave out the group that is
/// to be predicted: its own observations count once, in its theta. Without observations kUnknownShop.
[[nodiscard]] Belief shopBias(std::span<const std::span<const Observation>> groups);

struct ThetaPoint {
    double theta;
    double weight;
};

/// A group's theta on a grid, weights summing to 1: belief times likelihood, exact observations as normal densities,
/// the others as the chance of their interval. The grid is as fine as all observations together could make the
/// posterior, and holds everything but a trillionth of it.
[[nodiscard]] std::vector<ThetaPoint> thetaAfter(const Belief& before, std::span<const Observation> seen);

} // namespace rw::length
