// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cut_parts_json.h"

#include <array>

namespace rw::exchange {

namespace {
using length::FinishedPiece;
using length::MeasuredWith;
using length::StringId;

constexpr std::array<std::string_view, 8> kEvidenceKeys{"piece",   "cutMm",     "tailsMm", "tailsBetweenMm",
                                                        "outcome", "shortByMm", "reelEnd", "measuredWith"};
constexpr std::array<std::string_view, 2> kRouteKeys{"short", "long"};
constexpr std::array<std::string_view, 3> kMainKeys{"head", "throat", "wallMm"};
constexpr std::array<std::string_view, 3> kCrossKeys{"left", "right", "wallMm"};
constexpr std::array<std::string_view, 5> kPointKeys{"head", "throat", "left", "right", "wallMm"};

constexpr std::size_t kMostStrings = 100;   // more than any pattern has
constexpr std::size_t kMostFinished = 1000; // a frame that is strung every day for years

struct Piece {
    PieceRole role;
    bool shortSide;
};
constexpr std::array<Choice<Piece>, 4> kPieces{{{"mains", {PieceRole::Mains, false}},
                                                {"crosses", {PieceRole::Crosses, false}},
                                                {"whole", {PieceRole::Whole, false}},
                                                {kShortSideText, {PieceRole::Whole, true}}}};
constexpr std::array<Choice<FinishedPiece::Outcome>, 2> kOutcomes{
    {{"enough", FinishedPiece::Outcome::Enough}, {"short", FinishedPiece::Outcome::Short}}};
constexpr std::array<Choice<MeasuredWith>, 3> kMeasures{
    {{"tape", MeasuredWith::Tape}, {"head lengths", MeasuredWith::HeadLengths}, {"arm spans", MeasuredWith::ArmSpans}}};

template<class T, std::size_t N>
std::span<const Choice<T>> these(const std::array<Choice<T>, N>& choices) {
    return choices;
}

void readTails(JsonObjectReader& in, FinishedPiece& piece) {
    const int said = (in.has("tailsMm") ? 1 : 0) + (in.has("tailsBetweenMm") ? 1 : 0) + (in.has("outcome") ? 1 : 0);
    if (said != 1) {
        in.refuseWhole("told by one of tailsMm, tailsBetweenMm and outcome");
        return;
    }
    if (!in.has("outcome")) {
        piece.outcome = FinishedPiece::Outcome::Tails;
    }
    in.number("tailsMm", piece.tailsLowMm);
    piece.tailsHighMm = piece.tailsLowMm;
    in.twoNumbers("tailsBetweenMm", piece.tailsLowMm, piece.tailsHighMm);
    in.oneOf("outcome", these(kOutcomes), piece.outcome);
    in.number("shortByMm", piece.shortByMm);
    if (piece.shortByMm && piece.outcome != FinishedPiece::Outcome::Short) {
        in.refuseWhole("short, with outcome \"short\", where shortByMm says by how much");
    }
}

void readFinished(JsonObjectReader& in, FinishedPiece& piece) {
    in.need("piece");
    in.need("cutMm");
    Piece part{};
    in.oneOf("piece", these(kPieces), part);
    piece.role = part.role;
    piece.shortSide = part.shortSide;
    in.number("cutMm", piece.cutMm);
    in.yesNo("reelEnd", piece.reelEnd);
    in.oneOf("measuredWith", these(kMeasures), piece.measuredWith);
    if (in.result()) {
        readTails(in, piece);
    }
}

std::string namesOf(const Pattern& pattern) { return length::stringsOfPattern(pattern.mains, pattern.crosses); }

void readArm(JsonObjectReader& in, std::string_view key, const Pattern& pattern, std::vector<StringId>& into) {
    in.need(key);
    std::vector<std::string> names;
    in.texts(key, kMostStrings, names);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto id = StringId::fromText(names[i]);
        if (!id) {
            in.refuseValue(std::string(key) + "[" + std::to_string(i) + "]", names[i],
                           "a string of the pattern: " + namesOf(pattern));
            return;
        }
        into.push_back(*id);
    }
}

void readPoint(JsonObjectReader& in, std::string_view key, length::Point& into) {
    in.need(key);
    in.twoNumbers(key, into.x, into.y);
}
} // namespace

void readEvidence(JsonObjectReader& in, std::vector<FinishedPiece>& into) {
    in.objects("evidence", kEvidenceKeys, kMostFinished, [&](JsonObjectReader& inner) {
        FinishedPiece piece;
        readFinished(inner, piece);
        into.push_back(piece);
    });
}

void readOwnRoute(JsonObjectReader& in, const Pattern& pattern, std::optional<length::OwnRoute>& into) {
    in.object("ownRoute", kRouteKeys, [&](JsonObjectReader& inner) {
        length::OwnRoute route;
        readArm(inner, "short", pattern, route.shortArm);
        readArm(inner, "long", pattern, route.longArm);
        into = std::move(route);
    });
}

void readPoints(JsonObjectReader& in, const Pattern& pattern, std::vector<length::StringPlace>& into) {
    in.members("points", kPointKeys, kMostStrings, [&](const std::string& name, JsonObjectReader& inner) {
        const auto id = StringId::fromText(name);
        if (!id || !id->isInPattern(pattern.mains, pattern.crosses)) {
            inner.refuseWhole("named after a string of the pattern: " + namesOf(pattern));
            return;
        }
        length::StringPlace place{*id, {}, {}, {}};
        inner.only(id->isMain() ? kMainKeys : kCrossKeys);
        readPoint(inner, id->isMain() ? "throat" : "left", place.low);
        readPoint(inner, id->isMain() ? "head" : "right", place.high);
        inner.number("wallMm", place.wallMm);
        into.push_back(place);
    });
}

} // namespace rw::exchange
