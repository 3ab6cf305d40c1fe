// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/cut_search.h"

#include "core/stock/search_problem.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace rw::stock {

namespace {
constexpr double kNoBetter = 1e-6;
constexpr std::size_t kMostRemembered = 500'000; // states

/// How good a placing is: what it leaves out comes first.
struct Worth {
    int leftOut = 0;
    double cost = 0;
    [[nodiscard]] bool isBetterThan(const Worth& other) const {
        return leftOut != other.leftOut ? leftOut < other.leftOut : cost < other.cost - kNoBetter;
    }
};

Worth worthOf(const Placing& placing, const std::vector<SearchLot>& lots, const std::vector<SearchPiece>& pieces) {
    Worth worth;
    std::vector<Length> cut(lots.size(), Length::fromMillimetres(0));
    for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
        if (placing[piece]) {
            cut[*placing[piece]] += pieces[piece].length;
        } else {
            worth.leftOut += pieces[piece].weight;
        }
    }
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        assert(!cut[lot].isPositive() || cut[lot] <= lots[lot].room);
        worth.cost += lots[lot].cost(cut[lot]);
    }
    return worth;
}

/// The next number of SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number
/// generators", 2014): 64 bits stand for a state, and no two of the states that are remembered will share them.
std::uint64_t mixed(std::uint64_t bits) {
    bits += 0x9E3779B97F4A7C15U;
    bits = (bits ^ bits >> 30U) * 0xBF58476D1CE4E5B9U;
    bits = (bits ^ bits >> 27U) * 0x94D049BB133111EBU;
    return bits ^ bits >> 31U;
}

class Search {
public:
    /// `problem` is given back as it was, but no other search may have it meanwhile.
    Search(SearchProblem& problem, const Placing& start, const Worth& worth,
           std::chrono::steady_clock::time_point deadline)
        : m_kinds(problem.kinds)
        , m_problem(problem)
        , m_bins(problem.bins)
        , m_best(start)
        , m_bestWorth(worth)
        , m_deadline(deadline)
        , m_taken(m_bins.size(), std::vector<std::size_t>(m_kinds.size(), 0))
        , m_totals(m_bins.size())
        , m_restAtLeast(m_bins.size()) {}

    SearchResult run() {
        descend(0, 0);
        return {m_best, !m_stopped};
    }

private:
    void descend(std::size_t at, double costSoFar);
    void choose(std::size_t at, std::size_t kind, Units rest, double cost);
    void keepIfBetter(double cost);
    bool wasHereCheaper(std::size_t at, double costSoFar);
    bool outOfTime();

    [[nodiscard]] int weightLeft() const;
    [[nodiscard]] int leastLeftOut(std::size_t from) const;
    [[nodiscard]] double mostWeightIn(Units room) const;
    [[nodiscard]] Units leastTotal(std::size_t at, std::size_t from) const;
    [[nodiscard]] SumSet totalsLeft() const;
    [[nodiscard]] double leastCostAfter(std::size_t at, const SumSet& totals) const;
    [[nodiscard]] bool canBeBetter(std::size_t at, double cost) const;
    void findTotals(std::size_t at);

    std::vector<Kind>& m_kinds;
    const SearchProblem& m_problem;
    const std::vector<Bin>& m_bins;
    Placing m_best;
    Worth m_bestWorth;
    std::chrono::steady_clock::time_point m_deadline;

    std::vector<std::vector<std::size_t>> m_taken; ///< bin, kind: how many on the way down
    std::vector<std::vector<SumSet>> m_totals;     ///< bin, kind: what this and the later kinds add up to
    std::vector<Worth> m_restAtLeast;              ///< bin: what the later bins cost and leave out at least, now
    std::unordered_map<std::uint64_t, double> m_seen;
    std::uint64_t m_visits = 0;
    bool m_stopped = false;
};

/// Of the pieces that no lot takes any more.
int Search::weightLeft() const {
    return std::accumulate(m_kinds.begin(), m_kinds.end(), 0, [this](int sum, const Kind& kind) {
        return m_problem.rest && m_problem.rest->takes(kind) ? sum : sum + kind.weight * static_cast<int>(kind.left);
    });
}

/// What the kinds from each on can add up to on this bin, with what is left of them.
void Search::findTotals(std::size_t at) {
    const Bin& bin = m_bins[at];
    std::vector<SumSet>& totals = m_totals[at];
    totals.assign(m_kinds.size() + 1, SumSet(bin.room));
    for (std::size_t kind = m_kinds.size(); kind-- > 0;) {
        totals[kind] = totals[kind + 1];
        for (std::size_t i = 0; i < m_kinds[kind].left && bin.takes(m_kinds[kind]); ++i) {
            totals[kind].add(m_kinds[kind].units);
        }
    }
}

/// The most weight that goes into a room when pieces may be split.
double Search::mostWeightIn(Units room) const {
    double weight = 0;
    for (const std::size_t i : m_problem.byWorth) {
        const Kind& kind = m_kinds[i];
        const Units wanted =
            m_problem.rest && m_problem.rest->takes(kind) ? 0 : kind.units * static_cast<Units>(kind.left);
        const Units used = std::min(room, wanted);
        weight += static_cast<double>(used) * kind.weight / static_cast<double>(kind.units);
        room -= used;
    }
    return weight;
}

/// A bound from below on the weight that stays out.
int Search::leastLeftOut(std::size_t from) const {
    const int weight = weightLeft();
    Units together = 0;
    double each = 0;
    for (std::size_t at = from; at < m_bins.size(); ++at) {
        together += m_bins[at].room;
        each += mostWeightIn(m_bins[at].room);
    }
    return weight - static_cast<int>(std::floor(std::min(each, mostWeightIn(together)) + kNoBetter));
}

/// What must be cut off a bin when nothing is left out and the others from `from` on take all they can.
Units Search::leastTotal(std::size_t at, std::size_t from) const {
    if (m_bestWorth.leftOut > 0 || m_problem.rest) {
        return 0;
    }
    Units elsewhere = 0;
    for (std::size_t other = from; other < m_bins.size(); ++other) {
        elsewhere += other == at ? 0 : m_bins[other].room;
    }
    return std::max<Units>(0, m_problem.unitsLeft() - elsewhere);
}

/// What all pieces that are left can add up to.
SumSet Search::totalsLeft() const {
    SumSet totals(m_bins.back().room); // the most there is
    for (const Kind& kind : m_kinds) {
        for (std::size_t i = 0; i < kind.left; ++i) {
            totals.add(kind.units);
        }
    }
    return totals;
}

/// A bound from below on what the bins after `at` cost, when each may have any of the pieces that are left.
double Search::leastCostAfter(std::size_t at, const SumSet& totals) const {
    double sum = 0;
    for (std::size_t later = at + 1; later < m_bins.size(); ++later) {
        const Bin& bin = m_bins[later];
        const Units least = leastTotal(later, at);
        const auto cheapest =
            std::ranges::find_if(bin.cheapestFirst, [&](Units total) { return total >= least && totals.has(total); });
        if (cheapest == bin.cheapestFirst.end()) {
            return std::numeric_limits<double>::infinity();
        }
        sum += bin.costOf(*cheapest);
    }
    return sum;
}

void Search::descend(std::size_t at, double costSoFar) {
    if (outOfTime() || wasHereCheaper(at, costSoFar)) {
        return;
    }
    if (at == m_bins.size()) {
        keepIfBetter(costSoFar);
        return;
    }
    const SumSet totals = totalsLeft();
    const double each = leastCostAfter(at, totals);
    const Units left = m_problem.unitsLeft();
    m_restAtLeast[at].leftOut = leastLeftOut(at);
    const Bin& bin = m_bins[at];
    const Units least = leastTotal(at, at);
    bool totalsFound = false;
    for (const Units total : bin.cheapestFirst) {
        const double cost = costSoFar + bin.costOf(total);
        m_restAtLeast[at].cost = each;
        if (!canBeBetter(at, cost)) {
            return; // nor can what is dearer
        }
        if (total < least || !totals.has(total)) {
            continue; // a total that is left is at most `left`
        }
        m_restAtLeast[at].cost = std::max(each, m_problem.leastCostWithin(left - total, at + 1));
        if (!canBeBetter(at, cost)) {
            continue;
        }
        if (!std::exchange(totalsFound, true)) {
            findTotals(at);
        }
        if (m_totals[at].front().has(total)) {
            choose(at, 0, total, cost);
        }
    }
}

/// Whether what the later bins cost and leave out at least still lets the whole be better than the best.
bool Search::canBeBetter(std::size_t at, double cost) const {
    return Worth{m_restAtLeast[at].leftOut, cost + m_restAtLeast[at].cost}.isBetterThan(m_bestWorth);
}

/// Tries every choice of the kinds from `kind` on that adds up to `rest`.
void Search::choose(std::size_t at, std::size_t kind, Units rest, double cost) {
    if (rest == 0) {
        descend(at + 1, cost);
        return;
    }
    Kind& it = m_kinds[kind];
    const std::size_t most = m_bins[at].takes(it) ? std::min(it.left, static_cast<std::size_t>(rest / it.units)) : 0;
    for (std::size_t take = most + 1; take-- > 0 && !m_stopped;) {
        const Units then = rest - it.units * static_cast<Units>(take);
        if (!m_totals[at][kind + 1].has(then) || !canBeBetter(at, cost)) {
            continue;
        }
        it.left -= take;
        m_taken[at][kind] = take;
        choose(at, kind + 1, then, cost);
        m_taken[at][kind] = 0;
        it.left += take;
    }
}

void Search::keepIfBetter(double cost) {
    const Worth worth{weightLeft(), cost};
    if (!worth.isBetterThan(m_bestWorth)) {
        return;
    }
    m_bestWorth = worth;
    m_best.assign(m_best.size(), std::nullopt);
    for (std::size_t kind = 0; kind < m_kinds.size(); ++kind) {
        auto piece = m_kinds[kind].pieces.begin();
        for (std::size_t at = 0; at < m_bins.size(); ++at) {
            for (std::size_t i = 0; i < m_taken[at][kind]; ++i) {
                m_best[*piece++] = m_bins[at].lot;
            }
        }
        while (m_problem.rest && m_problem.rest->takes(m_kinds[kind]) && piece != m_kinds[kind].pieces.end()) {
            m_best[*piece++] = m_problem.rest->lot;
        }
    }
}

/// The same pieces for the same bins, reached at no lower cost, lead nowhere new.
bool Search::wasHereCheaper(std::size_t at, double costSoFar) {
    std::uint64_t key = mixed(at);
    for (const Kind& kind : m_kinds) {
        key = mixed(key + kind.left);
    }
    const auto [seen, isNew] =
        m_seen.size() < kMostRemembered ? m_seen.try_emplace(key, costSoFar) : std::pair(m_seen.find(key), false);
    if (isNew || seen == m_seen.end()) {
        return false;
    }
    if (seen->second <= costSoFar) {
        return true;
    }
    seen->second = costSoFar;
    return false;
}

bool Search::outOfTime() {
    constexpr std::uint64_t kLookEvery = 16;
    if (m_visits++ % kLookEvery == 0 && std::chrono::steady_clock::now() >= m_deadline) {
        m_stopped = true;
    }
    return m_stopped;
}
} // namespace

SearchResult searchCuts(const std::vector<SearchLot>& lots, const std::vector<SearchPiece>& pieces,
                        const Placing& start, std::chrono::steady_clock::time_point deadline) {
    assert(start.size() == pieces.size());
    auto problem = SearchProblem::of(lots, pieces);
    return problem ? Search(*problem, start, worthOf(start, lots, pieces), deadline).run() : SearchResult{start, false};
}

} // namespace rw::stock
