// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "core/length/route_template.h"
#include "tests/core/length/requests.h"

#include <initializer_list>
#include <random>
#include <vector>

namespace rw::length {

/// Random frames, patterns and jobs, the same ones in every run.
class Frames {
public:
    explicit Frames(unsigned seed)
        : m_random(seed) {}

    CutRequest next() {
        const Sport sport = pick({Sport::Tennis, Sport::Squash, Sport::Badminton});
        CutRequest request = defaultRequest(sport);
        request.hoop.lengthMm = between(230, 380);
        request.hoop.widthMm = between(160, 225);
        request.hoop.openThroat = sport == Sport::Squash && coin();
        if (coin()) {
            request.hoop.headExponent = between(1.6, 3);
            request.hoop.throatExponent = between(1.4, 2.6);
            request.hoop.widestFromThroat = between(0.4, 0.65);
        }
        request.pattern.mains = whole(10, 24);
        request.pattern.crosses = whole(12, 24);
        request.pattern.spread = between(0, 0.6);
        request.pattern.crossesCentreMm = between(-5, 10);
        const Material material =
            pick({Material::NaturalGut, Material::Nylon, Material::Multifilament, Material::Polyester});
        request = of(request, material);
        request.mains.tension = Tension::fromHundredths(whole(2000, 6000), TensionUnit::Pound).value();
        request.crosses.tension = Tension::fromHundredths(whole(2000, 6000), TensionUnit::Pound).value();
        request.ends.reachMm = between(150, 400);
        request.ends.crossesStartClamped = coin();
        request.shortSide = pick({Side::Left, Side::Right});
        request.tapeStep = Length::fromMillimetres(pick({1, 10, 25, 50, 100}));
        request.ceiling = pick({0.01, 0.001, 0.05});
        return request;
    }

    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_random); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    bool coin() { return whole(0, 1) == 1; }

private:
    template<class T>
    T pick(std::initializer_list<T> from) {
        return *(from.begin() + whole(0, static_cast<int>(from.size()) - 1));
    }
    std::mt19937 m_random;
};

/// Every job that can be strung on this frame: two pieces, and every route that fits.
inline std::vector<CutPlan> allPlans(const CutRequest& request) {
    std::vector<CutPlan> plans{planCut(inTwoPieces(request)).value()};
    for (const RouteTemplate& route : routeTemplates()) {
        if (auto plan = planCut(inOnePiece(request, std::string(route.name)))) {
            plans.push_back(std::move(*plan));
        }
    }
    return plans;
}

} // namespace rw::length
