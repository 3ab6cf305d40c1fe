// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"

#include "core/length/cutting.h"
#include "core/length/draft.h"
#include "core/length/impossible.h"
#include "core/length/learning.h"
#include "core/length/outline.h"
#include "core/length/piece_path.h"
#include "core/length/request_limits.h"
#include "core/length/route_choice.h"
#include "core/length/sport_defaults.h"
#include "core/length/string_bed.h"

#include <algorithm>

namespace rw::length {

namespace {
/// One piece is one string.
Result<void> checkOneString(const CutRequest& request) {
    if (request.mains.material != request.crosses.material) {
        return impossible("crosses.material", std::string(materialText(request.crosses.material)),
                          "the mains' material, " + std::string(materialText(request.mains.material)) +
                              ": one piece is one string; two pieces may differ");
    }
    if (request.mains.diameterMm != request.crosses.diameterMm) {
        return impossible("crosses.diameterMm", request.crosses.diameterMm,
                          "the mains' diameter, " + plainNumber(request.mains.diameterMm) +
                              " mm: one piece is one string; two pieces may differ");
    }
    return {};
}

void sayRoute(std::vector<Why>& why, const RouteChoice& route) {
    if (route.method == Method::OnePiece) {
        why.push_back({Why::Kind::RouteChosen, route.route});
        if (route.startAssumed) {
            why.push_back({Why::Kind::StartEndAssumed, std::string(hoopEndText(route.mainsStart))});
        }
        if (route.route.starts_with("plain") && route.shortCrosses > 0) {
            why.push_back({Why::Kind::TwoTopCrosses, {}, static_cast<double>(route.shortCrosses)});
        }
    }
    if (route.crossesFromThroat) {
        why.push_back({Why::Kind::CrossesFromThroat});
    }
}

/// String that lies bare along the hoop is worth a word; across an open throat there is nothing that it could lie on.
Result<void> sayLongRuns(std::vector<Why>& why, const PiecePath& path, bool openThroat) {
    for (const LongRun& run : path.longRuns) {
        const std::string between = run.from.text() + " to " + run.to.text();
        if (openThroat && run.acrossThroat) {
            return impossible("points", between,
                              "ends at most " + plainNumber(kLongRunMm) +
                                  " mm apart at the throat: there is no hoop that the string could lie on");
        }
        why.push_back({Why::Kind::LongOutsideRun, between, run.lengthMm, kLongRunMm});
    }
    return {};
}

/// What would be safer than a set that is not surely enough.
void saySafer(const CutRequest& request, CutPlan& plan) {
    SetJudgement& set = *plan.set;
    if (set.verdict == PacketVerdict::Enough) {
        return;
    }
    if (plan.method == Method::TwoPiece) {
        CutRequest inOne = request;
        inOne.method = Method::OnePiece;
        if (const auto other = planCut(inOne); other && other->set->chanceNotEnough < set.chanceNotEnough) {
            set.alternative = {other->route, other->pieces.front().needMm, other->set->chanceNotEnough};
            plan.why.push_back({Why::Kind::SetSaferInOne, set.alternative->route, set.alternative->needMm,
                                set.alternative->chanceNotEnough});
        }
    }
    plan.why.push_back({Why::Kind::SetSaferWithClamp, {}, request.ends.reachMm, set.chanceWithClamp});
    plan.why.push_back({Why::Kind::SetEnoughFrom, {}, static_cast<double>(set.enoughFrom.millimetres())});
}

/// Where every piece of the job runs, and what is said about it.
struct LaidJob {
    CutPlan plan; ///< without pieces
    std::vector<PiecePath> paths;
};

Result<LaidJob> layOn(const CutRequest& request, const RouteChoice& route) {
    auto found = findOutline(request);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Outline& outline = found->outline;
    const BedSpans spans =
        bedSpans(request.sport, request.hoop.openThroat, request.pattern, outline.lengthMm, outline.widthMm);
    const auto bed =
        StringBed::lay(outline, request.pattern, spans, std::max(request.mains.diameterMm, request.crosses.diameterMm),
                       {request.mainsThroatSpanMm, request.places});
    if (!bed) {
        return tl::unexpected(bed.error());
    }
    LaidJob job{.plan = {.hoop = outline,
                         .method = route.method,
                         .route = route.route,
                         .mainsStart = route.mainsStart,
                         .headLengthMm = bed->longestMain() + outline.wallMm,
                         .headWidthMm = bed->longestCross() + outline.wallMm,
                         .pieces = {},
                         .chanceShortJob = 0,
                         .why = std::move(found->why)},
                .paths = {}};
    sayRoute(job.plan.why, route);
    for (const RoutedPiece& piece : route.pieces) {
        job.paths.push_back(pathOf(piece, *bed, request));
        if (const auto runs = sayLongRuns(job.plan.why, job.paths.back(), request.hoop.openThroat); !runs) {
            return tl::unexpected(runs.error());
        }
    }
    return job;
}

Result<LaidJob> layJob(const CutRequest& request) {
    if (const auto limits = checkLimits(request); !limits) {
        return tl::unexpected(limits.error());
    }
    const auto route = chooseRoute(request);
    if (!route) {
        return tl::unexpected(route.error());
    }
    if (route->method == Method::OnePiece) {
        if (const auto one = checkOneString(request); !one) {
            return tl::unexpected(one.error());
        }
    }
    return layOn(request, *route);
}
} // namespace

std::string Arm::endsAtText() const {
    return std::string(hoopEndText(endsAtEnd)) + ", " + std::string(sideText(endsAtSide));
}

Result<CutPlan> planCut(const CutRequest& request) {
    auto job = layJob(request);
    if (!job) {
        return tl::unexpected(job.error());
    }
    const auto experience = learnFrom(job->paths, request);
    if (!experience) {
        return tl::unexpected(experience.error());
    }
    CutPlan& plan = job->plan;
    std::vector<Draft> drafts;
    for (const PiecePath& path : job->paths) {
        drafts.push_back(draftOf(path, request, *experience));
    }
    std::ranges::move(whyOfNeeds(drafts, *experience), std::back_inserter(plan.why));
    cutPieces(drafts, request, experience->isEmpty(), plan);
    for (Draft& draft : drafts) {
        plan.pieces.push_back(std::move(draft.plan));
    }
    if (plan.set) {
        saySafer(request, plan);
    }
    return std::move(plan);
}

Result<std::vector<PredictedPart>> predictParts(const CutRequest& request) {
    const auto job = layJob(request);
    if (!job) {
        return tl::unexpected(job.error());
    }
    std::vector<PredictedPart> parts;
    for (const PiecePath& path : job->paths) {
        parts.push_back(predictedPart(path, false, request.ends));
        if (path.role == PieceRole::Whole) {
            parts.push_back(predictedPart(path, true, request.ends));
        }
    }
    return parts;
}

} // namespace rw::length
