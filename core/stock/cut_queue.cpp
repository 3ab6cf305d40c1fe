// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/cut_queue.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace rw::stock {

namespace {
using Owner = std::optional<CustomerId>;
using Indices = std::vector<std::size_t>;

/// Dearer than all that can be lost, so that it comes before it in the sum; still exact to a nanometre beside it.
constexpr double kOpeningForNothingMm = 1e8;

/// What is placed as one: a piece, or all pieces of a job.
struct Bundle {
    SearchPiece piece;
    Indices pieces;
};

/// One owner's part of the question.
class OwnersQueue {
public:
    OwnersQueue(std::span<const QueueLot> lots, std::span<const QueuePiece> pieces, const RemnantValue& value,
                const Owner& owner)
        : m_value(value) {
        for (std::size_t i = 0; i < lots.size(); ++i) {
            if (lots[i].owner == owner) {
                m_lotOf.push_back(i);
                m_lots.push_back(lots[i]);
            }
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (pieces[i].owner == owner) {
                m_pieceOf.push_back(i);
                m_pieces.push_back(pieces[i]);
            }
        }
    }

    void planInto(QueuePlan& plan, bool sameReel, std::chrono::steady_clock::time_point deadline) {
        bundle(sameReel);
        const std::vector<SearchLot> lots = searchLots();
        std::vector<SearchPiece> pieces;
        for (const Bundle& bundle : m_bundles) {
            pieces.push_back(bundle.piece);
        }
        const SearchResult found = searchCuts(lots, pieces, oneByOne(), deadline);
        plan.proven = plan.proven && found.proven;
        std::vector<Length> cut(m_lots.size(), Length::fromMillimetres(0));
        for (std::size_t i = 0; i < m_bundles.size(); ++i) {
            if (const auto lot = found.placing[i]) {
                cut[*lot] += m_bundles[i].piece.length;
                for (const std::size_t piece : m_bundles[i].pieces) {
                    plan.placing[m_pieceOf[piece]] = m_lotOf[*lot];
                }
            }
        }
        for (std::size_t lot = 0; lot < m_lots.size(); ++lot) {
            plan.lostMm += m_value.lostByCutting(m_lots[lot].source.usable(), cut[lot]);
        }
    }

private:
    [[nodiscard]] std::size_t lotsPinnedTo(JobId job) const {
        return static_cast<std::size_t>(std::ranges::count(m_lots, std::optional(job), &QueueLot::pinnedTo));
    }

    void bundle(bool sameReel) {
        std::map<JobId, std::size_t> bundleOf;
        const int aboveAllOthers = static_cast<int>(m_pieces.size()) + 1;
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            const QueuePiece& piece = m_pieces[i];
            const std::size_t pinnedLots = lotsPinnedTo(piece.job);
            const int weight = pinnedLots > 0 ? aboveAllOthers : 1;
            // a job that was pinned to two lots is meant to come off two
            const bool together = sameReel && pinnedLots < 2;
            const auto [at, isNew] = bundleOf.try_emplace(piece.job, m_bundles.size());
            if (isNew || !together) {
                m_bundles.push_back(
                    {{piece.length, weight, pinnedLots > 0 ? std::optional(piece.job) : std::nullopt}, {i}});
                continue;
            }
            Bundle& with = m_bundles[at->second];
            with.piece.length += piece.length;
            with.piece.weight += weight;
            with.pieces.push_back(i);
        }
    }

    [[nodiscard]] std::vector<SearchLot> searchLots() const {
        const bool fullEnough = std::ranges::any_of(
            m_lots, [](const QueueLot& lot) { return !lot.source.sealed && lot.source.length > kFullEnough; });
        const double openingMm = fullEnough ? kOpeningForNothingMm : kWorthOpeningMm;
        std::vector<SearchLot> lots;
        for (const QueueLot& lot : m_lots) {
            const double onceMm = (lot.source.sealed ? openingMm : 0) - lot.source.pullMm;
            lots.push_back({lot.source.usable(),
                            [&value = m_value, usable = lot.source.usable(), onceMm](Length cut) {
                                return cut.isPositive() ? value.lostByCutting(usable, cut) + onceMm : 0;
                            },
                            lot.pinnedTo});
        }
        return lots;
    }

    /// Each in its turn where it loses least.
    [[nodiscard]] Placing oneByOne() const {
        std::vector<CutSource> left;
        for (const QueueLot& lot : m_lots) {
            left.push_back(lot.source);
        }
        Placing placing(m_bundles.size());
        for (const bool pinned : {true, false}) {
            for (std::size_t i = 0; i < m_bundles.size(); ++i) {
                const SearchPiece& piece = m_bundles[i].piece;
                if (piece.pinned.has_value() == pinned) {
                    placing[i] = cutNext(left, piece);
                }
            }
        }
        return placing;
    }

    [[nodiscard]] std::optional<std::size_t> cutNext(std::vector<CutSource>& left, const SearchPiece& piece) const {
        std::vector<CutSource> candidates;
        Indices lotOf;
        for (std::size_t lot = 0; lot < left.size(); ++lot) {
            if (!piece.pinned || m_lots[lot].pinnedTo == piece.pinned) {
                candidates.push_back(left[lot]);
                lotOf.push_back(lot);
            }
        }
        const auto cut = nextCut(candidates, piece.length, m_value);
        if (!cut) {
            return std::nullopt;
        }
        const std::size_t lot = lotOf[cut->opens.value_or(cut->lot)];
        left[lot].length -= piece.length;
        left[lot].sealed = false;
        left[lot].pullMm = 0;
        return lot;
    }

    const RemnantValue& m_value;
    std::vector<QueueLot> m_lots;
    Indices m_lotOf; ///< its place in the question
    std::vector<QueuePiece> m_pieces;
    Indices m_pieceOf;
    std::vector<Bundle> m_bundles;
};
} // namespace

QueuePlan planQueue(std::span<const QueueLot> lots, std::span<const QueuePiece> pieces, const RemnantValue& value,
                    const QueueRules& rules) {
    const auto deadline = std::chrono::steady_clock::now() + rules.limit;
    QueuePlan plan{.placing = Placing(pieces.size()), .lostMm = 0, .proven = true};
    std::set<Owner> owners;
    for (const QueuePiece& piece : pieces) {
        owners.insert(piece.owner);
    }
    for (const Owner& owner : owners) {
        OwnersQueue(lots, pieces, value, owner).planInto(plan, rules.sameReel, deadline);
    }
    return plan;
}

} // namespace rw::stock
