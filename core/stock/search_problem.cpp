// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/search_problem.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <tuple>

namespace rw::stock {

namespace {
constexpr std::size_t kMostTotals = 2'000'000; // of all bins, or memory runs out
constexpr std::size_t kMostChoices = 20'000;   // bins times kinds: the search goes so deep

/// What all the kinds can add up to on a bin.
SumSet totalsOn(const Bin& bin, const std::vector<Kind>& kinds) {
    SumSet totals(bin.room);
    for (const Kind& kind : kinds) {
        for (std::size_t i = 0; i < kind.left && bin.takes(kind); ++i) {
            totals.add(kind.units);
        }
    }
    return totals;
}

void findCuts(Bin& bin, const std::vector<Kind>& kinds) {
    const SumSet totals = totalsOn(bin, kinds);
    for (Units total = 0; total <= bin.room; ++total) {
        if (!totals.has(total)) {
            continue;
        }
        bin.cheapestFirst.push_back(total);
        if (bin.worthwhile.empty() || bin.costOf(total) < bin.worthwhile.back().cost) {
            bin.worthwhile.push_back({total, bin.costOf(total)});
        }
    }
    std::ranges::stable_sort(bin.cheapestFirst, {}, [&](Units total) { return bin.costOf(total); });
}
} // namespace

std::optional<SearchProblem> SearchProblem::of(const std::vector<SearchLot>& lots,
                                               const std::vector<SearchPiece>& pieces) {
    SearchProblem problem;
    problem.makeKinds(pieces);
    if (!problem.makeBins(lots)) {
        return std::nullopt;
    }
    problem.setRestAside();
    problem.shareOut();
    return problem;
}

Units SearchProblem::unitsLeft() const {
    return std::accumulate(kinds.begin(), kinds.end(), Units{0}, [](Units sum, const Kind& kind) {
        return sum + kind.units * static_cast<Units>(kind.left);
    });
}

void SearchProblem::makeKinds(const std::vector<SearchPiece>& pieces) {
    std::vector<std::size_t> sorted(pieces.size());
    std::iota(sorted.begin(), sorted.end(), 0U);
    const auto rank = [&](std::size_t i) {
        return std::tuple(-pieces[i].length.millimetres(), pieces[i].weight, pieces[i].pinned);
    };
    std::ranges::stable_sort(sorted, {}, rank);
    for (const std::size_t piece : sorted) {
        const SearchPiece& it = pieces[piece];
        if (kinds.empty() || rank(kinds.back().pieces.front()) != rank(piece)) {
            kinds.push_back({it.length.millimetres(), it.weight, it.pinned, {}, 0});
        }
        kinds.back().pieces.push_back(piece);
        ++kinds.back().left;
    }
    Units unit = 0;
    for (const Kind& kind : kinds) {
        unit = std::gcd(unit, kind.units);
    }
    m_unitMm = std::max<Units>(unit, 1);
    for (Kind& kind : kinds) {
        kind.units /= m_unitMm;
    }
    byWorth.resize(kinds.size());
    std::iota(byWorth.begin(), byWorth.end(), 0U);
    std::ranges::stable_sort(byWorth, std::greater{}, [&](std::size_t kind) {
        return kinds[kind].weight / static_cast<double>(kinds[kind].units);
    });
}

/// False when there are too many of them or of their totals.
bool SearchProblem::makeBins(const std::vector<SearchLot>& lots) {
    const Units all = unitsLeft();
    std::size_t totals = 0;
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        const Units room = std::min(all, std::max<Units>(lots[lot].room.millimetres(), 0) / m_unitMm);
        bins.push_back({lot, room, lots[lot].pinnedTo, {}, {}, {}});
        totals += static_cast<std::size_t>(room);
    }
    if (totals > kMostTotals || bins.size() * kinds.size() > kMostChoices) {
        return false;
    }
    std::ranges::stable_sort(bins, {}, &Bin::room);
    for (Bin& bin : bins) {
        for (Units total = 0; total <= bin.room; ++total) {
            bin.cost.push_back(lots[bin.lot].cost(Length::fromMillimetres(total * m_unitMm)));
        }
        findCuts(bin, kinds);
    }
    return true;
}

void SearchProblem::setRestAside() {
    if (bins.empty() || bins.back().room < unitsLeft()) {
        return;
    }
    if (std::ranges::all_of(bins.back().cost, [](double each) { return each == 0; })) {
        rest = std::move(bins.back());
        bins.pop_back();
    }
}

/// A knapsack, in steps that keep it small. Totals are rounded down, so it stays a bound.
void SearchProblem::shareOut() {
    const Units all = unitsLeft();
    constexpr Units kSteps = 4'000;
    m_step = all / kSteps + 1;
    const auto most = static_cast<std::size_t>(all / m_step);
    m_within.assign(bins.size() + 1, std::vector<double>(most + 1, 0));
    for (std::size_t at = bins.size(); at-- > 0;) {
        for (const Cut& cut : bins[at].worthwhile) {
            const auto steps = static_cast<std::size_t>(cut.total / m_step);
            for (std::size_t within = steps; within <= most; ++within) {
                m_within[at][within] = std::min(m_within[at][within], cut.cost + m_within[at + 1][within - steps]);
            }
        }
    }
}

} // namespace rw::stock
