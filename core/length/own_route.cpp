// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/own_route.h"

#include "core/length/impossible.h"

#include <algorithm>

namespace rw::length {

namespace {
using Kind = StringId::Kind;

/// Where a written route stops making sense.
struct Stop {
    std::string key;
    std::size_t laid; ///< strings that could be laid before
    RouteFault fault;
};

std::vector<StringId> stringsOf(const Pattern& pattern) {
    std::vector<StringId> all;
    if (pattern.mains % 2 != 0) {
        all.push_back({Kind::MainCentre, 0});
    }
    for (const Kind side : {Kind::MainLeft, Kind::MainRight}) {
        for (int number = 1; number <= pattern.mains / 2; ++number) {
            all.push_back({side, number});
        }
    }
    for (int number = 1; number <= pattern.crosses; ++number) {
        all.push_back({Kind::Cross, number});
    }
    return all;
}

bool contains(std::span<const StringId> arm, const StringId& id) { return std::ranges::find(arm, id) != arm.end(); }

/// The strings that the route lays nowhere; at most a handful, more help nobody.
std::string missingFrom(const OwnRoute& route, const Pattern& pattern) {
    constexpr int kMost = 6;
    std::string text;
    int found = 0;
    for (const StringId& id : stringsOf(pattern)) {
        if (!contains(route.shortArm, id) && !contains(route.longArm, id) && ++found <= kMost) {
            text += (text.empty() ? "" : ", ") + id.text();
        }
    }
    return found > kMost ? text + " and more" : text;
}

/// What could follow where the last string stopped: strings of that place that the route has not laid before.
std::string followers(const RouteFault& fault, std::span<const StringId> before, const Pattern& pattern) {
    std::string mains;
    for (const StringId& id : stringsOf(pattern)) {
        const Kind side = *fault.stoppedAtSide == Side::Left ? Kind::MainLeft : Kind::MainRight;
        if (id.kind == side && !contains(before, id)) {
            mains += id.text() + ", ";
        }
    }
    return mains + "or a cross of the " + std::string(hoopEndText(*fault.stoppedAtEnd)) + "'s half";
}

std::string expectedAt(const Stop& stop, const OwnRoute& route, std::span<const StringId> before, HoopEnd start,
                       const Pattern& pattern) {
    const RouteFault& fault = stop.fault;
    const std::string fromStart = " (the mains start at the " + std::string(hoopEndText(start)) + ")";
    switch (fault.kind) {
    case RouteFault::Kind::EmptyArm:
        return "a list of strings that begins with a centre main";
    case RouteFault::Kind::NotInPattern:
        return "a string of the pattern: " + stringsOfPattern(pattern.mains, pattern.crosses);
    case RouteFault::Kind::NotFromMiddle:
        return pattern.mains % 2 != 0 ? "a centre main: C, 1L or 1R" : "a centre main: 1L or 1R";
    case RouteFault::Kind::BeginsElsewhere:
        return "a string that begins at the " + std::string(hoopEndText(*fault.stoppedAtEnd)) + ", " +
               std::string(sideText(*fault.stoppedAtSide)) + ", where " + before.back().text() +
               " stopped: " + followers(fault, before, pattern) + fromStart;
    case RouteFault::Kind::LaidTwice: {
        const std::string missing = missingFrom(route, pattern);
        return missing.empty() ? "left out: it is laid already" : "a string that is laid nowhere else: " + missing;
    }
    case RouteFault::Kind::NotLaid:
    case RouteFault::Kind::RunsElsewhere:
        break;
    }
    return "every string of the pattern once; not laid: " + missingFrom(route, pattern);
}

tl::expected<std::vector<RouteArm>, Stop> layFrom(const OwnRoute& route, HoopEnd start, const Pattern& pattern) {
    const Side shortSide = writtenSide(route.shortArm).value_or(Side::Left);
    std::vector<RouteArm> arms;
    std::vector<StringId> laid;
    for (const auto& [name, order] : {std::pair{"short", &route.shortArm}, std::pair{"long", &route.longArm}}) {
        const std::string key = "ownRoute." + std::string(name);
        const auto at = [&](std::size_t place) { return key + "[" + std::to_string(place) + "]"; };
        if (!order->empty() && !order->front().isMain()) {
            return tl::unexpected(Stop{at(0), laid.size(), {RouteFault::Kind::NotFromMiddle, order->front(), {}, {}}});
        }
        auto arm =
            layArm(*order, arms.empty() ? shortSide : otherSide(shortSide), start, pattern.mains, pattern.crosses);
        if (!arm) {
            const bool empty = arm.error().kind == RouteFault::Kind::EmptyArm;
            return tl::unexpected(
                Stop{empty ? key : at(arm.error().place), laid.size() + arm.error().place, arm.error()});
        }
        for (std::size_t place = 0; place < order->size(); ++place) {
            const StringId& id = (*order)[place];
            if (contains(laid, id)) {
                return tl::unexpected(Stop{at(place), laid.size(), {RouteFault::Kind::LaidTwice, id, {}, {}}});
            }
            laid.push_back(id);
        }
        arms.push_back(std::move(*arm));
    }
    if (laid.size() < static_cast<std::size_t>(pattern.mains) + static_cast<std::size_t>(pattern.crosses)) {
        return tl::unexpected(Stop{"ownRoute", laid.size(), {RouteFault::Kind::NotLaid, {}, {}, {}}});
    }
    return arms;
}

tl::unexpected<Refusal> refusalOf(const Stop& stop, const OwnRoute& route, HoopEnd start, const Pattern& pattern) {
    std::vector<StringId> before = route.shortArm;
    before.insert(before.end(), route.longArm.begin(), route.longArm.end());
    before.resize(std::min(before.size(), stop.laid));
    const std::string expected = expectedAt(stop, route, before, start, pattern);
    if (stop.fault.kind == RouteFault::Kind::EmptyArm) {
        return impossible(stop.key, "empty", expected);
    }
    if (!stop.fault.string) {
        return refuse(Code::ImpossibleValue, {{"key", stop.key}, {"expected", expected}});
    }
    return impossible(stop.key, stop.fault.string->text(), expected);
}
} // namespace

std::optional<Side> writtenSide(std::span<const StringId> arm) {
    for (const StringId& id : arm) {
        if (id.kind == Kind::MainLeft || id.kind == Kind::MainRight) {
            return id.kind == Kind::MainLeft ? Side::Left : Side::Right;
        }
    }
    return std::nullopt;
}

Result<LaidOwnRoute> layOwnRoute(const OwnRoute& route, std::span<const HoopEnd> starts, const Pattern& pattern) {
    std::optional<std::pair<Stop, HoopEnd>> farthest;
    for (const HoopEnd start : starts) {
        auto arms = layFrom(route, start, pattern);
        if (arms) {
            return LaidOwnRoute{start, std::move(*arms)};
        }
        if (!farthest || arms.error().laid > farthest->first.laid) {
            farthest = {arms.error(), start};
        }
    }
    return refusalOf(farthest->first, route, farthest->second, pattern);
}

} // namespace rw::length
