// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/piece_proposals.h"

#include "core/desk/holding_of.h"
#include "core/desk/lookups.h"

#include <algorithm>

namespace rw::desk {

namespace {
/// A cut of the job that is being planned; the ledger knows no piece of it yet.
PlannedCut inThisJob(const PieceProposal& piece, const std::optional<CustomerId>& owner) {
    return {JobPieceId::of(0), *piece.article.id, piece.lot ? piece.lot->id : std::nullopt, owner, piece.cut};
}

class Proposals {
public:
    Proposals(Transaction& ledger, const Intake& intake)
        : m_ledger(ledger)
        , m_intake(intake)
        , m_planned(ledger.lots().plannedCuts())
        , m_before(m_planned) {}

    Result<std::vector<PieceProposal>> make(const length::CutPlan& plan, const std::vector<ProposedCut>& cuts) {
        const std::optional<LotId> shared =
            cuts.size() == 2 && m_intake.oneString()
                ? proposed(m_intake.mainsArticle, m_intake.mains, cuts[0].cut + cuts[1].cut)
                : std::nullopt;
        for (std::size_t i = 0; i < cuts.size(); ++i) {
            if (const auto done = add(plan.pieces[i], cuts[i], shared); !done) {
                return tl::unexpected(done.error());
            }
        }
        for (PieceProposal& piece : m_pieces) {
            piece.freeAfter = freeAfter(piece);
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

    [[nodiscard]] std::optional<CustomerId> ownerOf(const WantedString& wanted) const {
        if (wanted.source == PieceSource::ShopLot || !m_intake.racket) {
            return std::nullopt;
        }
        return m_intake.racket->customer;
    }

    /// A customer's string is looked for only when the customer is known.
    std::optional<LotId> proposed(const StringArticle& article, const WantedString& wanted, Length length) {
        const auto owner = ownerOf(wanted);
        if (wanted.lot || wanted.source == PieceSource::CustomersSet ||
            (wanted.source == PieceSource::CustomersLot && !owner)) {
            return std::nullopt;
        }
        return proposeLot(openLots(*article.id), m_planned, length, owner);
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

    Result<std::optional<Lot>> lotFor(const StringArticle& article, const WantedString& wanted, Length length,
                                      const std::optional<LotId>& shared) {
        if (wanted.source == PieceSource::CustomersSet) {
            return std::optional<Lot>();
        }
        if (wanted.lot) {
            return pinned(article, wanted);
        }
        const auto id = shared ? shared : proposed(article, wanted, length);
        return id ? m_ledger.lots().get(*id) : std::nullopt;
    }

    Result<void> add(const length::PiecePlan& piece, const ProposedCut& cut, const std::optional<LotId>& shared) {
        const bool crosses = piece.role == PieceRole::Crosses;
        const StringArticle& article = crosses ? m_intake.crossesArticle : m_intake.mainsArticle;
        const WantedString& wanted = crosses ? m_intake.crosses : m_intake.mains;
        auto lot = lotFor(article, wanted, cut.cut, shared);
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
                               .setLength = ownSet ? wanted.setLength : std::nullopt};
        if (proposal.lot) {
            const Length committed = proposal.lot->length - uncommitted(*proposal.lot, m_planned);
            proposal.fit = fitOf(*proposal.lot, cut.cut, committed);
            proposal.leavesOnLot = proposal.lot->length - committed - cut.cut;
        }
        if (!ownSet) {
            proposal.holding = holdingOf(openLots(*article.id), m_before, *article.id, ownerOf(wanted));
            m_planned.push_back(inThisJob(proposal, ownerOf(wanted)));
        }
        m_pieces.push_back(std::move(proposal));
        return {};
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
    std::vector<PlannedCut> m_planned; ///< what is logged, and the pieces of this job so far
    std::vector<PlannedCut> m_before;  ///< what is logged
    std::vector<Lot> m_lots;
    std::optional<StringArticleId> m_lotsOf;
    std::vector<PieceProposal> m_pieces;
};
} // namespace

Result<std::vector<PieceProposal>> proposePieces(Transaction& ledger, const Intake& intake, const length::CutPlan& plan,
                                                 const std::vector<ProposedCut>& cuts) {
    return Proposals(ledger, intake).make(plan, cuts);
}

} // namespace rw::desk
