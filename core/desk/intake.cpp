// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/intake.h"

#include "core/desk/intake_plan.h"
#include "core/desk/lookups.h"
#include "core/desk/own_sets.h"
#include "core/desk/piece_proposals.h"
#include "core/desk/promise_for.h"

#include <algorithm>

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

/// The shop's packet that the whole bed comes from, if it does.
const Lot* packetOfBed(const std::vector<PieceProposal>& pieces) {
    const auto& lot = pieces.front().lot;
    const bool all = std::ranges::all_of(pieces, [&](const PieceProposal& piece) {
        return piece.source == PieceSource::ShopLot && piece.lot && piece.lot->kind == LotKind::Packet &&
               piece.lot->id == lot->id;
    });
    return all ? &*lot : nullptr;
}

Result<Quote> quoteFor(Transaction& ledger, const Intake& intake, const IntakeDraft& draft, Method method,
                       const std::vector<PieceProposal>& pieces, Instant now) {
    const auto list = ledger.priceLists().validOn(localDate(intake.settings.hours, now));
    if (!list) {
        return refuse(Code::Missing, {{"what", "price list"}});
    }
    std::optional<Discount> discount = draft.discount;
    if (discount) {
        auto reason = maybeWordsOf("reason", discount->reason, kLongestName);
        if (!reason) {
            return tl::unexpected(reason.error());
        }
        discount->reason = *std::move(reason);
    }
    QuoteRequest request{.sport = intake.frame.sport,
                         .method = method,
                         .pieces = {},
                         .extras = draft.extras,
                         .rush = draft.rush,
                         .discount = std::move(discount)};
    // A packet that has no price of its own costs what the bed costs; half a bed from one costs half a bed.
    const auto& first = pieces.front().article.id;
    const bool packet = packetOfBed(pieces) != nullptr &&
                        list->find(ChargeKind::Packet, request.sport, request.method, first) != nullptr;
    for (const PieceProposal& piece : pieces) {
        request.pieces.push_back({.role = piece.role,
                                  .article = *piece.article.id,
                                  .customersOwn = piece.source != PieceSource::ShopLot,
                                  .packet = packet});
    }
    auto quoted = quote(*list, request);
    return quoted ? quoted : tl::unexpected(withStringsName(quoted.error(), intake));
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
    auto pieces = proposePieces(ledger, *intake, planned->plan, cuts, now);
    if (!pieces) {
        return tl::unexpected(pieces.error());
    }
    auto price = quoteFor(ledger, *intake, draft, planned->plan.method, *pieces, now);
    if (!price) {
        return tl::unexpected(price.error());
    }
    auto shortSide = shortSideOf(planned->plan, intake->frame, planned->side, cuts.front().shortSide);
    const Lot* packet = packetOfBed(*pieces);
    std::vector<OwnSet> ownSets =
        judgeOwnSets(*intake, draft, planned->plan, packet != nullptr ? std::optional(packet->length) : std::nullopt);
    const Instant promise = promiseFor(ledger, intake->settings, now, draft.rush);
    return IntakePreview{.plan = std::move(planned->plan),
                         .pieces = *std::move(pieces),
                         .ownSets = std::move(ownSets),
                         .shortSide = std::move(shortSide),
                         .quote = *std::move(price),
                         .promise = promise,
                         .afterMustBy = draft.mustBy && promise > *draft.mustBy,
                         .aboveMarked = aboveMarked(intake->frame.marked, draft.tensions).has_value(),
                         .highestMarked = intake->frame.marked.highest};
}

} // namespace rw::desk
