// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/piece_proposals.h"

#include "core/desk/holding_of.h"
#include "core/desk/lookups.h"
#include "core/desk/packet_share.h"
#include "core/desk/remnant_value_of.h"

#include <algorithm>
#include <map>
#include <memory>

namespace rw::desk {

namespace {
/// A cut of the job that is being planned; the ledger knows no piece of it yet.
PlannedCut inThisJob(const PieceProposal& piece, const std::optional<CustomerId>& owner) {
    return {JobPieceId::of(0), *piece.article.id, piece.lot ? piece.lot->id : std::nullopt, owner, piece.cut};
}

class Proposals {
public:
    Proposals(Transaction& ledger, const Intake& intake, Instant now)
        : m_ledger(ledger)
        , m_intake(intake)
        , m_now(now)
        , m_planned(ledger.lots().plannedCuts())
        , m_before(m_planned) {}

    Result<std::vector<PieceProposal>> make(const length::CutPlan& plan, std::vector<ProposedCut> cuts) {
        std::optional<ReelChoice> shared;
        if (const auto packet = packetFor(plan, cuts)) {
            shared = ReelChoice{*packet->id};
            cuts = shareOut(*packet, plan, cuts, m_intake.settings.tapeStep);
        } else if (cuts.size() == 2 && m_intake.oneString()) {
            shared = proposed(m_intake.mainsArticle, m_intake.mains, cuts[0].cut + cuts[1].cut);
        }
        for (std::size_t i = 0; i < cuts.size(); ++i) {
            if (const auto done = add(plan.pieces[i], cuts[i], shared); !done) {
                return tl::unexpected(done.error());
            }
        }
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            PieceProposal& piece = m_pieces[i];
            piece.freeAfter = freeAfter(piece);
            const bool more = std::any_of(m_pieces.begin() + static_cast<std::ptrdiff_t>(i) + 1, m_pieces.end(),
                                          [&](const PieceProposal& later) {
                                              return piece.lot && later.lot && later.lot->id == piece.lot->id;
                                          });
            if (more) {
                piece.why.left.reset(); // the next piece leaves something else
            }
        }
        return std::move(m_pieces);
    }

private:
    const std::vector<Lot>& openLots(StringArticleId article) {
        if (m_lots.empty() || m_lotsOf != article) {
            m_lots = m_ledger.lots().open(article);
            m_lotsOf = article;
        }
        return m_lots;
    }

    /// The packet that the whole bed comes from: the one somebody chose, or one like it where that is promised; else,
    /// when no reel serves, the oldest that does.
    std::optional<Lot> packetFor(const length::CutPlan& plan, const std::vector<ProposedCut>& cuts) {
        const WantedString& wanted = m_intake.mains;
        if (!m_intake.oneString() || wanted.source == PieceSource::CustomersSet ||
            (wanted.source == PieceSource::CustomersLot && !ownerOf(wanted))) {
            return std::nullopt;
        }
        const auto lots = openLots(*m_intake.mainsArticle.id);
        const auto chosen = std::ranges::find(lots, wanted.lot, &Lot::id);
        if (wanted.lot && (chosen == lots.end() || !chosen->isFullPacket())) {
            return std::nullopt;
        }
        if (wanted.lot && chosen->owner != ownerOf(wanted)) {
            return std::nullopt;
        }
        if (wanted.lot && isFreePacket(*chosen, m_planned)) {
            return doesTheBed(plan, chosen->length) ? std::optional(*chosen) : std::nullopt;
        }
        if (!wanted.lot && reelsServe(lots, wanted, cuts)) {
            return std::nullopt;
        }
        for (const Lot& lot : lots) {
            const bool alike = !wanted.lot || lot.nominal == chosen->nominal;
            if (alike && lot.owner == ownerOf(wanted) && isFreePacket(lot, m_planned) && doesTheBed(plan, lot.length)) {
                return lot;
            }
        }
        return std::nullopt;
    }

    /// Whether the cuts, one after the other, all find a lot that is no full packet.
    [[nodiscard]] bool reelsServe(const std::vector<Lot>& lots, const WantedString& wanted,
                                  const std::vector<ProposedCut>& cuts) {
        std::vector<PlannedCut> planned = m_planned;
        return std::ranges::all_of(cuts, [&](const ProposedCut& cut) {
            const auto reel =
                chooseReel(lots, planned, cut.cut, ownerOf(wanted), valueOf(m_intake.mainsArticle), m_now);
            const auto lot = reel ? std::optional(reel->lot) : std::nullopt;
            planned.push_back({JobPieceId::of(0), *m_intake.mainsArticle.id, lot, ownerOf(wanted), cut.cut});
            return lot.has_value();
        });
    }

    [[nodiscard]] std::optional<CustomerId> ownerOf(const WantedString& wanted) const {
        if (wanted.source == PieceSource::ShopLot || !m_intake.racket) {
            return std::nullopt;
        }
        return m_intake.racket->customer;
    }

    /// A customer's string is looked for only when the customer is known.
    std::optional<ReelChoice> proposed(const StringArticle& article, const WantedString& wanted, Length length) {
        const auto owner = ownerOf(wanted);
        if (wanted.lot || wanted.source == PieceSource::CustomersSet ||
            (wanted.source == PieceSource::CustomersLot && !owner)) {
            return std::nullopt;
        }
        const auto& lots = openLots(*article.id);
        if (auto reel = chooseReel(lots, m_planned, length, owner, valueOf(article), m_now)) {
            return reel;
        }
        const auto packet = proposePacket(lots, m_planned, length, owner);
        return packet ? std::optional(ReelChoice{*packet}) : std::nullopt;
    }

    /// What the ends of a string are worth, read once.
    const stock::RemnantValue& valueOf(const StringArticle& article) {
        auto& value = m_values[*article.id];
        if (!value) {
            value = remnantValueOf(m_ledger, article);
        }
        return *value;
    }

    Result<std::optional<Lot>> pinned(const StringArticle& article, const WantedString& wanted) {
        auto lot = lotOf(m_ledger, *wanted.lot);
        if (!lot) {
            return tl::unexpected(lot.error());
        }
        const bool shops = wanted.source == PieceSource::ShopLot;
        const bool rightOwner =
            shops ? !lot->owner : lot->owner && (!m_intake.racket || *lot->owner == m_intake.racket->customer);
        if (lot->article != *article.id || !rightOwner) {
            return refuse(Code::WrongLot, {{"lot", lot->tag}, {"string", article.name}});
        }
        if (!lot->isOpen()) {
            return refuse(Code::LotClosed, {{"lot", lot->tag}});
        }
        return std::optional(*std::move(lot));
    }

    /// Notes why the reel is another than the one that is open.
    Result<std::optional<Lot>> lotFor(const StringArticle& article, const WantedString& wanted, Length length,
                                      const std::optional<ReelChoice>& shared, CutReason& why) {
        if (wanted.source == PieceSource::CustomersSet) {
            return std::optional<Lot>();
        }
        if (wanted.lot && !(shared && isOpenPacketWish(*wanted.lot, article))) {
            return pinned(article, wanted);
        }
        const auto choice = shared ? shared : proposed(article, wanted, length);
        why.spared = choice ? choice->spared : std::nullopt;
        return choice ? m_ledger.lots().get(choice->lot) : std::nullopt;
    }

    /// Whether somebody chose a packet; it stands for those that are like it.
    bool isOpenPacketWish(LotId wanted, const StringArticle& article) {
        const auto& lots = openLots(*article.id);
        const auto lot = std::ranges::find(lots, std::optional(wanted), &Lot::id);
        return lot != lots.end() && lot->isFullPacket();
    }

    Result<void> add(const length::PiecePlan& piece, const ProposedCut& cut, const std::optional<ReelChoice>& shared) {
        const bool crosses = piece.role == PieceRole::Crosses;
        const StringArticle& article = crosses ? m_intake.crossesArticle : m_intake.mainsArticle;
        const WantedString& wanted = crosses ? m_intake.crosses : m_intake.mains;
        CutReason why;
        auto lot = lotFor(article, wanted, cut.cut, shared, why);
        if (!lot) {
            return tl::unexpected(lot.error());
        }
        const bool ownSet = wanted.source == PieceSource::CustomersSet;
        const Length nothing = Length::fromMillimetres(0);
        PieceProposal proposal{.role = piece.role,
                               .article = article,
                               .source = wanted.source,
                               .lot = *std::move(lot),
                               .cut = cut.cut,
                               .expected = Length::roundedUp(piece.needMm),
                               .cutFrom = cut.from,
                               .cameShortAt = cut.cameShortAt,
                               .fit = ownSet ? Fit::Fits : Fit::DoesNotFit,
                               .leavesOnLot = nothing,
                               .holding = {nothing, nothing},
                               .freeAfter = nothing,
                               .setLength = ownSet ? wanted.setLength : std::nullopt,
                               .why = std::move(why)};
        if (proposal.lot) {
            const Length committed = proposal.lot->length - uncommitted(*proposal.lot, m_planned);
            proposal.fit = fitOf(*proposal.lot, cut.cut, committed);
            proposal.leavesOnLot = proposal.lot->length - committed - cut.cut;
            say(proposal, committed);
        }
        if (!ownSet) {
            proposal.holding = holdingOf(openLots(*article.id), m_before, *article.id, ownerOf(wanted));
            m_planned.push_back(inThisJob(proposal, ownerOf(wanted)));
        }
        m_pieces.push_back(std::move(proposal));
        return {};
    }

    void say(PieceProposal& proposal, Length committed) {
        if (proposal.lot->kind == LotKind::Packet || proposal.fit == Fit::DoesNotFit) {
            return;
        }
        const stock::CutSource source = cutSource(*proposal.lot, committed, m_now);
        proposal.why.opens = source.sealed && proposal.lot->isUntouched();
        proposal.why.left = stock::whatIsLeft(source, proposal.cut, valueOf(proposal.article));
    }

    [[nodiscard]] Length freeAfter(const PieceProposal& piece) const {
        Length free = piece.holding.free();
        for (const PieceProposal& other : m_pieces) {
            if (other.article.id == piece.article.id && other.source == piece.source) {
                free -= other.cut;
            }
        }
        return piece.source == PieceSource::CustomersSet ? Length::fromMillimetres(0) : free;
    }

    Transaction& m_ledger;
    const Intake& m_intake;
    Instant m_now;
    std::vector<PlannedCut> m_planned; ///< what is logged, and the pieces of this job so far
    std::vector<PlannedCut> m_before;  ///< what is logged
    std::vector<Lot> m_lots;
    std::optional<StringArticleId> m_lotsOf;
    std::map<StringArticleId, std::shared_ptr<const stock::RemnantValue>> m_values;
    std::vector<PieceProposal> m_pieces;
};
} // namespace

Result<std::vector<PieceProposal>> proposePieces(Transaction& ledger, const Intake& intake, const length::CutPlan& plan,
                                                 const std::vector<ProposedCut>& cuts, Instant now) {
    return Proposals(ledger, intake, now).make(plan, cuts);
}

} // namespace rw::desk
