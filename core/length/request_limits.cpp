// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/request_limits.h"

#include "core/length/exponent_fit.h"
#include "core/length/impossible.h"

#include <optional>

namespace rw::length {

namespace {
constexpr double kMostMoney = 1e9;
constexpr double kLongestCut = 50'000; // mm; a reel's end may be some jobs long

/// Looks at one number after the other and keeps the first refusal.
class Limits {
public:
    void within(std::string_view key, double value, double lowest, double highest) {
        // Written so that a NaN is refused too.
        if (m_result && !(lowest <= value && value <= highest)) {
            m_result = impossible(key, value, between(lowest, highest));
        }
    }
    void within(std::string_view key, const std::optional<double>& value, double lowest, double highest) {
        if (value) {
            within(key, *value, lowest, highest);
        }
    }
    void choice(const std::string& half, const StringChoice& choice) {
        within(half + ".diameterMm", choice.diameterMm, 0.4, 2.0);
        within(half + ".stretchPercent", choice.stretchPercent, 0, 30);
    }
    void place(const std::string& key, const StringPlace& place) {
        const bool main = place.id.isMain();
        for (const auto& [name, point] :
             {std::pair{main ? ".throat" : ".left", place.low}, std::pair{main ? ".head" : ".right", place.high}}) {
            within(key + name + "[0]", point.x, -kWidestHead / 2, kWidestHead / 2);
            within(key + name + "[1]", point.y, -kLongestHead, kLongestHead);
        }
        within(key + ".wallMm", place.wallMm, 0, 60);
    }
    void finished(const std::string& key, const FinishedPiece& piece) {
        within(key + ".cutMm", piece.cutMm, 100, kLongestCut);
        if (piece.tailsLowMm == piece.tailsHighMm) {
            within(key + ".tailsMm", piece.tailsLowMm, 0, piece.cutMm);
        } else {
            within(key + ".tailsBetweenMm[0]", piece.tailsLowMm, 0, piece.cutMm);
            within(key + ".tailsBetweenMm[1]", piece.tailsHighMm, piece.tailsLowMm, piece.cutMm);
        }
        within(key + ".shortByMm", piece.shortByMm, 0, kLongestCut);
    }
    [[nodiscard]] Result<void> result() const { return m_result; }

private:
    Result<void> m_result;
};
} // namespace

Result<void> checkLimits(const CutRequest& request) {
    Limits limits;
    const Hoop& hoop = request.hoop;
    limits.within("hoop.lengthMm", hoop.lengthMm, kShortestHead, kLongestHead);
    limits.within("hoop.widthMm", hoop.widthMm, kNarrowestHead, kWidestHead);
    limits.within("hoop.headAreaCm2", hoop.headAreaCm2, 200, 1000);
    limits.within("hoop.widestFromThroat", hoop.widestFromThroat, 0.3, 0.7);
    limits.within("hoop.headExponent", hoop.headExponent, kLowestExponent, kHighestExponent);
    limits.within("hoop.throatExponent", hoop.throatExponent, kLowestExponent, kHighestExponent);
    limits.within("hoop.outermostMainMm", hoop.outermostMainMm, 1, kLongestHead);
    limits.within("hoop.lastCrossMm", hoop.lastCrossMm, 1, kWidestHead);
    limits.within("hoop.wallMm", hoop.wallMm, 4, 20);
    const Pattern& pattern = request.pattern;
    limits.within("pattern.mains", pattern.mains, 6, 30);
    limits.within("pattern.crosses", pattern.crosses, 6, 34);
    limits.within("pattern.mainsSpanMm", pattern.mainsSpanMm, 1, kWidestHead);
    limits.within("pattern.mainsThroatSpanMm", request.mainsThroatSpanMm, 1, kWidestHead);
    limits.within("pattern.crossesSpanMm", pattern.crossesSpanMm, 1, kLongestHead);
    limits.within("pattern.crossesCentreMm", pattern.crossesCentreMm, -100, 100);
    limits.within("pattern.spread", pattern.spread, 0, 2);
    limits.choice("mains", request.mains);
    limits.choice("crosses", request.crosses);
    limits.within("ends.reachMm", request.ends.reachMm, 0, 2000);
    limits.within("ends.startingKnotMm", request.ends.startingKnotMm, 0, 2000);
    limits.within("ends.knotUseMm", request.ends.knotUseMm, 0, 2000);
    limits.within("ceiling", request.ceiling, 1e-6, 0.5);
    limits.within("tapeStepMm", static_cast<double>(request.tapeStep.millimetres()), 1, 1000);
    limits.within("costPerMetre", request.costPerMetre, 0.001, kMostMoney);
    limits.within("spoiledJobCost", request.spoiledJobCost, 0, kMostMoney);
    if (request.set) {
        limits.within("setMm", static_cast<double>(request.set->millimetres()), 1000, kLongestCut);
    }
    for (const StringPlace& place : request.places) {
        limits.place("points." + place.id.text(), place);
    }
    for (std::size_t i = 0; i < request.finished.size(); ++i) {
        limits.finished("evidence[" + std::to_string(i) + "]", request.finished[i]);
    }
    return limits.result();
}

} // namespace rw::length
