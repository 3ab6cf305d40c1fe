// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/pattern.h"
#include "core/length/route.h"

#include <span>
#include <vector>

namespace rw::length {

/// Lays a route of one piece that somebody wrote out, short side first, without knowing any route's name, from the
/// first of these start ends from which it can be laid. Refusal: ImpossibleValue {key, text, expected} that names the
/// first string that cannot be laid there ("ownRoute.long[7]") and what could; of several starts the one from which
/// the route gets farthest.
struct LaidOwnRoute {
    HoopEnd start;
    std::vector<RouteArm> arms;
};
[[nodiscard]] Result<LaidOwnRoute> layOwnRoute(const OwnRoute& route, std::span<const HoopEnd> starts,
                                               const Pattern& pattern);

/// The side of an arm: that of its first main that lies left or right; nothing when it has none.
[[nodiscard]] std::optional<Side> writtenSide(std::span<const StringId> arm);

} // namespace rw::length
