// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/intake.h"

#include "core/desk/intake_plan.h"
#include "core/desk/own_sets.h"
#include "core/desk/piece_proposals.h"
#include "core/desk/promise_for.h"

namespace rw::desk {

namespace {
std::vector<ProposedCut> cutsFor(const Intake& intake, const length::CutPlan& plan) {
    std::vector<ProposedCut> cuts;
    for (const length::PiecePlan& piece : plan.pieces) {
        const StringArticle& article = piece.role == PieceRole::Crosses ? intake.crossesArticle : intake.mainsArticle;
        cuts.push_back(proposeCut(plan, piece, article.material, intake.past, intake.settings.tapeStep));
    }
    return cuts;
}

/// A price that is missing is missing of a string that somebody knows by its name.
Refusal withStringsName(const Refusal& refusal, const Intake& intake) {
    std::vector<Argument> arguments = refusal.arguments();
    for (const StringArticle* article : {&intake.mainsArticle, &intake.crossesArticle}) {
        if (refusal.code() == Code::Missing && refusal.number("article") == article->id->value()) {
            arguments.push_back({"string", article->name});
            break;
        }
    }
    return Refusal(refusal.code(), std::move(arguments));
}

Result<Quote> quoteFor(Transaction& ledger, const Intake& intake, const IntakeDraft& draft, Method method,
                       const std::vector<PieceProposal>& pieces, Instant now) {
    const auto list = ledger.priceLists().validOn(localDate(intake.settings.hours, now));
    if (!list) {
        return refuse(Code::Missing, {{"what", "price list"}});
    }
    QuoteRequest request{.sport = intake.frame.sport,
                         .method = method,
                         .pieces = {},
                         .extras = draft.extras,
                         .rush = draft.rush,
                         .discount = std::nullopt};
    for (const PieceProposal& piece : pieces) {
        const bool shops = piece.source == PieceSource::ShopLot;
        request.pieces.push_back({.role = piece.role,
                                  .article = *piece.article.id,
                                  .customersOwn = !shops,
                                  .packet = shops && piece.lot && piece.lot->kind == LotKind::Packet});
    }
    auto quoted = quote(*list, request);
    return quoted ? quoted : tl::unexpected(withStringsName(quoted.error(), intake));
}

bool isAbove(const TensionPair& asked, const std::optional<Tension>& highest) {
    return highest && std::max(asked.mains.newtons(), asked.crosses.newtons()) > highest->newtons();
}
} // namespace

Result<IntakePreview> previewIntake(Transaction& ledger, const IntakeDraft& draft, Instant now) {
    const auto intake = readDraft(ledger, draft);
    if (!intake) {
        return tl::unexpected(intake.error());
    }
    auto planned = planIntake(*intake, draft);
    if (!planned) {
        return tl::unexpected(planned.error());
    }
    const std::vector<ProposedCut> cuts = cutsFor(*intake, planned->plan);
    auto pieces = proposePieces(ledger, *intake, planned->plan, cuts);
    if (!pieces) {
        return tl::unexpected(pieces.error());
    }
    auto price = quoteFor(ledger, *intake, draft, planned->plan.method, *pieces, now);
    if (!price) {
        return tl::unexpected(price.error());
    }
    auto shortSide = shortSideOf(planned->plan, intake->frame, planned->side, cuts.front().shortSide);
    std::vector<OwnSet> ownSets = judgeOwnSets(*intake, draft, planned->plan);
    return IntakePreview{.plan = std::move(planned->plan),
                         .pieces = *std::move(pieces),
                         .ownSets = std::move(ownSets),
                         .shortSide = std::move(shortSide),
                         .quote = *std::move(price),
                         .promise = promiseFor(ledger, intake->settings, now, draft.rush),
                         .aboveMarked = isAbove(draft.tensions, intake->frame.marked.highest),
                         .highestMarked = intake->frame.marked.highest};
}

} // namespace rw::desk
