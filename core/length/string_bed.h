// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "core/length/hoop_curve.h"
#include "core/length/sport_defaults.h"

#include <optional>
#include <span>
#include <vector>

namespace rw::length {

/// `count` places over `span` around `centre`, lowest first. There are count - 1 gaps; they widen linearly
/// from the middle to the edge, the edge gap being (1 + spread) times the middle one, and sum to the span.
/// With an even number of gaps the two middle ones are both the middle gap.
[[nodiscard]] std::vector<double> spreadPlaces(int count, double span, double spread, double centre);

/// One string lying in the hoop: between two points of the inner edge, with what is near it. Millimetres.
struct BedString {
    Point low;  ///< a main's throat end, a cross's left end
    Point high; ///< a main's head end, a cross's right end
    double chordMm;
    double wallMm; ///< of the hoop at both its ends
};

/// Where a bed is not as its outline and its spans make it.
struct BedExceptions {
    std::optional<double> mainsThroatSpanMm = {}; ///< a fan: the outermost mains are so far apart at the throat
    std::span<const StringPlace> places = {};
};

/// Where every string of a pattern lies: mains from left to right, crosses from the head down.
class StringBed {
public:
    /// Refusal: ImpossibleValue {key, text, expected} when strings would lie outside the hoop, or closer
    /// together than they are thick (`diameterMm`); of a place, with the key "points.1L", when the pattern has no such
    /// string, its ends lie the wrong way round, or it would lie across its neighbour.
    [[nodiscard]] static Result<StringBed> lay(const Outline& outline, const Pattern& pattern, const BedSpans& spans,
                                               double diameterMm, const BedExceptions& exceptions = {});

    [[nodiscard]] int mains() const { return static_cast<int>(m_mains.size()); }
    [[nodiscard]] int crosses() const { return static_cast<int>(m_crosses.size()); }
    [[nodiscard]] const BedString& at(const StringId& id) const;
    /// The longest main and cross, inside the hoop.
    [[nodiscard]] double longestMain() const;
    [[nodiscard]] double longestCross() const;
    /// Extra length from weaving: each gap g between neighbours of the other direction that the string really crosses
    /// adds sqrt(g^2 + h^2) - g, h being half the sum of the two diameters. Gaps are as the string meets them.
    [[nodiscard]] double crimpOf(const StringId& id, double h) const;

private:
    StringBed() = default;
    void layMains(const HoopCurve& curve, std::span<const double> atThroat, std::span<const double> atHead,
                  double wallMm);
    void layCrosses(const HoopCurve& curve, std::span<const double> places, double wallMm);
    [[nodiscard]] Result<void> place(const StringPlace& given, const Pattern& pattern);
    [[nodiscard]] Result<void> checkOrder(std::span<const StringPlace> places) const;

    std::vector<BedString> m_mains;
    std::vector<BedString> m_crosses;
};

} // namespace rw::length
