// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/frames/sport.h"
#include "core/strings/material.h"
#include "core/units/length.h"

#include <cstdint>
#include <optional>
#include <string>

namespace rw {

/// What can be strung, in micrometres: finer and thicker than any string that is sold.
constexpr int kThinnestString = 400;
constexpr int kThickestString = 2000;

/// A string as it is bought: name, kind, thickness. What is on the shelf of it is a Lot (core/stock).
struct StringArticle {
    std::optional<StringArticleId> id; ///< nothing until the ledger has given one
    std::string code;                  ///< the shop's own short code, unique: "K"
    std::string name;                  ///< "Kestrelline 125"
    std::string colour;
    Sport sport = Sport::Tennis;
    Material material = Material::Nylon;
    int diameterMicrometres = 1300; ///< kThinnestString to kThickestString
    std::string gaugeName;          ///< "16L": beside the millimetres, never instead
    std::optional<std::int64_t> milligramsPerMetre;
    std::optional<double> stretchPercent; ///< its own measured e55; else the material's
    bool retired = false;                 ///< offered no more; stays in the history
    std::int64_t version = 1;             ///< row version, for changes from two stations
    std::optional<Length> packet{};       ///< what one packet of it holds; nothing: it comes on reels only

    [[nodiscard]] double diameterMm() const { return diameterMicrometres / 1000.0; }
    bool operator==(const StringArticle&) const = default;
};

} // namespace rw
