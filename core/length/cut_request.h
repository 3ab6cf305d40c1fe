// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/hoop.h"
#include "core/frames/pattern.h"
#include "core/length/evidence.h"
#include "core/length/piece_role.h"
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

/// What the shop has learned of one part of a job on this frame with this material.
struct Learnt {
    Belief shopBias = kUnknownShop;
    std::vector<Observation> seen = {};
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
    Experience experience = {};
};

/// The request that a sport gets when nothing but the sport is known (length model, table of defaults).
[[nodiscard]] CutRequest defaultRequest(Sport sport);

} // namespace rw::length
