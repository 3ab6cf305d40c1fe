// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/route_template.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

namespace rw::length {

namespace {
using Kind = StringId::Kind;

constexpr RouteTemplate plain(std::string_view name, std::string_view shortArm, std::string_view longArm, int k) {
    return {name, shortArm, longArm, shortArm, longArm, k, false, false};
}

constexpr RouteTemplate throatUp(std::string_view name, std::string_view shortArm, std::string_view longArm, int k) {
    return {name, shortArm, longArm, shortArm, longArm, k, false, true};
}

constexpr std::array<RouteTemplate, 12> kTemplates{{
    plain("plain-2", "S1..n X1..2", "L1..n X3..x", 2),
    plain("plain-1", "S1..n X1", "L1..n X2..x", 1),
    plain("plain-0", "S1..n", "L1..n X1..x", 0),
    plain("plain-2-reversed", "S1..n X2 X1", "L1..n X3..x", 2),
    {"wrap-first-2", "S1..n-1 X1", "L1..n Xx Sn X2..x-1", "S1..n-1 X1", "L1..n Xx Sn X2..x-1", 1, true, false},
    {"wrap-first-1", "S1..n-1", "L1..n Xx Sn X1..x-1", "S1..n-1", "L1..n Xx Sn X1..x-1", 0, false, false},
    {"wrap-first-3", "S1..n-1", "L1..n-1 X1 Sn Xx Ln X2..x-1", "S1..n-1", "L1..n-1 X1 Sn Xx Ln X2..x-1", 0, false,
     false},
    {"wrap-last-1", "S1..n", "L1..n-1 X2..x Ln X1", "S1..n", "L1..n-1 X1..x Ln", 0, false, false},
    {"wrap-last-2", "S1..n-1", "L1..n-1 X2..x Ln X1 Sn", "S1..n-1", "L1..n-1 X2..x Sn X1 Ln", 0, false, false},
    {"wrap-last-3", "S1..n Xx..x-1", "L1..n-1 X2..x-2 Ln X1", "S1..n Xx", "L1..n-1 X2..x-1 Ln X1", 1, false, false},
    throatUp("throat-up-0", "S1..n", "L1..n Xx..1", 0),
    throatUp("throat-up-2", "S1..n Xx..x-1", "L1..n Xx-2..1", 2),
}};

/// Reads "3", "n", "x-2" from the front of `text`.
std::optional<int> number(std::string_view& text, int n, int x) {
    int value = 0;
    const bool named = !text.empty() && (text.front() == 'n' || text.front() == 'x');
    if (named) {
        value = text.front() == 'n' ? n : x;
        text.remove_prefix(1);
        if (text.empty() || text.front() != '-') {
            return value;
        }
        text.remove_prefix(1);
    }
    int digits = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), digits);
    constexpr int kMost = 99;
    if (read.ec != std::errc() || digits < 0 || digits > kMost) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()));
    return named ? value - digits : digits;
}

std::optional<Kind> kindOf(char letter, Side shortSide) {
    switch (letter) {
    case 'S':
        return shortSide == Side::Left ? Kind::MainLeft : Kind::MainRight;
    case 'L':
        return shortSide == Side::Left ? Kind::MainRight : Kind::MainLeft;
    case 'X':
        return Kind::Cross;
    default:
        return std::nullopt;
    }
}

bool readToken(std::string_view token, Side shortSide, int n, int x, std::vector<StringId>& into) {
    const auto kind = kindOf(token.front(), shortSide);
    token.remove_prefix(1);
    const auto first = kind ? number(token, n, x) : std::nullopt;
    if (!first) {
        return false;
    }
    std::optional<int> last = first;
    if (token.starts_with("..")) {
        token.remove_prefix(2);
        last = number(token, n, x);
    }
    if (!last || !token.empty()) {
        return false;
    }
    const int step = *first <= *last ? 1 : -1;
    for (int i = *first; i != *last + step; i += step) {
        into.push_back({*kind, i});
    }
    return true;
}

tl::expected<std::vector<RouteArm>, RouteFault> layPair(const std::vector<StringId>& shortArm,
                                                        const std::vector<StringId>& longArm, HoopEnd start,
                                                        Side shortSide, int mains, int crosses) {
    auto shortLaid = layArm(shortArm, shortSide, start, mains, crosses);
    if (!shortLaid) {
        return tl::unexpected(shortLaid.error());
    }
    auto longLaid = layArm(longArm, otherSide(shortSide), start, mains, crosses);
    if (!longLaid) {
        return tl::unexpected(longLaid.error());
    }
    std::vector<RouteArm> arms;
    arms.reserve(2);
    arms.push_back(std::move(*shortLaid));
    arms.push_back(std::move(*longLaid));
    if (const auto fault = faultIn(arms, start, mains, crosses)) {
        return tl::unexpected(*fault);
    }
    return arms;
}
} // namespace

std::span<const RouteTemplate> routeTemplates() { return kTemplates; }

const RouteTemplate* routeTemplate(std::string_view name) {
    const auto found = std::ranges::find(kTemplates, name, &RouteTemplate::name);
    return found == kTemplates.end() ? nullptr : &*found;
}

Result<std::vector<StringId>> writtenArm(std::string_view arm, Side shortSide, int mains, int crosses) {
    std::vector<StringId> order;
    order.reserve(static_cast<std::size_t>(mains) + static_cast<std::size_t>(crosses));
    std::string_view rest = arm;
    while (!rest.empty()) {
        const std::size_t blank = rest.find(' ');
        const std::string_view token = rest.substr(0, blank);
        if (!token.empty() && !readToken(token, shortSide, mains / 2, crosses, order)) {
            return refuse(Code::Unreadable, {{"what", "route"}, {"text", std::string(token)}});
        }
        rest.remove_prefix(blank == std::string_view::npos ? rest.size() : blank + 1);
    }
    return order;
}

tl::expected<std::vector<RouteArm>, RouteFault> layTemplate(const RouteTemplate& route, HoopEnd start, Side shortSide,
                                                            int mains, int crosses) {
    const bool odd = crosses % 2 != 0;
    const auto shortArm = writtenArm(odd ? route.shortOdd : route.shortEven, shortSide, mains, crosses);
    const auto longArm = writtenArm(odd ? route.longOdd : route.longEven, shortSide, mains, crosses);
    assert(shortArm && longArm);
    if (mains % 2 == 0) {
        return layPair(*shortArm, *longArm, start, shortSide, mains, crosses);
    }
    const auto withCentre = [](std::vector<StringId> arm) {
        arm.insert(arm.begin(), {Kind::MainCentre, 0});
        return arm;
    };
    auto onShort = layPair(withCentre(*shortArm), *longArm, start, shortSide, mains, crosses);
    if (onShort) {
        return onShort;
    }
    return layPair(*shortArm, withCentre(*longArm), start, shortSide, mains, crosses);
}

std::vector<RouteArm> layMains(HoopEnd start, Side centreSide, int mains) {
    std::vector<RouteArm> arms;
    for (const Side side : {Side::Left, Side::Right}) {
        std::vector<StringId> order;
        if (mains % 2 != 0 && side == centreSide) {
            order.push_back({Kind::MainCentre, 0});
        }
        for (int i = 1; i <= mains / 2; ++i) {
            order.push_back({side == Side::Left ? Kind::MainLeft : Kind::MainRight, i});
        }
        arms.push_back(layArm(order, side, start, mains, 0).value());
    }
    return arms;
}

RouteArm layCrosses(Side begin, int crosses) {
    std::vector<StringId> order;
    for (int i = 1; i <= crosses; ++i) {
        order.push_back({Kind::Cross, i});
    }
    return layArm(order, begin, HoopEnd::Head, 0, crosses).value();
}

} // namespace rw::length
