// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/cut_queue.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <map>
#include <set>
#include <tuple>
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
                const QueueRules& rules, const Owner& owner)
        : m_value(value) {
        std::vector<std::optional<std::size_t>> here(lots.size());
        for (std::size_t i = 0; i < lots.size(); ++i) {
            if (lots[i].owner == owner) {
                here[i] = m_lots.size();
                m_lotOf.push_back(i);
                m_lots.push_back(lots[i]);
            }
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (pieces[i].owner == owner) {
                const auto lot = rules.asPlanned.empty() ? std::nullopt : rules.asPlanned[i];
                m_asPlanned.push_back(lot ? here[*lot] : std::nullopt);
                m_pieceOf.push_back(i);
                m_pieces.push_back(pieces[i]);
            }
        }
        bundle(rules.sameReel);
    }

    void planInto(QueuePlan& plan, std::chrono::steady_clock::time_point deadline) {
        const std::vector<SearchLot> lots = searchLots();
        std::vector<SearchPiece> pieces;
        for (const Bundle& bundle : m_bundles) {
            pieces.push_back(bundle.piece);
        }
        SearchResult found = searchCuts(lots, pieces, oneByOne(Placing(m_bundles.size())), deadline);
        const Placing now = asPlanned();
        if (std::ranges::any_of(now, [](const auto& lot) { return lot.has_value(); })) {
            stayIfAsGood(now, found, lots);
        }
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

    /// The bundles that stay where they are planned now, as far as the lots hold them.
    [[nodiscard]] Placing asPlanned() const {
        Placing placing(m_bundles.size());
        std::vector<CutSource> left = sources();
        for (std::size_t i = 0; i < m_bundles.size(); ++i) {
            const Bundle& bundle = m_bundles[i];
            const auto lot = m_asPlanned[bundle.pieces.front()];
            const bool together = std::ranges::all_of(
                bundle.pieces, [&](std::size_t piece) { return m_asPlanned[piece] == lot; });
            const bool allowed = !bundle.piece.pinned || (lot && m_lots[*lot].pinnedTo == bundle.piece.pinned);
            if (lot && together && allowed && left[*lot].fits(bundle.piece.length)) {
                cut(left[*lot], bundle.piece.length);
                placing[i] = lot;
            }
        }
        return placing;
    }

    /// Keeps what is planned now, with what has no lot yet where it loses least, when that is as good as what was
    /// found; else moves as few as it can for what was found.
    void stayIfAsGood(const Placing& now, SearchResult& found, const std::vector<SearchLot>& lots) const {
        const Placing staying = oneByOne(now);
        const auto placed = [](const Placing& placing) {
            return std::ranges::count_if(placing, [](const auto& lot) { return lot.has_value(); });
        };
        if (placed(staying) >= placed(found.placing) &&
            costOf(staying, lots) <= costOf(found.placing, lots) + kWorthMovingMm) {
            found.placing = staying;
            return;
        }
        std::map<std::tuple<Length, std::optional<JobId>>, Indices> alike;
        for (std::size_t i = 0; i < m_bundles.size(); ++i) {
            alike[{m_bundles[i].piece.length, m_bundles[i].piece.pinned}].push_back(i);
        }
        for (const auto& [kind, bundles] : alike) {
            swapBack(bundles, now, found.placing);
        }
    }

    /// Bundles that are as good as each other share the lots that were found for them so that most stay.
    static void swapBack(const Indices& bundles, const Placing& now, Placing& placing) {
        for (const std::size_t one : bundles) {
            const auto other = std::ranges::find_if(bundles, [&](std::size_t i) {
                return placing[i] == now[one] && placing[i] != now[i];
            });
            if (placing[one] != now[one] && other != bundles.end()) {
                std::swap(placing[one], placing[*other]);
            }
        }
    }

    [[nodiscard]] double costOf(const Placing& placing, const std::vector<SearchLot>& lots) const {
        std::vector<Length> cut(m_lots.size(), Length::fromMillimetres(0));
        for (std::size_t i = 0; i < m_bundles.size(); ++i) {
            if (placing[i]) {
                cut[*placing[i]] += m_bundles[i].piece.length;
            }
        }
        double cost = 0;
        for (std::size_t lot = 0; lot < lots.size(); ++lot) {
            cost += lots[lot].cost(cut[lot]);
        }
        return cost;
    }

    [[nodiscard]] std::vector<CutSource> sources() const {
        std::vector<CutSource> sources;
        std::ranges::transform(m_lots, std::back_inserter(sources), &QueueLot::source);
        return sources;
    }

    static void cut(CutSource& source, Length length) {
        source.length -= length;
        source.sealed = false;
        source.pullMm = 0;
    }

    /// Each that has no place in `placing` yet in its turn where it loses least.
    [[nodiscard]] Placing oneByOne(Placing placing) const {
        std::vector<CutSource> left = sources();
        for (std::size_t i = 0; i < m_bundles.size(); ++i) {
            if (placing[i]) {
                cut(left[*placing[i]], m_bundles[i].piece.length);
            }
        }
        for (const bool pinned : {true, false}) {
            for (std::size_t i = 0; i < m_bundles.size(); ++i) {
                const SearchPiece& piece = m_bundles[i].piece;
                if (!placing[i] && piece.pinned.has_value() == pinned) {
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
        const auto best = nextCut(candidates, piece.length, m_value);
        if (!best) {
            return std::nullopt;
        }
        const std::size_t lot = lotOf[best->opens.value_or(best->lot)];
        cut(left[lot], piece.length);
        return lot;
    }

    const RemnantValue& m_value;
    std::vector<QueueLot> m_lots;
    Indices m_lotOf; ///< its place in the question
    std::vector<QueuePiece> m_pieces;
    Indices m_pieceOf;
    Placing m_asPlanned; ///< by pieces
    std::vector<Bundle> m_bundles;
};
} // namespace

QueuePlan planQueue(std::span<const QueueLot> lots, std::span<const QueuePiece> pieces, const RemnantValue& value,
                    const QueueRules& rules) {
    assert(rules.asPlanned.empty() || rules.asPlanned.size() == pieces.size());
    const auto deadline = std::chrono::steady_clock::now() + rules.limit;
    QueuePlan plan{.placing = Placing(pieces.size()), .lostMm = 0, .proven = true};
    std::set<Owner> owners;
    for (const QueuePiece& piece : pieces) {
        owners.insert(piece.owner);
    }
    for (const Owner& owner : owners) {
        OwnersQueue(lots, pieces, value, rules, owner).planInto(plan, deadline);
    }
    return plan;
}

} // namespace rw::stock
