// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"
#include "core/length/need.h"

#include <string>

namespace rw::length {

/// A sport's default job over a head of these measurements.
inline CutRequest headOf(Sport sport, double lengthMm, double widthMm, int mains, int crosses) {
    CutRequest request = defaultRequest(sport);
    request.hoop.lengthMm = lengthMm;
    request.hoop.widthMm = widthMm;
    request.pattern.mains = mains;
    request.pattern.crosses = crosses;
    return request;
}

/// Equal gaps over measured spans.
inline CutRequest withSpans(CutRequest request, double mainsSpanMm, double crossesSpanMm) {
    request.pattern.mainsSpanMm = mainsSpanMm;
    request.pattern.crossesSpanMm = crossesSpanMm;
    request.pattern.crossesCentreMm = 0;
    request.pattern.spread = 0;
    return request;
}

inline CutRequest withoutStretch(CutRequest request) {
    request.stretch = false;
    request.crimp = false;
    return request;
}

inline CutRequest inTwoPieces(CutRequest request) {
    request.method = Method::TwoPiece;
    return request;
}

inline CutRequest inOnePiece(CutRequest request, std::string route) {
    request.method = Method::OnePiece;
    request.route = std::move(route);
    return request;
}

inline CutRequest of(CutRequest request, Material material) {
    request.mains.material = material;
    request.crosses.material = material;
    return request;
}

/// The need of a piece that was never strung here.
inline Need firstNeed(double predictedMm, double materialSpread = 0) {
    return Need::predicted(predictedMm, groupBelief(kUnknownShop, materialSpread));
}

inline double needOf(const CutPlan& plan) {
    double need = 0;
    for (const PiecePlan& piece : plan.pieces) {
        need += piece.needMm;
    }
    return need;
}

inline Length cutOf(const CutPlan& plan) {
    Length cut = Length::fromMillimetres(0);
    for (const PiecePlan& piece : plan.pieces) {
        cut += piece.cut;
    }
    return cut;
}

inline constexpr Material kMaterials[] = {Material::NaturalGut, Material::Nylon, Material::Multifilament,
                                          Material::Polyester, Material::Aramid};

} // namespace rw::length
