// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/next_cut.h"
#include "tests/bench/stock_world/cutting_world.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

// Who decides where to cut. They know the book and the pieces they have seen, nothing else of the world.
namespace rw::world {

class Cutter {
public:
    virtual ~Cutter() = default;
    /// The lot for a piece; nothing: open a new reel.
    [[nodiscard]] virtual std::optional<std::size_t> choose(std::span<const stock::CutSource> lots, Length piece) = 0;
    /// Whether the others go to the bin when a new reel is opened.
    [[nodiscard]] virtual bool throwsTheRestAway() const { return false; }
    /// A piece was wanted.
    virtual void saw(Length /*piece*/) {}
};

/// One reel at a time, and its tail is thrown away when the next piece does not fit.
[[nodiscard]] std::unique_ptr<Cutter> oneReelAtATime();
/// The shortest lot that the piece fits on.
[[nodiscard]] std::unique_ptr<Cutter> bestFit();

/// How the shop describes its work on the first day, before anything was cut.
struct FirstDay {
    std::vector<Length> expectedCuts;
    Length shortestUseful;
};
/// The rule of the remnant values, with a mix that it learns from what it saw.
[[nodiscard]] std::unique_ptr<Cutter> remnantRule(const FirstDay& firstDay);
/// The same with a mix that was given to it, smoothed by nothing: what the rule can do at its best.
[[nodiscard]] std::unique_ptr<Cutter> remnantRule(const stock::PieceMix& mix, Length shortestUseful);

} // namespace rw::world
