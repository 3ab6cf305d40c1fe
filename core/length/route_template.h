// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/route.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace rw::length {

/// A one-piece route as data. An arm is written as the strings it lays, in order, with blanks between:
///   S1..n    the short side's mains from 1 to n        L1..n-1  the long side's, all but the outermost
///   Sn       the short side's outermost main           X3..x    crosses from the third to the last
///   Xx..x-1  the last cross and the one before it, upward
/// n is the number of mains a side, x the number of crosses. A centre main is put before the mains of the arm
/// for which the route then fits.
struct RouteTemplate {
    std::string_view name;     ///< as people and files write it: "plain-2"
    std::string_view shortOdd; ///< the short side where the number of crosses is odd
    std::string_view longOdd;
    std::string_view shortEven;
    std::string_view longEven;
    int shortCrosses;       ///< crosses on the short side: the k of plain-k
    bool startingClamp;     ///< the short side is held in a clamp until the end
    bool crossesFromThroat; ///< the frame's maker must allow it
};

/// Every one-piece route, in the order in which they are offered.
[[nodiscard]] std::span<const RouteTemplate> routeTemplates();
[[nodiscard]] const RouteTemplate* routeTemplate(std::string_view name);

/// The strings of one written arm for a pattern; `shortSide` says which side S is. Unreadable {what, text}
/// for a token that is not as above. Numbers outside the pattern are left for the route's check.
[[nodiscard]] Result<std::vector<StringId>> writtenArm(std::string_view arm, Side shortSide, int mains, int crosses);

/// The two arms, short side first, for a start end. The fault is of the first arm that cannot be laid.
[[nodiscard]] tl::expected<std::vector<RouteArm>, RouteFault> layTemplate(const RouteTemplate& route, HoopEnd start,
                                                                          Side shortSide, int mains, int crosses);

/// Two-piece mains: two arms, left first, 1 to n on each side. A centre main lies on `centreSide`.
[[nodiscard]] std::vector<RouteArm> layMains(HoopEnd start, Side centreSide, int mains);
/// Two-piece crosses: one arm from the first cross, begun on `begin`.
[[nodiscard]] RouteArm layCrosses(Side begin, int crosses);

} // namespace rw::length
