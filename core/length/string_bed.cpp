// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/string_bed.h"

#include "core/length/impossible.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdlib>

namespace rw::length {

namespace {
std::vector<double> gapsBetween(const std::vector<double>& places) {
    std::vector<double> gaps;
    gaps.reserve(places.size());
    for (std::size_t i = 1; i < places.size(); ++i) {
        gaps.push_back(std::abs(places[i] - places[i - 1]));
    }
    return gaps;
}

Result<void> checkGaps(const std::vector<double>& gaps, double diameterMm, std::string_view key, double span) {
    if (!gaps.empty() && *std::ranges::min_element(gaps) <= diameterMm) {
        return impossible(key, span,
                          "more than " + plainNumber(diameterMm * static_cast<double>(gaps.size())) +
                              " mm, or the strings would touch");
    }
    return {};
}

/// The first and last of `others` (in their order) for which `meets` holds; they are neighbours all the way.
template<class Meets>
std::pair<int, int> gapsMet(int others, Meets meets) {
    int first = 0;
    while (first < others && !meets(first)) {
        ++first;
    }
    int last = others - 1;
    while (last > first && !meets(last)) {
        --last;
    }
    return first >= last ? std::pair(0, 0) : std::pair(first, last);
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
                                 double diameterMm) {
    if (spans.mainsSpanMm >= outline.widthMm) {
        return impossible("pattern.mainsSpanMm", spans.mainsSpanMm,
                          "less than the head's width, " + plainNumber(outline.widthMm) + " mm");
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
    const HoopCurve curve(outline);
    StringBed bed;
    bed.layMains(curve, spreadPlaces(pattern.mains, spans.mainsSpanMm, spans.spread, 0));
    std::vector<double> down = spreadPlaces(pattern.crosses, spans.crossesSpanMm, spans.spread, spans.crossesCentreMm);
    std::ranges::reverse(down);
    bed.layCrosses(curve, down);
    const auto mainsApart = checkGaps(bed.m_mainGaps, diameterMm, "pattern.mainsSpanMm", spans.mainsSpanMm);
    if (!mainsApart) {
        return tl::unexpected(mainsApart.error());
    }
    const auto crossesApart = checkGaps(bed.m_crossGaps, diameterMm, "pattern.crossesSpanMm", spans.crossesSpanMm);
    if (!crossesApart) {
        return tl::unexpected(crossesApart.error());
    }
    bed.findCrossings();
    return bed;
}

void StringBed::layMains(const HoopCurve& curve, const std::vector<double>& places) {
    m_mains.reserve(places.size());
    for (const double x : places) {
        const double top = curve.top(x);
        const double bottom = curve.bottom(x);
        m_mains.push_back({{x, bottom}, {x, top}, top - bottom, 0, 0});
    }
    m_mainGaps = gapsBetween(places);
}

void StringBed::layCrosses(const HoopCurve& curve, const std::vector<double>& places) {
    m_crosses.reserve(places.size());
    for (const double y : places) {
        const double half = curve.halfWidth(y);
        m_crosses.push_back({{-half, y}, {half, y}, 2 * half, 0, 0});
    }
    m_crossGaps = gapsBetween(places);
}

void StringBed::findCrossings() {
    // A cross and a main meet where the one lies inside the reach of the other; the hoop has no dents, so the
    // ones that a string meets are neighbours.
    const auto meet = [](const BedString& main, const BedString& cross) {
        return cross.low.x < main.low.x && main.low.x < cross.high.x;
    };
    for (BedString& main : m_mains) {
        std::tie(main.firstGap, main.lastGap) =
            gapsMet(crosses(), [&](int i) { return meet(main, m_crosses[static_cast<std::size_t>(i)]); });
    }
    for (BedString& cross : m_crosses) {
        std::tie(cross.firstGap, cross.lastGap) =
            gapsMet(mains(), [&](int i) { return meet(m_mains[static_cast<std::size_t>(i)], cross); });
    }
}

const BedString& StringBed::at(const StringId& id) const {
    return id.kind == StringId::Kind::Cross ? m_crosses[indexOf(id, mains())] : m_mains[indexOf(id, mains())];
}

double StringBed::longestMain() const { return std::ranges::max(m_mains, {}, &BedString::chordMm).chordMm; }

double StringBed::longestCross() const { return std::ranges::max(m_crosses, {}, &BedString::chordMm).chordMm; }

double StringBed::crimpOf(const StringId& id, double h) const {
    const BedString& string = at(id);
    const std::vector<double>& gaps = id.kind == StringId::Kind::Cross ? m_mainGaps : m_crossGaps;
    double crimp = 0;
    for (int gap = string.firstGap; gap < string.lastGap; ++gap) {
        const double g = gaps[static_cast<std::size_t>(gap)];
        crimp += std::hypot(g, h) - g;
    }
    return crimp;
}

} // namespace rw::length
