// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/intake_plan.h"

#include "core/desk/lookups.h"

#include <algorithm>

namespace rw::desk {

namespace {
length::StringChoice choiceOf(const StringArticle& article, const Tension& tension) {
    return {.material = article.material,
            .diameterMm = article.diameterMm(),
            .tension = tension,
            .stretchPercent = article.stretchPercent};
}

/// What a metre of a string cost the shop, by the newest of its lots that are here.
std::optional<double> costPerMetre(Transaction& ledger, StringArticleId article) {
    std::optional<double> cost;
    for (const Lot& lot : ledger.lots().open(article)) {
        if (!lot.owner && lot.nominal.isPositive() && lot.landedCost().minor() > 0) {
            cost = static_cast<double>(lot.landedCost().minor()) / lot.nominal.metres();
        }
    }
    return cost;
}

/// Of two strings the mean.
std::optional<double> costPerMetre(Transaction& ledger, StringArticleId mains, StringArticleId crosses) {
    const auto one = costPerMetre(ledger, mains);
    const auto other = costPerMetre(ledger, crosses);
    return one && other ? std::optional((*one + *other) / 2) : std::nullopt;
}

/// The jobs that speak for method and route, the nearest first: this racket's, then its twins'.
std::vector<const Job*> models(const Intake& intake) {
    std::vector<const Job*> jobs;
    for (const Job& job : intake.past.ofRacket) {
        jobs.push_back(&job);
    }
    for (const OtherRacket& other : intake.past.others) {
        if (other.racket.frame == *intake.frame.id) {
            jobs.push_back(&other.last);
        }
    }
    return jobs;
}

Result<std::optional<Method>> chooseMethod(const Intake& intake, const IntakeDraft& draft) {
    const bool routeGiven = draft.route && !draft.route->empty();
    const auto chosen = draft.method ? draft.method : routeGiven ? std::optional(Method::OnePiece) : std::nullopt;
    if (!intake.oneString()) {
        if (chosen == Method::OnePiece) {
            return refuse(Code::ImpossibleValue, {{"key", "method"},
                                                  {"text", std::string(methodText(Method::OnePiece))},
                                                  {"expected", std::string(methodText(Method::TwoPiece))}});
        }
        return Method::TwoPiece;
    }
    if (chosen) {
        return chosen;
    }
    const auto jobs = models(intake);
    return jobs.empty() ? std::nullopt : std::optional(jobs.front()->method);
}

/// Routes that nobody chose but that are remembered for this frame, the best first.
std::vector<std::string> rememberedRoutes(const Intake& intake) {
    std::vector<std::string> routes;
    for (const Job* job : models(intake)) {
        if (job->method == Method::OnePiece && !job->route.empty()) {
            routes.push_back(job->route);
        }
    }
    const auto addUsual = [&](bool sameMaterial) {
        for (const UsualCut& usual : intake.past.usualCuts) {
            if (usual.role == PieceRole::Whole && !usual.route.empty() &&
                (usual.material == intake.mainsArticle.material) == sameMaterial) {
                routes.push_back(usual.route);
            }
        }
    };
    addUsual(true);
    addUsual(false);
    return routes;
}
} // namespace

bool isOneString(const WantedString& mains, const WantedString& crosses) {
    return mains.article == crosses.article && mains.source == crosses.source && mains.lot == crosses.lot;
}

Result<Intake> readDraft(Transaction& ledger, const IntakeDraft& draft) {
    auto frame = frameOf(ledger, draft.frame);
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    std::optional<Racket> racket;
    if (draft.racket) {
        auto found = racketOf(ledger, *draft.racket);
        if (!found) {
            return tl::unexpected(found.error());
        }
        racket = *std::move(found);
    }
    const WantedString crosses = draft.crosses.value_or(draft.mains);
    auto mainsArticle = articleOf(ledger, draft.mains.article);
    auto crossesArticle = articleOf(ledger, crosses.article);
    if (!mainsArticle || !crossesArticle) {
        return tl::unexpected(mainsArticle ? crossesArticle.error() : mainsArticle.error());
    }
    PastWork past = recall(ledger, *frame, racket);
    past.ofFrame = jobsOnFrame(ledger, *frame->id);
    const auto cost = costPerMetre(ledger, *mainsArticle->id, *crossesArticle->id);
    ShopSettings settings = readSettings(ledger.shop());
    std::vector<ToldNeed> told = toldFor(ledger, *frame, past.articles, settings);
    return Intake{*std::move(frame),          std::move(racket), draft.mains,         crosses, *std::move(mainsArticle),
                  *std::move(crossesArticle), std::move(past),   std::move(settings), cost,    std::move(told)};
}

length::CutRequest requestFor(const FrameModel& frame, const StringArticle& mains, const StringArticle& crosses,
                              const TensionPair& tensions, const ShopSettings& settings) {
    length::CutRequest request = length::defaultRequest(frame.sport);
    request.hoop = frame.hoop;
    request.pattern = frame.pattern;
    request.mains = choiceOf(mains, tensions.mains);
    request.crosses = choiceOf(crosses, tensions.crosses);
    request.method = std::nullopt;
    request.route = std::nullopt;
    request.ends.reachMm = static_cast<double>(settings.reach.millimetres());
    request.ceiling = settings.ceiling;
    request.tapeStep = settings.tapeStep;
    return request;
}

Result<length::CutPlan> planWithOwnCuts(length::CutRequest request, const FrameModel& frame,
                                        std::span<const ToldNeed> told) {
    request.experience = experienceFor(told, *frame.id, request.mains.material, request.crosses.material,
                                       request.route.value_or(std::string()));
    return length::planCut(request);
}

Result<PlannedIntake> planIntake(const Intake& intake, const IntakeDraft& draft) {
    const auto method = chooseMethod(intake, draft);
    if (!method) {
        return tl::unexpected(method.error());
    }
    const SideChoice side = chooseSide(intake.frame, intake.past, draft.shortSide, intake.settings.shortSide);
    length::CutRequest request =
        requestFor(intake.frame, intake.mainsArticle, intake.crossesArticle, draft.tensions, intake.settings);
    request.method = *method;
    request.shortSide = side.side;
    if (const auto& spoiled = intake.settings.spoiledJobCost; spoiled && intake.costPerMetre) {
        request.costPerMetre = intake.costPerMetre;
        request.spoiledJobCost = static_cast<double>(spoiled->minor());
    }
    // What the cuts say of a short side goes by its route, so the route is chosen first.
    const auto finished = [&](const length::CutPlan& chosen) {
        request.method = chosen.method;
        request.route = chosen.route.empty() ? std::nullopt : std::optional(chosen.route);
        return planWithOwnCuts(request, intake.frame, intake.told).map([&](length::CutPlan plan) {
            return PlannedIntake{std::move(plan), side};
        });
    };
    if (draft.route && !draft.route->empty()) {
        request.route = draft.route;
        return length::planCut(request).and_then(finished);
    }
    const auto plan = length::planCut(request);
    if (!plan || plan->method != Method::OnePiece) {
        return plan.and_then(finished);
    }
    for (const std::string& route : rememberedRoutes(intake)) {
        request.route = route;
        if (const auto remembered = length::planCut(request)) {
            return finished(*remembered);
        }
    }
    return finished(*plan);
}

} // namespace rw::desk
