// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/learning.h"

#include "core/length/impossible.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rw::length {

namespace {
void sayOwnJobs(std::vector<Why>& why, const std::string& piece, const std::vector<Observation>& seen,
                double predictedMm) {
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    int exact = 0;
    for (const Observation& one : seen) {
        if (one.isExact()) {
            ++exact;
            least = std::min(least, one.low);
            most = std::max(most, one.high);
        }
    }
    why.push_back({Why::Kind::OwnJobs, piece, static_cast<double>(seen.size()), static_cast<double>(exact)});
    if (exact > 0) {
        why.push_back({Why::Kind::OwnNeeds, piece, predictedMm * std::exp(least), predictedMm * std::exp(most)});
    }
}
double asPercent(double logarithm) { return std::expm1(logarithm) * 100; }

/// What the shop's other frames say, and what this one adds: only where both are known apart.
void sayShop(std::vector<Why>& why, const std::string& piece, const PiecePlan& plan) {
    why.push_back({Why::Kind::ShopBias, piece, asPercent(plan.shopBias), static_cast<double>(plan.shopCuts)});
    if (plan.observations > 0) {
        why.push_back({Why::Kind::FrameEffect, piece, asPercent(plan.frameEffect)});
    }
}
} // namespace

Result<Experience> learnFrom(std::span<const PiecePath> paths, const CutRequest& request) {
    Experience experience = request.experience;
    for (std::size_t i = 0; i < request.finished.size(); ++i) {
        const FinishedPiece& piece = request.finished[i];
        const std::string key = "evidence[" + std::to_string(i) + "]";
        const auto path = std::ranges::find(paths, piece.role, &PiecePath::role);
        if (path == paths.end()) {
            return impossible(key + ".piece", std::string(piece.partText()),
                              paths.size() == 1 ? "whole or short side: the job is strung in one piece"
                                                : "mains or crosses: the job is strung in two pieces");
        }
        const PredictedPart part = predictedPart(*path, piece.shortSide, request.ends);
        const auto seen = observationOf(piece, part.needMm, part.backMm, key);
        if (!seen) {
            return tl::unexpected(seen.error());
        }
        Learnt& learnt = piece.shortSide ? experience.shortSide : experience.*experienceOf(piece.role);
        learnt.seen.push_back(*seen);
    }
    return experience;
}

std::vector<Why> whyOfNeeds(std::span<const Draft> drafts, const Experience& experience) {
    std::vector<Why> why;
    if (experience.isEmpty()) {
        why.push_back({Why::Kind::GeometryOnly});
    }
    for (const Draft& draft : drafts) {
        const PiecePlan& plan = draft.plan;
        const std::string piece(pieceRoleText(plan.role));
        if (plan.observations > 0) {
            sayOwnJobs(why, piece, (experience.*experienceOf(plan.role)).seen, plan.predictedMm);
        } else if (!experience.isEmpty()) {
            why.push_back({Why::Kind::GeometryOnly, piece});
        }
        if (plan.shopCuts > 0) {
            sayShop(why, piece, plan);
        }
        if (plan.observations > 0 || plan.shopCuts > 0) {
            why.push_back({Why::Kind::Corrected, piece, plan.predictedMm, plan.needMm});
        }
        if (plan.shortSide && plan.shortSide->observations > 0) {
            const std::string side(kShortSideText);
            sayOwnJobs(why, side, experience.shortSide.seen, plan.shortSide->predictedMm);
            why.push_back({Why::Kind::Corrected, side, plan.shortSide->predictedMm, plan.shortSide->needMm});
        }
    }
    return why;
}

} // namespace rw::length
