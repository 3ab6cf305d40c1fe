// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace rw::length {

/// A string and where it runs to.
struct RouteString {
    StringId id;
    RunsTo to;
    bool operator==(const RouteString&) const = default;
};

/// From where the piece starts to one of its ends, string by string.
struct RouteArm {
    Side side; ///< of its mains; for crosses alone, where it begins
    std::vector<RouteString> strings;
    HoopEnd endsAtEnd;
    Side endsAtSide;
};

/// What is wrong with a written order of strings.
struct RouteFault {
    enum class Kind {
        EmptyArm,        ///< an arm lays nothing
        NotInPattern,    ///< the pattern has no such string
        NotFromMiddle,   ///< an arm with mains must begin at a centre main from the start end
        BeginsElsewhere, ///< the string does not begin at the end and side where the last one stopped
        RunsElsewhere,   ///< it is written to run where it cannot
        LaidTwice,
        NotLaid
    };
    Kind kind;
    std::optional<StringId> string;      ///< none for EmptyArm
    std::optional<HoopEnd> stoppedAtEnd; ///< where the string before it stopped
    std::optional<Side> stoppedAtSide;
    std::size_t place = 0; ///< in its arm, from 0 on
};

/// Which half of the hoop a cross lies in by its number; of an odd number the middle one counts as the
/// head's.
[[nodiscard]] HoopEnd halfOf(int cross, int crosses);

/// Works out where each string of one arm runs to when it is laid in this order. An arm that begins with a
/// cross begins on `side`; one that begins with a main begins at the `start` end.
[[nodiscard]] tl::expected<RouteArm, RouteFault> layArm(std::span<const StringId> order, Side side, HoopEnd start,
                                                        int mains, int crosses);

/// Checks the pieces of a whole job without knowing any route's name: every string of the pattern exactly
/// once, each arm from the middle at the start end, each next string beginning where the last one stopped,
/// running where it says. Nothing when all is well.
[[nodiscard]] std::optional<RouteFault> faultIn(std::span<const RouteArm> arms, HoopEnd start, int mains, int crosses);

[[nodiscard]] std::string_view runsToText(RunsTo to); ///< "head", "throat", "left", "right"

} // namespace rw::length
