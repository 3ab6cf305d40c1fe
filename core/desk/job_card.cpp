// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/card_facts.h"
#include "core/desk/intake_plan.h"
#include "core/desk/lookups.h"
#include "core/desk/machine_of_job.h"
#include "core/desk/remnant_value_of.h"
#include "core/desk/short_side.h"

namespace rw::desk {

namespace {
/// What a customer's own set leaves when every piece that is planned from it is cut; nothing is known of one that
/// nobody measured.
void fitOwnSet(CardPiece& card, const Job& job) {
    if (!card.piece.setLength || card.piece.isCut()) {
        return;
    }
    card.leavesOnLot = *card.piece.setLength;
    for (const JobPiece& piece : job.pieces) {
        if (piece.source == PieceSource::CustomersSet && piece.article == card.piece.article) {
            card.leavesOnLot -= piece.planned;
        }
    }
    card.fit = card.leavesOnLot.isNegative() ? Fit::DoesNotFit : Fit::Fits;
}

/// What there is to say about a planned cut off a reel that `taken` comes off before.
CutReason whyThere(Transaction& ledger, const CardPiece& card, Length taken) {
    CutReason why;
    if (card.lot->kind != LotKind::Packet && card.fit != Fit::DoesNotFit) {
        const stock::CutSource source = cutSource(*card.lot, taken, {});
        why.opens = source.sealed && card.lot->isUntouched();
        why.left = stock::whatIsLeft(source, card.piece.planned, *remnantValueOf(ledger, card.article));
    }
    return why;
}

/// A piece with its string and lot. What earlier uncut pieces of the job take from the same lot is gone by then.
Result<CardPiece> cardPiece(Transaction& ledger, const JobPiece& piece, const std::vector<CardPiece>& earlier) {
    auto article = articleOf(ledger, piece.article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    const bool cut = piece.isCut();
    const auto lotId = cut ? piece.current().cut->lot : piece.lot;
    CardPiece card{piece, *std::move(article), lotId ? ledger.lots().get(*lotId) : std::nullopt, Fit::Fits,
                   Length::fromMillimetres(0)};
    if (!card.lot) {
        const bool needsOne = !cut && piece.source != PieceSource::CustomersSet;
        card.fit = needsOne ? Fit::DoesNotFit : Fit::Fits;
        return card;
    }
    if (cut) {
        card.leavesOnLot = card.lot->length;
        return card;
    }
    Length taken = Length::fromMillimetres(0);
    for (const CardPiece& other : earlier) {
        if (other.lot && other.lot->id == card.lot->id && !other.piece.isCut()) {
            taken += other.piece.planned;
        }
    }
    card.fit = card.lot->isOpen() ? fitOf(*card.lot, piece.planned, taken) : Fit::DoesNotFit;
    card.leavesOnLot = card.lot->length - taken - piece.planned;
    card.why = whyThere(ledger, card, taken);
    return card;
}

Result<std::vector<CardPiece>> cardPieces(Transaction& ledger, const Job& job) {
    std::vector<CardPiece> pieces;
    for (const JobPiece& piece : job.pieces) {
        auto card = cardPiece(ledger, piece, pieces);
        if (!card) {
            return tl::unexpected(card.error());
        }
        if (!card->lot && piece.source == PieceSource::CustomersSet) {
            fitOwnSet(*card, job);
        }
        for (CardPiece& earlier : pieces) {
            if (card->lot && earlier.lot && earlier.lot->id == card->lot->id) {
                earlier.why.left.reset(); // this piece leaves something else
            }
        }
        pieces.push_back(*std::move(card));
    }
    return pieces;
}

Result<length::CutPlan> planOf(const Job& job, const FrameModel& frame, const std::vector<CardPiece>& pieces,
                               const ShopSettings& settings, std::span<const ToldNeed> told) {
    length::CutRequest request = requestFor(frame, pieces.front().article, pieces.back().article, job.asked, settings);
    request.method = job.method;
    if (!job.route.empty()) {
        request.route = job.route;
    }
    request.shortSide = job.shortSide;
    auto plan = planWithOwnCuts(request, frame, told);
    if (!plan && !mayStillChange(job)) {
        // The frame was corrected since. What was done stands in the pieces; the head is drawn as it is known now.
        request.route.reset();
        request.method.reset();
        plan = planWithOwnCuts(request, frame, told);
    }
    return plan;
}

/// Why the side of a logged job is what it is. Somebody chose it when nothing that was known then says so.
SideChoice sideOf(const Job& job, const FrameModel& frame, const PastWork& past, Side usual) {
    SideChoice choice = chooseSide(frame, past, std::nullopt, usual);
    if (choice.side != job.shortSide) {
        choice = {job.shortSide, SideFrom::Chosen, {}};
    }
    return choice;
}
} // namespace

Result<JobCard> jobCard(Transaction& ledger, JobId id, const std::optional<MachineId>& machineId) {
    auto job = jobOf(ledger, id);
    if (!job) {
        return tl::unexpected(job.error());
    }
    auto customer = customerOf(ledger, job->customer);
    auto racket = racketOf(ledger, job->racket);
    if (!customer || !racket) {
        return tl::unexpected(customer ? racket.error() : customer.error());
    }
    auto frame = frameOf(ledger, racket->frame);
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    auto pieces = cardPieces(ledger, *job);
    if (!pieces) {
        return tl::unexpected(pieces.error());
    }
    const ShopSettings settings = readSettings(ledger.shop());
    const PastWork past = recall(ledger, *frame, *racket, id);
    const std::vector<ToldNeed> told = toldFor(ledger, *frame, past.articles, settings);
    auto plan = planOf(*job, *frame, *pieces, settings, told);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    const SideChoice side = sideOf(*job, *frame, past, settings.shortSide);
    auto shortSide = shortSideOf(*plan, *frame, side, job->shortSideLength);
    JobCard card{.job = *std::move(job),
                 .customer = *std::move(customer),
                 .racket = *std::move(racket),
                 .frame = *std::move(frame),
                 .pieces = *std::move(pieces),
                 .plan = *std::move(plan),
                 .shortSide = std::move(shortSide),
                 .machine = std::nullopt,
                 .mains = std::nullopt,
                 .crosses = std::nullopt,
                 .stringer = {},
                 .inspection = ledger.jobs().inspection(id)};
    if (const auto at = machineId ? machineId : machineOfJob(ledger, card.job)) {
        auto machine = machineOf(ledger, *at);
        if (!machine) {
            return tl::unexpected(machine.error());
        }
        card.mains = dialSetting(card.job.asked.mains, machine->unit, machine->stepHundredths);
        card.crosses = dialSetting(card.job.asked.crosses, machine->unit, machine->stepHundredths);
        const auto onIt = ledger.lots().lastCutOn(*at);
        for (CardPiece& piece : card.pieces) {
            piece.why.onTheMachine = piece.lot && !piece.piece.isCut() && piece.lot->id == onIt;
        }
        card.machine = *std::move(machine);
    }
    if (card.job.strung) {
        card.stringer = staffName(ledger, card.job.strung->by.staff);
    }
    card.above = cardAbove(ledger, card.job, card.frame);
    card.change = cardChange(ledger, card.job);
    card.hands = cardHands(ledger, card.job);
    return card;
}

} // namespace rw::desk
