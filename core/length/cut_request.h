// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/hoop.h"
#include "core/frames/pattern.h"
#include "core/length/evidence.h"
#include "core/length/finished_piece.h"
#include "core/length/piece_role.h"
#include "core/length/string_id.h"
#include "core/strings/material.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <optional>
#include <string>
#include <vector>

namespace rw::length {

/// What goes into one half of the bed.
struct StringChoice {
    Material material = Material::Nylon;
    double diameterMm = 1.30; ///< 0.4 to 2.0
    Tension tension;
    std::optional<double> stretchPercent = {}; ///< the article's own measured e55; else the material's
};

/// What the ends of a piece take, in millimetres.
struct Ends {
    double reachMm = 300;             ///< pulled by the machine, then tied off
    double startingKnotMm = 150;      ///< where the crosses of a two-piece job start
    double knotUseMm = 60;            ///< what stays in a knot when the tail is trimmed
    bool crossesStartClamped = false; ///< a starting clamp, pulled again later: a reach instead of the knot
};

/// A shop's own route of one piece, string by string.
struct OwnRoute {
    std::vector<StringId> shortArm;
    std::vector<StringId> longArm;
};

/// A string whose two ends are known outright, where an outline is not enough: a fan of mains that closes up in an open
/// throat, ends inside the shafts, shared holes.
struct StringPlace {
    StringId id;
    Point low;                         ///< a main's throat end, a cross's left end
    Point high;                        ///< a main's head end, a cross's right end
    std::optional<double> wallMm = {}; ///< nothing: the hoop's
};

/// What the shop has learned of one part of a job on this frame with this material.
struct Learnt {
    Belief shopBias = kUnknownShop;
    std::vector<Observation> seen = {};
    int shopCuts = 0; ///< how many exact observations of other groups the bias stands on
};

/// One-piece routes are pooled for the whole; the short side has its own, of the same route.
struct Experience {
    Learnt mains = {};
    Learnt crosses = {};
    Learnt whole = {};
    Learnt shortSide = {};

    [[nodiscard]] bool isEmpty() const {
        return mains.seen.empty() && crosses.seen.empty() && whole.seen.empty() && shortSide.seen.empty();
    }
};

/// Where of an experience a piece's own part stands.
[[nodiscard]] constexpr Learnt Experience::*experienceOf(PieceRole role) {
    switch (role) {
    case PieceRole::Mains:
        return &Experience::mains;
    case PieceRole::Crosses:
        return &Experience::crosses;
    case PieceRole::Whole:
        break;
    }
    return &Experience::whole;
}

/// Everything the model is asked. Nothing in it must be measured; what is left out takes the sport's default.
struct CutRequest {
    Sport sport = Sport::Tennis;
    Hoop hoop = {};
    Pattern pattern = {};
    std::optional<Method> method = {};     ///< nothing: the sport's default
    std::optional<std::string> route = {}; ///< a name of the route templates; nothing: the default of method and frame
    std::optional<OwnRoute> ownRoute = {}; ///< in place of `route`; its sides are the ones it names
    Side shortSide = Side::Left;           ///< two-piece crosses begin on this side
    StringChoice mains;
    StringChoice crosses;
    Ends ends = {};
    bool stretch = true;
    bool crimp = true;
    double ceiling = 0.01;                         ///< chance of a spoiled job that the owner accepts; 1e-6 to 0.5
    Length tapeStep = Length::fromMillimetres(50); ///< cuts are rounded up to it
    std::optional<double> costPerMetre = {};       ///< with spoiledJobCost, in any one currency
    std::optional<double> spoiledJobCost = {};
    std::optional<double> mainsThroatSpanMm =
        {}; ///< between the outermost mains at the throat; nothing: as at the head
    std::vector<StringPlace> places = {};
    std::optional<Length> set = {}; ///< a packet or a customer's own string, to be used up; else string from a reel
    bool setMeasured = false;       ///< its length is not only the printed one
    std::vector<FinishedPiece> finished = {}; ///< of this frame, this material and, of a short side, this route
    Experience experience = {};               ///< what is known beside `finished`
};

/// The request that a sport gets when nothing but the sport is known (length model, table of defaults).
[[nodiscard]] CutRequest defaultRequest(Sport sport);

} // namespace rw::length
