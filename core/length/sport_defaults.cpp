// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/sport_defaults.h"

#include "core/length/cut_request.h"

namespace rw::length {

namespace {
constexpr double kUsualSpread = 0.25;

double mainsShare(Sport sport, int mains) {
    switch (sport) {
    case Sport::Tennis:
        return mains >= 18 ? 0.78 : 0.74;
    case Sport::Squash:
        return 0.75;
    case Sport::Badminton:
        return 0.87;
    }
    return 0;
}

double crossesShare(Sport sport, bool openThroat, int crosses) {
    switch (sport) {
    case Sport::Tennis:
        return crosses >= 20 ? 0.77 : 0.73;
    case Sport::Squash:
        return openThroat ? 0.70 : 0.78;
    case Sport::Badminton:
        return 0.88;
    }
    return 0;
}

Tension pounds(std::int64_t value) { return Tension::fromHundredths(value * 100, TensionUnit::Pound).value(); }

CutRequest requestWith(Sport sport, int mains, int crosses, double diameterMm, int mainsPull, int crossesPull) {
    const auto choice = [&](int pull) {
        return StringChoice{.material = Material::Nylon,
                            .diameterMm = diameterMm,
                            .tension = pounds(pull),
                            .stretchPercent = std::nullopt};
    };
    CutRequest request{.mains = choice(mainsPull), .crosses = choice(crossesPull)};
    request.sport = sport;
    request.pattern.mains = mains;
    request.pattern.crosses = crosses;
    return request;
}
} // namespace

UsualHead usualHead(Sport sport, bool openThroat) {
    switch (sport) {
    case Sport::Tennis:
        return {329, 245, 1.343, 0.5, 2, 2};
    case Sport::Squash:
        return openThroat ? UsualHead{360, 190, 360.0 / 190.0, 0.6, 2, 1.5}
                          : UsualHead{310, 200, 310.0 / 200.0, 0.5, 2, 2};
    case Sport::Badminton:
        return {245, 190, 245.0 / 190.0, 0.5, 2, 2};
    }
    return {};
}

double usualWall(Sport sport) {
    switch (sport) {
    case Sport::Tennis:
        return 11;
    case Sport::Squash:
        return 10;
    case Sport::Badminton:
        return 9;
    }
    return 0;
}

BedSpans bedSpans(Sport sport, bool openThroat, const Pattern& pattern, double lengthMm, double widthMm) {
    const double centre = sport == Sport::Squash && openThroat ? 20 : 0;
    return {.mainsSpanMm = pattern.mainsSpanMm.value_or(mainsShare(sport, pattern.mains) * widthMm),
            .crossesSpanMm =
                pattern.crossesSpanMm.value_or(crossesShare(sport, openThroat, pattern.crosses) * lengthMm),
            .crossesCentreMm = pattern.crossesCentreMm.value_or(centre),
            .spread = pattern.spread.value_or(kUsualSpread)};
}

Length usualPacket(Sport sport) { return Length::fromMillimetres(sport == Sport::Tennis ? 12'200 : 10'000); }

Method usualMethod(Sport sport) { return sport == Sport::Squash ? Method::OnePiece : Method::TwoPiece; }

CutRequest defaultRequest(Sport sport) {
    switch (sport) {
    case Sport::Tennis:
        return requestWith(sport, 16, 19, 1.30, 55, 55);
    case Sport::Squash:
        return requestWith(sport, 14, 18, 1.20, 26, 26);
    case Sport::Badminton:
        break;
    }
    return requestWith(sport, 22, 21, 0.68, 24, 26);
}

} // namespace rw::length
