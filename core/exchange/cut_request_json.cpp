// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cut_json.h"

#include "core/exchange/cut_parts_json.h"
#include "core/exchange/json_object_reader.h"
#include "core/exchange/strict_json.h"
#include "core/length/own_route.h"
#include "core/length/request_limits.h"
#include "core/length/route_choice.h"
#include "core/length/route_template.h"

#include <array>

namespace rw::exchange {

namespace {
using length::CutRequest;
using length::StringChoice;
using Keys = std::span<const std::string_view>;

constexpr std::array<std::string_view, 20> kTopKeys{
    "sport",       "hoop",     "pattern", "points",     "method",       "route",         "ownRoute",
    "shortSide",   "mains",    "crosses", "ends",       "stretch",      "crimp",         "setMm",
    "setMeasured", "evidence", "ceiling", "tapeStepMm", "costPerMetre", "spoiledJobCost"};
constexpr std::array<std::string_view, 10> kHoopKeys{
    "lengthMm",   "widthMm",          "headAreaCm2",  "outermostMainMm", "lastCrossMm",
    "openThroat", "widestFromThroat", "headExponent", "throatExponent",  "wallMm"};
constexpr std::array<std::string_view, 8> kPatternKeys{
    "mains", "crosses", "mainsSpanMm", "mainsThroatSpanMm", "crossesSpanMm", "crossesCentreMm", "spread", "mainsStart"};
constexpr std::array<std::string_view, 3> kStringKeys{"material", "diameterMm", "tension"};
constexpr std::array<std::string_view, 4> kEndsKeys{"reachMm", "startingKnotMm", "knotUseMm", "crossesStart"};

constexpr std::array<Choice<Sport>, 3> kSports{
    {{"tennis", Sport::Tennis}, {"squash", Sport::Squash}, {"badminton", Sport::Badminton}}};
constexpr std::array<Choice<std::optional<HoopEnd>>, 3> kStarts{
    {{"throat", HoopEnd::Throat}, {"head", HoopEnd::Head}, {"unknown", std::nullopt}}};
constexpr std::array<Choice<std::optional<Method>>, 2> kMethods{
    {{"two-piece", Method::TwoPiece}, {"one-piece", Method::OnePiece}}};
constexpr std::array<Choice<Side>, 2> kSides{{{"left", Side::Left}, {"right", Side::Right}}};
constexpr std::array<Choice<Material>, 5> kMaterials{{{"natural gut", Material::NaturalGut},
                                                      {"nylon", Material::Nylon},
                                                      {"multifilament", Material::Multifilament},
                                                      {"polyester", Material::Polyester},
                                                      {"aramid", Material::Aramid}}};
constexpr std::array<Choice<bool>, 2> kCrossesStarts{{{"knot", false}, {"clamp", true}}};

template<class T, std::size_t N>
std::span<const Choice<T>> these(const std::array<Choice<T>, N>& choices) {
    return choices;
}

void readHoop(JsonObjectReader& in, Hoop& hoop) {
    in.number("lengthMm", hoop.lengthMm);
    in.number("widthMm", hoop.widthMm);
    in.number("headAreaCm2", hoop.headAreaCm2);
    in.number("outermostMainMm", hoop.outermostMainMm);
    in.number("lastCrossMm", hoop.lastCrossMm);
    in.yesNo("openThroat", hoop.openThroat);
    in.number("widestFromThroat", hoop.widestFromThroat);
    in.number("headExponent", hoop.headExponent);
    in.number("throatExponent", hoop.throatExponent);
    in.number("wallMm", hoop.wallMm);
}

void readPattern(JsonObjectReader& in, CutRequest& request) {
    Pattern& pattern = request.pattern;
    in.whole("mains", pattern.mains);
    in.whole("crosses", pattern.crosses);
    in.number("mainsSpanMm", pattern.mainsSpanMm);
    in.number("mainsThroatSpanMm", request.mainsThroatSpanMm);
    in.number("crossesSpanMm", pattern.crossesSpanMm);
    in.number("crossesCentreMm", pattern.crossesCentreMm);
    in.number("spread", pattern.spread);
    in.oneOf("mainsStart", these(kStarts), pattern.mainsStart);
}

/// What of a string was said rather than left to the default.
struct Said {
    bool material = false;
    bool diameter = false;
};

/// A file has no shop whose unit is the usual one: 24 may be lb or kg, and only whoever wrote it knows.
std::optional<Tension> tensionWithUnit(std::string_view text) {
    const auto inPounds = Tension::tryParse(text, TensionUnit::Pound);
    const auto inKilograms = Tension::tryParse(text, TensionUnit::Kilogram);
    return inPounds && inKilograms && *inPounds == *inKilograms ? std::optional(*inPounds) : std::nullopt;
}

void readTension(JsonObjectReader& in, Tension& into) {
    std::optional<std::string> text;
    in.text("tension", text, "text with its unit, as in \"55 lb\"");
    if (!text) {
        return;
    }
    if (const auto tension = tensionWithUnit(*text)) {
        into = *tension;
    } else {
        in.refuseValue("tension", *text, "a pull and its unit, 4 to 100 lb or 1.8 to 45.3 kg, as in \"55 lb\"");
    }
}

void readString(JsonObjectReader& in, StringChoice& string, Said& said) {
    said = {.material = in.has("material"), .diameter = in.has("diameterMm")};
    in.oneOf("material", these(kMaterials), string.material);
    in.number("diameterMm", string.diameterMm);
    readTension(in, string.tension);
}

void readEnds(JsonObjectReader& in, length::Ends& ends) {
    in.number("reachMm", ends.reachMm);
    in.number("startingKnotMm", ends.startingKnotMm);
    in.number("knotUseMm", ends.knotUseMm);
    in.oneOf("crossesStart", these(kCrossesStarts), ends.crossesStartClamped);
}

/// A written route has its sides in it; the key may only say the same.
void readShortSide(JsonObjectReader& in, CutRequest& request) {
    in.oneOf("shortSide", these(kSides), request.shortSide);
    const auto written = request.ownRoute ? length::writtenSide(request.ownRoute->shortArm) : std::nullopt;
    if (!written) {
        return;
    }
    if (in.has("shortSide") && in.result() && request.shortSide != *written) {
        in.refuseValue("shortSide", std::string(sideText(request.shortSide)),
                       std::string(sideText(*written)) + ", as ownRoute.short has its mains");
    }
    request.shortSide = *written;
}

void readSet(JsonObjectReader& in, CutRequest& request) {
    if (in.has("setMm")) {
        int millimetres = 0;
        in.whole("setMm", millimetres);
        request.set = Length::fromMillimetres(millimetres);
    }
    in.yesNo("setMeasured", request.setMeasured);
}

/// One piece is one string: a half that was left out is the other half.
void shareOneString(CutRequest& request, const Said& mains, const Said& crosses) {
    if (length::chosenMethod(request) != Method::OnePiece) {
        return;
    }
    const auto share = [](bool firstSaid, auto& first, bool secondSaid, auto& second) {
        if (firstSaid && !secondSaid) {
            second = first;
        } else if (secondSaid && !firstSaid) {
            first = second;
        }
    };
    share(mains.material, request.mains.material, crosses.material, request.crosses.material);
    share(mains.diameter, request.mains.diameterMm, crosses.diameter, request.crosses.diameterMm);
}
} // namespace

Result<CutRequest> cutRequestFromJson(std::string_view utf8) {
    const auto object = parseStrictObject(utf8);
    if (!object) {
        return tl::unexpected(object.error());
    }
    JsonObjectReader in(*object, "", kTopKeys);
    Sport sport = Sport::Tennis;
    in.oneOf("sport", these(kSports), sport);
    CutRequest request = length::defaultRequest(sport);
    Said mains;
    Said crosses;
    in.object("hoop", kHoopKeys, [&](JsonObjectReader& inner) { readHoop(inner, request.hoop); });
    in.object("pattern", kPatternKeys, [&](JsonObjectReader& inner) { readPattern(inner, request); });
    in.oneOf("method", these(kMethods), request.method);
    in.text("route", request.route);
    readOwnRoute(in, request.pattern, request.ownRoute);
    readShortSide(in, request);
    readPoints(in, request.pattern, request.places);
    in.object("mains", kStringKeys, [&](JsonObjectReader& inner) { readString(inner, request.mains, mains); });
    in.object("crosses", kStringKeys, [&](JsonObjectReader& inner) { readString(inner, request.crosses, crosses); });
    in.object("ends", kEndsKeys, [&](JsonObjectReader& inner) { readEnds(inner, request.ends); });
    in.yesNo("stretch", request.stretch);
    in.yesNo("crimp", request.crimp);
    readSet(in, request);
    readEvidence(in, request.finished);
    in.number("ceiling", request.ceiling);
    int tapeStep = static_cast<int>(request.tapeStep.millimetres());
    in.whole("tapeStepMm", tapeStep);
    request.tapeStep = Length::fromMillimetres(tapeStep);
    in.number("costPerMetre", request.costPerMetre);
    in.number("spoiledJobCost", request.spoiledJobCost);
    if (!in.result()) {
        return tl::unexpected(in.result().error());
    }
    if (const auto limits = length::checkLimits(request); !limits) {
        return tl::unexpected(limits.error());
    }
    if (request.route && length::routeTemplate(*request.route) == nullptr) {
        return tl::unexpected(length::unknownRoute(*request.route));
    }
    shareOneString(request, mains, crosses);
    return request;
}

} // namespace rw::exchange
