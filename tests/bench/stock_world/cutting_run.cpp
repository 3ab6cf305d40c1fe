// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/cutting_run.h"

#include <numeric>

namespace rw::world {

namespace {
/// A planner leaves so much on a lot that the book says is nearly empty.
Length gapOf(const TrueReel& reel) {
    constexpr Length kBelow = Length::fromMillimetres(25'000);
    return Length::fromMillimetres(reel.book() < kBelow ? 150 : 0);
}

stock::CutSource asSeen(const TrueReel& reel) { return {.length = reel.book(), .gap = gapOf(reel)}; }

class Run {
public:
    Run(const CuttingShop& shop, Cutter& cutter)
        : m_shop(shop)
        , m_cutter(cutter)
        , m_dice(shop.seed) {}

    CuttingResult result() {
        for (int i = 0; i < m_shop.jobs; ++i) {
            std::vector<Length> pieces = nextJob(m_shop.work, m_dice);
            if (m_shop.bothOffOneReel) {
                pieces = {std::accumulate(pieces.begin(), pieces.end(), Length::fromMillimetres(0))};
            }
            for (const Length piece : pieces) {
                while (!tryToCut(piece)) {
                }
                m_cutter.saw(piece);
            }
            m_result.openReels += static_cast<double>(m_reels.size()) / m_shop.jobs;
        }
        return m_result;
    }

private:
    bool tryToCut(Length piece) {
        std::vector<stock::CutSource> seen;
        for (const TrueReel& reel : m_reels) {
            seen.push_back(asSeen(reel));
        }
        const auto chosen = m_cutter.choose(seen, piece);
        if (!chosen && m_cutter.throwsTheRestAway()) {
            while (!m_reels.empty()) {
                throwAway(0);
            }
        }
        if (!chosen) {
            m_reels.push_back(TrueReel::opened(m_dice));
        }
        const std::size_t lot = chosen.value_or(m_reels.size() - 1);
        ++m_result.pieces;
        if (!m_reels[lot].cut(piece, m_dice)) {
            ++m_result.pastWhatIsThere;
            throwAway(lot);
            return false;
        }
        m_result.cutMm += static_cast<double>(piece.millimetres());
        m_reels[lot].measureWhenDue(m_dice);
        if (asSeen(m_reels[lot]).usable() < m_shop.shortestUseful) {
            throwAway(lot);
        }
        return true;
    }

    void throwAway(std::size_t lot) {
        m_result.scrapMm += m_reels[lot].trueMm();
        m_reels.erase(m_reels.begin() + static_cast<std::ptrdiff_t>(lot));
    }

    const CuttingShop& m_shop;
    Cutter& m_cutter;
    Dice m_dice;
    std::vector<TrueReel> m_reels; ///< the oldest first
    CuttingResult m_result;
};
} // namespace

CuttingResult runCutting(const CuttingShop& shop, Cutter& cutter) { return Run(shop, cutter).result(); }

} // namespace rw::world
