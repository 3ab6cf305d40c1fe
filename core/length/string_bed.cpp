// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/string_bed.h"

#include "core/length/impossible.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>
#include <ranges>

namespace rw::length {

namespace {
Result<void> checkGaps(const std::vector<double>& places, double diameterMm, std::string_view key, double span) {
    for (std::size_t i = 1; i < places.size(); ++i) {
        if (places[i] - places[i - 1] <= diameterMm) {
            return impossible(key, span,
                              "more than " + plainNumber(diameterMm * static_cast<double>(places.size() - 1)) +
                                  " mm, or the strings would touch");
        }
    }
    return {};
}

/// How far from its low end a string meets another one; nothing when it does not.
std::optional<double> meeting(const BedString& string, const BedString& other) {
    const Point r{string.high.x - string.low.x, string.high.y - string.low.y};
    const Point s{other.high.x - other.low.x, other.high.y - other.low.y};
    const Point apart{other.low.x - string.low.x, other.low.y - string.low.y};
    const double across = r.x * s.y - r.y * s.x;
    const double along = (apart.x * s.y - apart.y * s.x) / across;
    const double ofOther = (apart.x * r.y - apart.y * r.x) / across;
    const bool met = 0 < along && along < 1 && 0 < ofOther && ofOther < 1; // never for parallels: no number
    return met ? std::optional(along * string.chordMm) : std::nullopt;
}

BedString between(const Point& low, const Point& high, double wallMm) {
    return {low, high, std::hypot(high.x - low.x, high.y - low.y), wallMm};
}

/// Neighbours may share a hole at one end; elsewhere the one stays on its side of the other. `along` is the coordinate
/// in which they follow one another.
bool inOrder(const BedString& first, const BedString& second, double Point::*along, double sign) {
    const double low = sign * (second.low.*along - first.low.*along);
    const double high = sign * (second.high.*along - first.high.*along);
    return low >= 0 && high >= 0 && low + high > 0;
}

std::size_t indexOf(const StringId& id, int mains) {
    const int half = mains / 2;
    const bool odd = mains % 2 != 0;
    switch (id.kind) {
    case StringId::Kind::MainLeft:
        return static_cast<std::size_t>(half - id.number);
    case StringId::Kind::MainRight:
        return static_cast<std::size_t>(half + id.number - (odd ? 0 : 1));
    case StringId::Kind::MainCentre:
        return static_cast<std::size_t>(half);
    case StringId::Kind::Cross:
        break;
    }
    return static_cast<std::size_t>(id.number - 1);
}
} // namespace

std::vector<double> spreadPlaces(int count, double span, double spread, double centre) {
    assert(count >= 2);
    const int gaps = count - 1;
    const int half = (gaps - 1) / 2; // how many steps from a middle gap to the edge gap
    const auto widening = [&](int gap) {
        const int fromMiddle = gap < gaps / 2 ? half - gap : gap - gaps / 2;
        return half == 0 ? 1.0 : 1 + spread * fromMiddle / half;
    };
    double sum = 0;
    for (int gap = 0; gap < gaps; ++gap) {
        sum += widening(gap);
    }
    std::vector<double> places;
    places.reserve(static_cast<std::size_t>(count));
    double reached = 0;
    for (int gap = 0; gap < gaps; ++gap) {
        places.push_back(centre - span / 2 + span * reached / sum);
        reached += widening(gap);
    }
    places.push_back(centre + span / 2);
    return places;
}

Result<StringBed> StringBed::lay(const Outline& outline, const Pattern& pattern, const BedSpans& spans,
                                 double diameterMm, const BedExceptions& exceptions) {
    const double throatSpan = exceptions.mainsThroatSpanMm.value_or(spans.mainsSpanMm);
    for (const auto& [key, span] :
         {std::pair{"pattern.mainsSpanMm", spans.mainsSpanMm}, std::pair{"pattern.mainsThroatSpanMm", throatSpan}}) {
        if (span >= outline.widthMm) {
            return impossible(key, span, "less than the head's width, " + plainNumber(outline.widthMm) + " mm");
        }
    }
    if (spans.crossesSpanMm >= outline.lengthMm) {
        return impossible("pattern.crossesSpanMm", spans.crossesSpanMm,
                          "less than the head's length, " + plainNumber(outline.lengthMm) + " mm");
    }
    if (std::abs(spans.crossesCentreMm) + spans.crossesSpanMm / 2 >= outline.lengthMm / 2) {
        const double most = (outline.lengthMm - spans.crossesSpanMm) / 2;
        return impossible("pattern.crossesCentreMm", spans.crossesCentreMm,
                          between(-most, most) + " mm, or a cross would lie outside the head");
    }
    const std::vector<double> atHead = spreadPlaces(pattern.mains, spans.mainsSpanMm, spans.spread, 0);
    const std::vector<double> atThroat = spreadPlaces(pattern.mains, throatSpan, spans.spread, 0);
    const std::vector<double> up =
        spreadPlaces(pattern.crosses, spans.crossesSpanMm, spans.spread, spans.crossesCentreMm);
    for (const auto& apart : {checkGaps(atHead, diameterMm, "pattern.mainsSpanMm", spans.mainsSpanMm),
                              checkGaps(atThroat, diameterMm, "pattern.mainsThroatSpanMm", throatSpan),
                              checkGaps(up, diameterMm, "pattern.crossesSpanMm", spans.crossesSpanMm)}) {
        if (!apart) {
            return tl::unexpected(apart.error());
        }
    }
    const HoopCurve curve(outline);
    StringBed bed;
    bed.layMains(curve, atThroat, atHead, outline.wallMm);
    bed.layCrosses(curve, up, outline.wallMm);
    for (const StringPlace& given : exceptions.places) {
        if (const auto placed = bed.place(given, pattern); !placed) {
            return tl::unexpected(placed.error());
        }
    }
    if (const auto order = bed.checkOrder(exceptions.places); !order) {
        return tl::unexpected(order.error());
    }
    return bed;
}

void StringBed::layMains(const HoopCurve& curve, std::span<const double> atThroat, std::span<const double> atHead,
                         double wallMm) {
    m_mains.reserve(atHead.size());
    for (std::size_t i = 0; i < atHead.size(); ++i) {
        m_mains.push_back(
            between(Point{atThroat[i], curve.bottom(atThroat[i])}, Point{atHead[i], curve.top(atHead[i])}, wallMm));
    }
}

void StringBed::layCrosses(const HoopCurve& curve, std::span<const double> places, double wallMm) {
    m_crosses.reserve(places.size());
    for (const double y : places | std::views::reverse) {
        const double half = curve.halfWidth(y);
        m_crosses.push_back(between(Point{-half, y}, Point{half, y}, wallMm));
    }
}

Result<void> StringBed::place(const StringPlace& given, const Pattern& pattern) {
    const std::string key = "points." + given.id.text();
    if (!given.id.isInPattern(pattern.mains, pattern.crosses)) {
        return impossible("points", given.id.text(),
                          "a string of the pattern: " + stringsOfPattern(pattern.mains, pattern.crosses));
    }
    const bool main = given.id.isMain();
    const double apart = main ? given.high.y - given.low.y : given.high.x - given.low.x;
    if (apart <= 0) {
        return refuse(Code::ImpossibleValue,
                      {{"key", key},
                       {"expected", main ? "two points of which the head's lies nearer to the tip than the throat's"
                                         : "two points of which the right one lies right of the left one"}});
    }
    std::vector<BedString>& strings = main ? m_mains : m_crosses;
    BedString& string = strings[indexOf(given.id, mains())];
    string = between(given.low, given.high, given.wallMm.value_or(string.wallMm));
    return {};
}

Result<void> StringBed::checkOrder(std::span<const StringPlace> places) const {
    for (const StringPlace& given : places) {
        const bool main = given.id.isMain();
        const std::vector<BedString>& strings = main ? m_mains : m_crosses;
        const std::size_t at = indexOf(given.id, mains());
        // Mains follow one another to the right, crosses toward the throat.
        double Point::*const along = main ? &Point::x : &Point::y;
        const double sign = main ? 1 : -1;
        const bool afterLast = at == 0 || inOrder(strings[at - 1], strings[at], along, sign);
        const bool beforeNext = at + 1 == strings.size() || inOrder(strings[at], strings[at + 1], along, sign);
        if (!afterLast || !beforeNext) {
            return refuse(Code::ImpossibleValue,
                          {{"key", "points." + given.id.text()},
                           {"expected", std::string("a string between its neighbours; it may share a hole with one of "
                                                    "them at one end")}});
        }
    }
    return {};
}

const BedString& StringBed::at(const StringId& id) const {
    return id.kind == StringId::Kind::Cross ? m_crosses[indexOf(id, mains())] : m_mains[indexOf(id, mains())];
}

double StringBed::longestMain() const { return std::ranges::max(m_mains, {}, &BedString::chordMm).chordMm; }

double StringBed::longestCross() const { return std::ranges::max(m_crosses, {}, &BedString::chordMm).chordMm; }

double StringBed::crimpOf(const StringId& id, double h) const {
    const BedString& string = at(id);
    double crimp = 0;
    std::optional<double> last;
    for (const BedString& other : id.isMain() ? m_crosses : m_mains) {
        const auto met = meeting(string, other);
        if (met && last) {
            const double gap = std::abs(*met - *last);
            crimp += std::hypot(gap, h) - gap;
        }
        last = met ? met : last;
    }
    return crimp;
}

} // namespace rw::length
