// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/finished_piece.h"

#include "core/length/draft.h"
#include "core/length/impossible.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rw::length {

namespace {
constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// Of ln(cut), as one standard deviation.
double spreadOf(MeasuredWith measuredWith, double cutMm) {
    switch (measuredWith) {
    case MeasuredWith::Unsaid:
        return 0;
    case MeasuredWith::Tape:
        return 10 / 2.0 / cutMm;
    case MeasuredWith::HeadLengths:
        return 0.01 / 2;
    case MeasuredWith::ArmSpans:
        return 0.02 / 2;
    }
    return 0;
}

struct NeedRange {
    double low;
    double high;
};

NeedRange needOf(const FinishedPiece& piece, int pulledEnds, const Ends& ends) {
    const double cut = piece.cutMm;
    switch (piece.outcome) {
    case FinishedPiece::Outcome::Tails: {
        const double back = pulledEnds * (ends.reachMm - ends.knotUseMm);
        return piece.reelEnd ? NeedRange{0, cut}
                             : NeedRange{cut - piece.tailsHighMm + back, cut - piece.tailsLowMm + back};
    }
    case FinishedPiece::Outcome::Enough:
        return {0, cut};
    case FinishedPiece::Outcome::Short:
        break;
    }
    return piece.shortByMm ? NeedRange{cut + *piece.shortByMm, cut + *piece.shortByMm} : NeedRange{cut, kInfinity};
}

double logRatio(double needMm, double predictedMm) { return needMm <= 0 ? -kInfinity : std::log(needMm / predictedMm); }

struct Part {
    double predictedMm;
    std::vector<Observation>* seen;
};

/// The part of the plan that a finished piece was, and where what it says belongs.
std::optional<Part> partOf(const FinishedPiece& piece, const CutPlan& plan, Experience& experience) {
    const auto found = std::ranges::find(plan.pieces, piece.role, &PiecePlan::role);
    if (found == plan.pieces.end()) {
        return std::nullopt;
    }
    if (piece.shortSide) {
        return Part{found->shortSide->predictedMm, &experience.shortSide.seen};
    }
    return Part{found->predictedMm, &(experience.*experienceOf(piece.role)).seen};
}
} // namespace

Result<Observation> observationOf(const FinishedPiece& piece, double predictedMm, int pulledEnds, const Ends& ends,
                                  std::string_view key) {
    const NeedRange need = needOf(piece, pulledEnds, ends);
    constexpr double kMostOff = 2;
    const bool tails = piece.outcome == FinishedPiece::Outcome::Tails && !piece.reelEnd;
    if (need.high < predictedMm / kMostOff || need.low > predictedMm * kMostOff) {
        return impossible(std::string(key) + (tails ? ".tailsMm" : ".cutMm"), tails ? piece.tailsHighMm : piece.cutMm,
                          "what leaves a need of " +
                              between(std::round(predictedMm / kMostOff), std::round(predictedMm * kMostOff)) +
                              " mm; by the head's measurements the " + std::string(piece.partText()) + " needs " +
                              plainNumber(std::round(predictedMm)) + " mm");
    }
    return Observation{logRatio(need.low, predictedMm), logRatio(need.high, predictedMm),
                       std::hypot(kJobSpread, spreadOf(piece.measuredWith, piece.cutMm))};
}

Result<CutPlan> planCut(const CutRequest& request, std::span<const FinishedPiece> finished) {
    auto plan = planCut(request);
    if (!plan || finished.empty()) {
        return plan;
    }
    CutRequest learned = request;
    for (std::size_t i = 0; i < finished.size(); ++i) {
        const FinishedPiece& piece = finished[i];
        const std::string key = "evidence[" + std::to_string(i) + "]";
        const auto part = partOf(piece, *plan, learned.experience);
        if (!part) {
            return impossible(key + ".piece", std::string(piece.partText()),
                              plan->method == Method::OnePiece ? "whole or short side: the job is strung in one piece"
                                                               : "mains or crosses: the job is strung in two pieces");
        }
        const auto seen = observationOf(piece, part->predictedMm, pulledEnds(piece.role, piece.shortSide, request.ends),
                                        request.ends, key);
        if (!seen) {
            return tl::unexpected(seen.error());
        }
        part->seen->push_back(*seen);
    }
    return planCut(learned);
}

} // namespace rw::length
