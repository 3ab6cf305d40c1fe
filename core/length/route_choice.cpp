// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/route_choice.h"

#include "core/length/impossible.h"
#include "core/length/own_route.h"
#include "core/length/route_template.h"
#include "core/length/sport_defaults.h"

#include <span>

namespace rw::length {

namespace {
/// The end from which the mains finish at the head; with an odd number one side always does.
HoopEnd startForHead(int mains) { return mains % 2 != 0 || mains / 2 % 2 == 0 ? HoopEnd::Head : HoopEnd::Throat; }

/// The start ends to try: the known one, or both, the one from which the mains finish at the head first.
std::vector<HoopEnd> startsOf(const Pattern& pattern) {
    if (pattern.mainsStart) {
        return {*pattern.mainsStart};
    }
    const HoopEnd first = startForHead(pattern.mains);
    return {first, otherEnd(first)};
}

struct Laid {
    HoopEnd start;
    std::vector<RouteArm> arms;
};

std::optional<Laid> layWhereItFits(const RouteTemplate& route, const Pattern& pattern, Side shortSide) {
    for (const HoopEnd start : startsOf(pattern)) {
        if (auto arms = layTemplate(route, start, shortSide, pattern.mains, pattern.crosses)) {
            return Laid{start, std::move(*arms)};
        }
    }
    return std::nullopt;
}

std::string joined(std::span<const std::string_view> names) {
    std::string text;
    for (const std::string_view name : names) {
        text += (text.empty() ? "" : ", ");
        text += name;
    }
    return text;
}

tl::unexpected<Refusal> doesNotFit(std::string_view route, const Pattern& pattern) {
    std::string fits = joined(fittingRoutes(pattern));
    fits = fits.empty() ? "two-piece" : "two-piece, " + fits;
    std::vector<Argument> arguments{{"route", std::string(route)}, {"fits", fits}};
    if (pattern.mains % 2 != 0) {
        arguments.push_back({"reason", "odd-mains"});
    } else if (pattern.mainsStart) {
        const HoopEnd finish = mainsFinish(*pattern.mainsStart, pattern.mains);
        arguments.push_back({"reason", "mains-finish-at-" + std::string(hoopEndText(finish))});
        arguments.push_back({"mainsStart", std::string(hoopEndText(*pattern.mainsStart))});
        arguments.push_back({"mainsFinish", std::string(hoopEndText(finish))});
    } else {
        arguments.push_back({"reason", "pattern"});
    }
    arguments.push_back({"mainsASide", std::int64_t{pattern.mains / 2}});
    return refuse(Code::RouteDoesNotFit, std::move(arguments));
}

std::string_view usualRoute(const Pattern& pattern) {
    if (pattern.mains % 2 != 0) {
        return "plain-0";
    }
    const HoopEnd start = pattern.mainsStart.value_or(startForHead(pattern.mains));
    return mainsFinish(start, pattern.mains) == HoopEnd::Head ? "plain-2" : "wrap-first-2";
}

Result<RouteChoice> chooseOwnRoute(const CutRequest& request) {
    if (request.route) {
        return impossible("route", *request.route, "left out beside ownRoute: the job is strung by one route");
    }
    if (chosenMethod(request) == Method::TwoPiece) {
        return impossible("method", std::string(methodText(Method::TwoPiece)),
                          "one-piece or left out beside ownRoute: it is a route of one piece");
    }
    auto laid = layOwnRoute(*request.ownRoute, startsOf(request.pattern), request.pattern);
    if (!laid) {
        return tl::unexpected(laid.error());
    }
    RouteChoice choice{.method = Method::OnePiece,
                       .route = std::string(kOwnRoute),
                       .mainsStart = laid->start,
                       .startAssumed = !request.pattern.mainsStart.has_value(),
                       .pieces = {}};
    choice.pieces.push_back({PieceRole::Whole, std::move(laid->arms)});
    return choice;
}

RouteChoice twoPieces(const CutRequest& request) {
    const Pattern& pattern = request.pattern;
    RouteChoice choice{.method = Method::TwoPiece,
                       .route = {},
                       .mainsStart = pattern.mainsStart.value_or(startForHead(pattern.mains)),
                       .startAssumed = !pattern.mainsStart.has_value(),
                       .pieces = {}};
    choice.pieces.push_back({PieceRole::Mains, layMains(choice.mainsStart, request.shortSide, pattern.mains)});
    choice.pieces.push_back({PieceRole::Crosses, {layCrosses(request.shortSide, pattern.crosses)}});
    return choice;
}
} // namespace

HoopEnd mainsFinish(HoopEnd start, int mains) { return mains / 2 % 2 == 0 ? start : otherEnd(start); }

Refusal unknownRoute(const std::string& route) {
    std::vector<std::string_view> names;
    for (const RouteTemplate& known : routeTemplates()) {
        names.push_back(known.name);
    }
    return Refusal(Code::RouteUnknown, {{"route", route}, {"known", joined(names)}});
}

Method chosenMethod(const CutRequest& request) {
    if (request.method) {
        return *request.method;
    }
    if (request.route || request.ownRoute) {
        return Method::OnePiece;
    }
    const Pattern& pattern = request.pattern;
    const bool finishesAtThroat = pattern.mains % 2 == 0 && pattern.mainsStart &&
                                  mainsFinish(*pattern.mainsStart, pattern.mains) == HoopEnd::Throat;
    return finishesAtThroat ? Method::TwoPiece : usualMethod(request.sport);
}

std::vector<std::string_view> fittingRoutes(const Pattern& pattern) {
    std::vector<std::string_view> names;
    for (const RouteTemplate& route : routeTemplates()) {
        if (layWhereItFits(route, pattern, Side::Left)) {
            names.push_back(route.name);
        }
    }
    return names;
}

Result<RouteChoice> chooseRoute(const CutRequest& request) {
    const Pattern& pattern = request.pattern;
    if (request.ownRoute) {
        return chooseOwnRoute(request);
    }
    if (chosenMethod(request) == Method::TwoPiece) {
        if (request.route) {
            return impossible("route", *request.route,
                              "left out with the method two-piece: it is a route of one piece");
        }
        return twoPieces(request);
    }
    const std::string name = request.route.value_or(std::string(usualRoute(pattern)));
    const RouteTemplate* route = routeTemplate(name);
    if (route == nullptr) {
        return tl::unexpected(unknownRoute(name));
    }
    auto laid = layWhereItFits(*route, pattern, request.shortSide);
    if (!laid) {
        return doesNotFit(name, pattern);
    }
    RouteChoice choice{.method = Method::OnePiece,
                       .route = name,
                       .mainsStart = laid->start,
                       .startAssumed = !pattern.mainsStart.has_value(),
                       .shortCrosses = route->shortCrosses,
                       .crossesFromThroat = route->crossesFromThroat,
                       .pieces = {}};
    choice.pieces.push_back({PieceRole::Whole, std::move(laid->arms)});
    return choice;
}

} // namespace rw::length
