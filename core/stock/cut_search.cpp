// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/cut_search.h"

#include "core/stock/sum_set.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>
#include <tuple>
#include <unordered_map>

namespace rw::stock {

namespace {
using Units = std::int64_t; // every piece is a whole number of units, so totals are small numbers

constexpr double kNoBetter = 1e-6;
constexpr std::size_t kMostTotals = 2'000'000;   // more would not fit into memory; such a queue is not searched
constexpr std::size_t kMostRemembered = 500'000; // states

/// How good a placing is: what it leaves out comes first.
struct Worth {
    int leftOut = 0;
    double cost = 0;
    [[nodiscard]] bool isBetterThan(const Worth& other) const {
        return leftOut != other.leftOut ? leftOut < other.leftOut : cost < other.cost - kNoBetter;
    }
};

/// Pieces that are as good as each other.
struct Kind {
    Units units;
    int weight;
    std::optional<JobId> pinned;
    std::vector<std::size_t> pieces;
    std::size_t left; ///< how many of them have no lot yet on the way down
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
    std::vector<Units> gains;         ///< those that cost less than nothing, the smallest first

    [[nodiscard]] bool takes(const Kind& kind) const { return !kind.pinned || kind.pinned == pinnedTo; }
    [[nodiscard]] double costOf(Units total) const { return cost[static_cast<std::size_t>(total)]; }
};

/// The next number of SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number
/// generators", 2014): 64 bits stand for a state, and no two of the states that are remembered will share them.
std::uint64_t mixed(std::uint64_t bits) {
    bits += 0x9E3779B97F4A7C15U;
    bits = (bits ^ bits >> 30U) * 0xBF58476D1CE4E5B9U;
    bits = (bits ^ bits >> 27U) * 0x94D049BB133111EBU;
    return bits ^ bits >> 31U;
}

/// What the bins after one cost at least when so much is cut off that one. The pieces that are left have to do for all
/// bins, so a unit of them has a price (a Lagrange multiplier), and any price gives a bound.
struct Bound {
    static constexpr double kUnknown = -std::numeric_limits<double>::infinity();

    double freely = 0;             ///< as if every bin had all pieces to itself
    double price = 0;              ///< of a unit
    double atThatPrice = kUnknown; ///< of the later bins, with what their units cost
    Units left = 0;                ///< units of pieces, before anything is cut off

    [[nodiscard]] double costAfter(Units total) const {
        return std::max(freely, atThatPrice - price * static_cast<double>(left - total));
    }
};

/// The cheapest of some cuts when a unit has a price; of equals the smallest.
Cut cheapestAt(double price, const std::vector<Cut>& cuts) {
    const auto dearness = [price](const Cut& cut) { return cut.cost + price * static_cast<double>(cut.total); };
    return *std::ranges::min_element(cuts, {}, dearness);
}

class Search {
public:
    Search(const std::vector<SearchLot>& lots, const std::vector<SearchPiece>& pieces, const Placing& start,
           std::chrono::steady_clock::time_point deadline)
        : m_lots(lots)
        , m_pieces(pieces)
        , m_best(start)
        , m_bestWorth(worthOf(start))
        , m_deadline(deadline) {}

    SearchResult run() {
        makeKinds();
        if (!makeBins()) {
            return {m_best, false};
        }
        descend(0, 0);
        return {m_best, !m_stopped};
    }

private:
    Worth worthOf(const Placing& placing) const;
    void makeKinds();
    bool makeBins();

    void descend(std::size_t at, double costSoFar);
    void choose(std::size_t at, std::size_t kind, Units rest, double cost);
    void keepIfBetter(double cost);
    bool wasHereCheaper(std::size_t at, double costSoFar);
    bool outOfTime();

    [[nodiscard]] Units unitsLeft() const;
    [[nodiscard]] int weightLeft() const;
    [[nodiscard]] int leastLeftOut(std::size_t from) const;
    [[nodiscard]] double mostWeightIn(Units room) const;
    [[nodiscard]] Units leastTotal(std::size_t at, std::size_t from) const;
    [[nodiscard]] SumSet totalsLeft() const;
    [[nodiscard]] Bound boundAfter(std::size_t at) const;
    [[nodiscard]] std::vector<Cut> worthwhileCuts(const Bin& bin, const SumSet& totals) const;
    void priceUnits(std::size_t at, const SumSet& totals, Bound& bound) const;
    [[nodiscard]] bool canBeBetter(std::size_t at, double cost) const;
    void findTotals(std::size_t at);

    const std::vector<SearchLot>& m_lots;
    const std::vector<SearchPiece>& m_pieces;
    Placing m_best;
    Worth m_bestWorth;
    std::chrono::steady_clock::time_point m_deadline;

    std::vector<Kind> m_kinds;                     ///< longest first
    std::vector<std::size_t> m_byWorth;            ///< kinds, most weight for their length first
    std::vector<Bin> m_bins;                       ///< least room first
    std::vector<std::vector<std::size_t>> m_taken; ///< bin, kind: how many on the way down
    std::vector<std::vector<SumSet>> m_totals;     ///< bin, kind: what this and the later kinds add up to
    std::vector<Worth> m_restAtLeast;              ///< bin: what the later bins cost and leave out at least, now
    std::unordered_map<std::uint64_t, double> m_seen;
    std::uint64_t m_visits = 0;
    bool m_stopped = false;
};

Worth Search::worthOf(const Placing& placing) const {
    Worth worth;
    std::vector<Length> cut(m_lots.size(), Length::fromMillimetres(0));
    for (std::size_t piece = 0; piece < m_pieces.size(); ++piece) {
        if (placing[piece]) {
            cut[*placing[piece]] += m_pieces[piece].length;
        } else {
            worth.leftOut += m_pieces[piece].weight;
        }
    }
    for (std::size_t lot = 0; lot < m_lots.size(); ++lot) {
        assert(!cut[lot].isPositive() || cut[lot] <= m_lots[lot].room);
        worth.cost += m_lots[lot].cost(cut[lot]);
    }
    return worth;
}

void Search::makeKinds() {
    std::vector<std::size_t> sorted(m_pieces.size());
    std::iota(sorted.begin(), sorted.end(), 0U);
    const auto rank = [&](std::size_t i) {
        return std::tuple(-m_pieces[i].length.millimetres(), m_pieces[i].weight, m_pieces[i].pinned);
    };
    std::ranges::stable_sort(sorted, {}, rank);
    for (const std::size_t piece : sorted) {
        const SearchPiece& it = m_pieces[piece];
        if (m_kinds.empty() || rank(m_kinds.back().pieces.front()) != rank(piece)) {
            m_kinds.push_back({it.length.millimetres(), it.weight, it.pinned, {}, 0});
        }
        m_kinds.back().pieces.push_back(piece);
        ++m_kinds.back().left;
    }
}

/// False when the totals are too many.
bool Search::makeBins() {
    Units unit = 0;
    for (const Kind& kind : m_kinds) {
        unit = std::gcd(unit, kind.units);
    }
    unit = std::max<Units>(unit, 1);
    for (Kind& kind : m_kinds) {
        kind.units /= unit;
    }
    const Units all = unitsLeft();
    std::size_t totals = 0;
    for (std::size_t lot = 0; lot < m_lots.size(); ++lot) {
        const Units room = std::min(all, std::max<Units>(m_lots[lot].room.millimetres(), 0) / unit);
        m_bins.push_back({lot, room, m_lots[lot].pinnedTo, {}, {}, {}});
        totals += static_cast<std::size_t>(room);
    }
    if (totals > kMostTotals) {
        return false;
    }
    std::ranges::stable_sort(m_bins, {}, &Bin::room);
    m_byWorth.resize(m_kinds.size());
    std::iota(m_byWorth.begin(), m_byWorth.end(), 0U);
    std::ranges::stable_sort(m_byWorth, std::greater{}, [&](std::size_t kind) {
        return m_kinds[kind].weight / static_cast<double>(m_kinds[kind].units);
    });
    m_taken.assign(m_bins.size(), std::vector<std::size_t>(m_kinds.size(), 0));
    m_totals.resize(m_bins.size());
    m_restAtLeast.resize(m_bins.size());
    for (std::size_t at = 0; at < m_bins.size(); ++at) {
        Bin& bin = m_bins[at];
        for (Units total = 0; total <= bin.room; ++total) {
            bin.cost.push_back(m_lots[bin.lot].cost(Length::fromMillimetres(total * unit)));
        }
        findTotals(at);
        for (Units total = 0; total <= bin.room; ++total) {
            if (m_totals[at].front().has(total)) {
                bin.cheapestFirst.push_back(total);
                if (bin.costOf(total) < 0) {
                    bin.gains.push_back(total);
                }
            }
        }
        std::ranges::stable_sort(bin.cheapestFirst, {}, [&](Units total) { return bin.costOf(total); });
    }
    return true;
}

Units Search::unitsLeft() const {
    return std::accumulate(m_kinds.begin(), m_kinds.end(), Units{0}, [](Units sum, const Kind& kind) {
        return sum + kind.units * static_cast<Units>(kind.left);
    });
}

int Search::weightLeft() const {
    return std::accumulate(m_kinds.begin(), m_kinds.end(), 0,
                           [](int sum, const Kind& kind) { return sum + kind.weight * static_cast<int>(kind.left); });
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
    for (const std::size_t i : m_byWorth) {
        const Kind& kind = m_kinds[i];
        const Units wanted = kind.units * static_cast<Units>(kind.left);
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
    if (m_bestWorth.leftOut > 0) {
        return 0;
    }
    Units elsewhere = 0;
    for (std::size_t other = from; other < m_bins.size(); ++other) {
        elsewhere += other == at ? 0 : m_bins[other].room;
    }
    return std::max<Units>(0, unitsLeft() - elsewhere);
}

/// What all pieces that are left can add up to.
SumSet Search::totalsLeft() const {
    SumSet totals(m_bins.back().room);
    for (const Kind& kind : m_kinds) {
        for (std::size_t i = 0; i < kind.left; ++i) {
            totals.add(kind.units);
        }
    }
    return totals;
}

/// The cuts that gain more than every smaller one.
std::vector<Cut> Search::worthwhileCuts(const Bin& bin, const SumSet& totals) const {
    std::vector<Cut> cuts{{0, 0}};
    for (const Units total : bin.gains) {
        if (totals.has(total) && bin.costOf(total) < cuts.back().cost) {
            cuts.push_back({total, bin.costOf(total)});
        }
    }
    return cuts;
}

Bound Search::boundAfter(std::size_t at) const {
    Bound bound{.left = unitsLeft()};
    const SumSet totals = totalsLeft();
    Units taken = 0;
    bool gainsOnly = true;
    for (std::size_t later = at; later < m_bins.size(); ++later) {
        const Bin& bin = m_bins[later];
        const Units least = leastTotal(later, at);
        const auto cheapest =
            std::ranges::find_if(bin.cheapestFirst, [&](Units total) { return total >= least && totals.has(total); });
        if (cheapest == bin.cheapestFirst.end()) {
            bound.freely = std::numeric_limits<double>::infinity();
            return bound;
        }
        bound.freely += later > at ? bin.costOf(*cheapest) : 0;
        taken += *cheapest;
        gainsOnly = gainsOnly && least == 0;
    }
    if (gainsOnly && taken > bound.left) {
        priceUnits(at, totals, bound);
    }
    return bound;
}

/// The bins from `at` on would take more than there is: raises the price until they do not.
void Search::priceUnits(std::size_t at, const SumSet& totals, Bound& bound) const {
    std::vector<std::vector<Cut>> cuts;
    double high = 0;
    for (std::size_t bin = at; bin < m_bins.size(); ++bin) {
        cuts.push_back(worthwhileCuts(m_bins[bin], totals));
        for (const Cut& cut : cuts.back()) {
            high = cut.total > 0 ? std::max(high, -cut.cost / static_cast<double>(cut.total)) : high;
        }
    }
    double low = 0;
    constexpr int kHalvings = 8;
    for (int i = 0; i < kHalvings; ++i) {
        const double price = (low + high) / 2;
        const Units taken = std::accumulate(cuts.begin(), cuts.end(), Units{0}, [&](Units sum, const auto& ofBin) {
            return sum + cheapestAt(price, ofBin).total;
        });
        (taken > bound.left ? low : high) = price;
    }
    bound.price = high;
    bound.atThatPrice = 0;
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        const Cut cheapest = cheapestAt(high, cuts[i]);
        bound.atThatPrice += cheapest.cost + high * static_cast<double>(cheapest.total);
    }
}

void Search::descend(std::size_t at, double costSoFar) {
    if (outOfTime() || wasHereCheaper(at, costSoFar)) {
        return;
    }
    if (at == m_bins.size()) {
        keepIfBetter(costSoFar);
        return;
    }
    const Bound bound = boundAfter(at);
    m_restAtLeast[at].leftOut = leastLeftOut(at);
    findTotals(at);
    const Bin& bin = m_bins[at];
    const Units least = leastTotal(at, at);
    for (const Units total : bin.cheapestFirst) {
        const double cost = costSoFar + bin.costOf(total);
        m_restAtLeast[at].cost = bound.freely;
        if (!canBeBetter(at, cost)) {
            return; // nor can what is dearer
        }
        m_restAtLeast[at].cost = bound.costAfter(total);
        if (total >= least && m_totals[at].front().has(total) && canBeBetter(at, cost)) {
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
    m_best.assign(m_pieces.size(), std::nullopt);
    for (std::size_t kind = 0; kind < m_kinds.size(); ++kind) {
        auto piece = m_kinds[kind].pieces.begin();
        for (std::size_t at = 0; at < m_bins.size(); ++at) {
            for (std::size_t i = 0; i < m_taken[at][kind]; ++i) {
                m_best[*piece++] = m_bins[at].lot;
            }
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
    return Search(lots, pieces, start, deadline).run();
}

} // namespace rw::stock
