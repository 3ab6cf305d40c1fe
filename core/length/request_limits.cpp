// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/request_limits.h"

#include "core/length/exponent_fit.h"
#include "core/length/impossible.h"

#include <optional>

namespace rw::length {

namespace {
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
    [[nodiscard]] Result<void> result() const { return m_result; }

private:
    Result<void> m_result;
};
} // namespace

Result<void> checkLimits(const CutRequest& request) {
    constexpr double kMostMoney = 1e9;
    Limits limits;
    const Hoop& hoop = request.hoop;
    limits.within("hoop.lengthMm", hoop.lengthMm, kShortestHead, kLongestHead);
    limits.within("hoop.widthMm", hoop.widthMm, kNarrowestHead, kWidestHead);
    limits.within("hoop.headAreaCm2", hoop.headAreaCm2, 200, 1000);
    limits.within("hoop.widestFromThroat", hoop.widestFromThroat, 0.3, 0.7);
    limits.within("hoop.headExponent", hoop.headExponent, kLowestExponent, kHighestExponent);
    limits.within("hoop.throatExponent", hoop.throatExponent, kLowestExponent, kHighestExponent);
    limits.within("hoop.wallMm", hoop.wallMm, 4, 20);
    const Pattern& pattern = request.pattern;
    limits.within("pattern.mains", pattern.mains, 6, 30);
    limits.within("pattern.crosses", pattern.crosses, 6, 34);
    limits.within("pattern.mainsSpanMm", pattern.mainsSpanMm, 1, kWidestHead);
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
    return limits.result();
}

} // namespace rw::length
