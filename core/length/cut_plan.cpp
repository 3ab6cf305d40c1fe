// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"

#include "core/length/cutting.h"
#include "core/length/draft.h"
#include "core/length/impossible.h"
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
} // namespace

std::string StringId::text() const {
    switch (kind) {
    case Kind::MainLeft:
        return std::to_string(number) + "L";
    case Kind::MainRight:
        return std::to_string(number) + "R";
    case Kind::MainCentre:
        return "C";
    case Kind::Cross:
        break;
    }
    return "X" + std::to_string(number);
}

std::string Arm::endsAtText() const {
    return std::string(hoopEndText(endsAtEnd)) + ", " + std::string(sideText(endsAtSide));
}

Result<CutPlan> planCut(const CutRequest& request) {
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
    auto found = findOutline(request);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Outline& outline = found->outline;
    const BedSpans spans =
        bedSpans(request.sport, request.hoop.openThroat, request.pattern, outline.lengthMm, outline.widthMm);
    const auto bed =
        StringBed::lay(outline, request.pattern, spans, std::max(request.mains.diameterMm, request.crosses.diameterMm));
    if (!bed) {
        return tl::unexpected(bed.error());
    }

    CutPlan plan{.hoop = outline,
                 .method = route->method,
                 .route = route->route,
                 .mainsStart = route->mainsStart,
                 .headLengthMm = bed->longestMain() + outline.wallMm,
                 .headWidthMm = bed->longestCross() + outline.wallMm,
                 .pieces = {},
                 .chanceShortJob = 0,
                 .why = std::move(found->why)};
    sayRoute(plan.why, *route);
    std::vector<Draft> drafts;
    for (const RoutedPiece& piece : route->pieces) {
        const PiecePath path = pathOf(piece, *bed, outline, request);
        for (const LongRun& run : path.longRuns) {
            plan.why.push_back(
                {Why::Kind::LongOutsideRun, run.from.text() + " to " + run.to.text(), run.lengthMm, kLongRunMm});
        }
        drafts.push_back(draftOf(path, request));
    }
    std::ranges::move(whyOfNeeds(drafts, request.experience), std::back_inserter(plan.why));
    cutPieces(drafts, request, plan);
    for (Draft& draft : drafts) {
        plan.pieces.push_back(std::move(draft.plan));
    }
    return plan;
}

} // namespace rw::length
