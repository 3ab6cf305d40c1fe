// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_request.h"
#include "core/length/route.h"

#include <string>
#include <vector>

namespace rw::length {

struct RoutedPiece {
    PieceRole role;
    std::vector<RouteArm> arms;
};

/// How the job's string will lie: its method, its route, and every piece laid string by string.
struct RouteChoice {
    Method method;
    std::string route; ///< "" for two pieces, kOwnRoute for a written one
    HoopEnd mainsStart;
    bool startAssumed;    ///< nobody said which end the mains start at
    int shortCrosses = 0; ///< the k of a plain route
    bool crossesFromThroat = false;
    std::vector<RoutedPiece> pieces;
};

/// Chooses what the request leaves open.
/// - Method: the one asked for; one piece when a route is named; else the sport's, but two pieces where the
/// mains
///   finish at the throat.
/// - Route of one piece: the one named; else plain-2 where the mains finish at the head, wrap-first-2 where
/// they
///   finish at the throat, plain-0 with an odd number of mains.
/// - Start end, when nobody knows it: the one that the route needs. For two pieces it changes nothing of
/// weight,
///   and the end is taken from which the mains finish at the head (an odd number of mains: the head).
/// Two-piece crosses begin on the request's short side.
/// Refusals: RouteUnknown {route, known}; RouteDoesNotFit {route, reason, fits, mainsASide, mainsStart,
/// mainsFinish}, where `reason` is "mains-finish-at-head", "mains-finish-at-throat", "odd-mains" or
/// "pattern", and `fits` lists what does, separated by ", ": "two-piece" and names of routes; ImpossibleValue
/// {key: route} for a route with the two-piece method, and as told in own_route.h for a written one.
[[nodiscard]] Result<RouteChoice> chooseRoute(const CutRequest& request);

/// The method that a request gets.
[[nodiscard]] Method chosenMethod(const CutRequest& request);

/// RouteUnknown {route, known}.
[[nodiscard]] Refusal unknownRoute(const std::string& route);

/// Names of the one-piece routes that fit a pattern; a start end that nobody knows allows both.
[[nodiscard]] std::vector<std::string_view> fittingRoutes(const Pattern& pattern);

/// The end of the hoop where the outer mains of an even number finish.
[[nodiscard]] HoopEnd mainsFinish(HoopEnd start, int mains);

} // namespace rw::length
