// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/route.h"

#include <algorithm>

namespace rw::length {

namespace {
using Kind = StringId::Kind;

struct Place {
    HoopEnd end;
    Side side;
};

RunsTo toEnd(HoopEnd end) { return end == HoopEnd::Head ? RunsTo::Head : RunsTo::Throat; }
RunsTo toSide(Side side) { return side == Side::Left ? RunsTo::Left : RunsTo::Right; }

Side sideOf(const StringId& main, Side whenCentre) {
    switch (main.kind) {
    case Kind::MainLeft:
        return Side::Left;
    case Kind::MainRight:
        return Side::Right;
    default:
        return whenCentre;
    }
}

bool isCentre(const StringId& id) { return id.kind == Kind::MainCentre || (id.kind != Kind::Cross && id.number == 1); }

RouteFault fault(RouteFault::Kind kind, const StringId& id, std::size_t place = 0,
                 const std::optional<Place>& stopped = std::nullopt) {
    RouteFault found{kind, id, std::nullopt, std::nullopt, place};
    if (stopped) {
        found.stoppedAtEnd = stopped->end;
        found.stoppedAtSide = stopped->side;
    }
    return found;
}
} // namespace

HoopEnd halfOf(int cross, int crosses) { return 2 * cross <= crosses + 1 ? HoopEnd::Head : HoopEnd::Throat; }

std::string_view runsToText(RunsTo to) {
    switch (to) {
    case RunsTo::Head:
        return "head";
    case RunsTo::Throat:
        return "throat";
    case RunsTo::Left:
        return "left";
    case RunsTo::Right:
        return "right";
    }
    return {};
}

tl::expected<RouteArm, RouteFault> layArm(std::span<const StringId> order, Side side, HoopEnd start, int mains,
                                          int crosses) {
    if (order.empty()) {
        return tl::unexpected(RouteFault{RouteFault::Kind::EmptyArm, std::nullopt, std::nullopt, std::nullopt});
    }
    RouteArm arm{side, {}, start, side};
    arm.strings.reserve(order.size());
    Place at{start, side};
    bool afterMain = false;
    for (const StringId& id : order) {
        const bool first = arm.strings.empty();
        if (!id.isInPattern(mains, crosses)) {
            return tl::unexpected(fault(RouteFault::Kind::NotInPattern, id, arm.strings.size()));
        }
        if (id.kind == Kind::Cross) {
            // From cross to cross the string may run along the hoop as far as it likes; from a main to a
            // cross it stays at that end.
            if (!first && afterMain && halfOf(id.number, crosses) != at.end) {
                return tl::unexpected(fault(RouteFault::Kind::BeginsElsewhere, id, arm.strings.size(), at));
            }
            at = {halfOf(id.number, crosses), otherSide(at.side)};
            arm.strings.push_back({id, toSide(at.side)});
            afterMain = false;
            continue;
        }
        if (first && !isCentre(id)) {
            return tl::unexpected(fault(RouteFault::Kind::NotFromMiddle, id));
        }
        const Side mainSide = sideOf(id, at.side);
        if (!first && mainSide != at.side) {
            return tl::unexpected(fault(RouteFault::Kind::BeginsElsewhere, id, arm.strings.size(), at));
        }
        at = {otherEnd(at.end), mainSide};
        arm.strings.push_back({id, toEnd(at.end)});
        afterMain = true;
    }
    arm.endsAtEnd = at.end;
    arm.endsAtSide = at.side;
    return arm;
}

std::optional<RouteFault> faultIn(std::span<const RouteArm> arms, HoopEnd start, int mains, int crosses) {
    std::vector<int> laid(static_cast<std::size_t>(mains + crosses), 0);
    const auto slot = [&](const StringId& id) -> int& {
        const int half = mains / 2;
        switch (id.kind) {
        case Kind::MainLeft:
            return laid[static_cast<std::size_t>(id.number - 1)];
        case Kind::MainRight:
            return laid[static_cast<std::size_t>(half + id.number - 1)];
        case Kind::MainCentre:
            return laid[static_cast<std::size_t>(mains - 1)];
        case Kind::Cross:
            break;
        }
        return laid[static_cast<std::size_t>(mains + id.number - 1)];
    };
    std::vector<StringId> order;
    for (const RouteArm& arm : arms) {
        order.clear();
        std::ranges::transform(arm.strings, std::back_inserter(order), &RouteString::id);
        const auto relaid = layArm(order, arm.side, start, mains, crosses);
        if (!relaid) {
            return relaid.error();
        }
        for (std::size_t i = 0; i < order.size(); ++i) {
            if (relaid->strings[i].to != arm.strings[i].to) {
                return fault(RouteFault::Kind::RunsElsewhere, order[i], i);
            }
            if (++slot(order[i]) > 1) {
                return fault(RouteFault::Kind::LaidTwice, order[i], i);
            }
        }
    }
    const auto missing = std::ranges::find(laid, 0);
    if (missing == laid.end()) {
        return std::nullopt;
    }
    const int at = static_cast<int>(missing - laid.begin());
    const int half = mains / 2;
    if (at >= mains) {
        return fault(RouteFault::Kind::NotLaid, {Kind::Cross, at - mains + 1});
    }
    if (at >= 2 * half) {
        return fault(RouteFault::Kind::NotLaid, {Kind::MainCentre, 0});
    }
    return at < half ? fault(RouteFault::Kind::NotLaid, {Kind::MainLeft, at + 1})
                     : fault(RouteFault::Kind::NotLaid, {Kind::MainRight, at - half + 1});
}

} // namespace rw::length
