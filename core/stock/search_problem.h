// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/cut_search.h"
#include "core/stock/sum_set.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace rw::stock {

/// Every piece is a whole number of units, so that totals are small numbers.
using Units = std::int64_t;

/// Pieces that are as good as each other.
struct Kind {
    Units units;
    int weight;
    std::optional<JobId> pinned;
    std::vector<std::size_t> pieces;
    std::size_t left; ///< how many of them have no lot yet
};

/// So much cut off a bin, and what that costs.
struct Cut {
    Units total;
    double cost;
};

struct Bin {
    std::size_t lot;
    Units room;
    std::optional<JobId> pinnedTo;
    std::vector<double> cost;         ///< by units cut off
    std::vector<Units> cheapestFirst; ///< the totals that can be cut off it at all
    std::vector<Cut> worthwhile;      ///< those that gain more than every smaller one, nothing among them

    [[nodiscard]] bool takes(const Kind& kind) const { return !kind.pinned || kind.pinned == pinnedTo; }
    [[nodiscard]] double costOf(Units total) const { return cost[static_cast<std::size_t>(total)]; }
};

/// A question of where to cut, made ready for the search.
struct SearchProblem {
    std::vector<Kind> kinds;          ///< longest first
    std::vector<std::size_t> byWorth; ///< kinds, most weight for their length first
    std::vector<Bin> bins;            ///< least room first
    std::optional<Bin> rest;          ///< has room for everything, for nothing: it takes what no bin takes

    /// Nothing for a queue that is too large to be searched: some hundred lots and pieces, all of them different.
    [[nodiscard]] static std::optional<SearchProblem> of(const std::vector<SearchLot>& lots,
                                                         const std::vector<SearchPiece>& pieces);

    /// What all pieces that are left add up to.
    [[nodiscard]] Units unitsLeft() const;
    /// A bound from below on what the bins from `from` on cost within a length of pieces, when each may cut off it what
    /// could be cut at the start.
    [[nodiscard]] double leastCostWithin(Units left, std::size_t from) const {
        return m_within[from][static_cast<std::size_t>(left / m_step)];
    }

private:
    void makeKinds(const std::vector<SearchPiece>& pieces);
    bool makeBins(const std::vector<SearchLot>& lots);
    void setRestAside();
    void shareOut();

    Units m_unitMm = 1;
    Units m_step = 1;                          ///< of m_within
    std::vector<std::vector<double>> m_within; ///< bin, steps
};

} // namespace rw::stock
