// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/cutting_world.h"

#include <algorithm>
#include <cmath>

namespace rw::world {

namespace {
Length onTheTape(double metres) {
    constexpr double kSteps = 20; // of 5 cm
    return Length::fromMillimetres(std::llround(metres * kSteps) * 50);
}

Length mains(Dice& dice) { return onTheTape(dice.normalWithin(6.1, 0.35, 5.2, 7.0)); }
Length crosses(Dice& dice) { return onTheTape(dice.normalWithin(5.6, 0.35, 5.0, 6.6)); }
} // namespace

std::vector<Length> nextJob(Work work, Dice& dice) {
    if (work == Work::OnePieceOnly) {
        return {onTheTape(dice.normalWithin(10.2, 0.8, 9.0, 12.0))};
    }
    const double both = work == Work::Mixed ? 0.6 : 0.75;
    const double half = work == Work::Mixed ? 0.2 : 0.25;
    const double which = dice.uniform();
    if (which < both) {
        const Length first = mains(dice);
        return {first, crosses(dice)};
    }
    if (which < both + half) {
        return {dice.chance(0.5) ? mains(dice) : crosses(dice)};
    }
    return {onTheTape(dice.normalWithin(11.0, 0.6, 9.5, 12.0))};
}

TrueReel TrueReel::opened(Dice& dice) {
    constexpr std::int64_t kNominalMm = 200'000;
    return {Length::fromMillimetres(kNominalMm), dice.normal(kNominalMm, 0.005 * kNominalMm)};
}

bool TrueReel::cut(Length piece, Dice& dice) {
    constexpr double kCutSdMm = 20;
    const double trueMm = static_cast<double>(piece.millimetres()) + dice.normal(0, kCutSdMm);
    if (trueMm > m_trueMm) {
        return false;
    }
    m_trueMm -= trueMm;
    m_book -= piece;
    return true;
}

void TrueReel::measureWhenDue(Dice& dice) {
    constexpr Length kMeasureAt = Length::fromMillimetres(25'000);
    constexpr double kMeasureSdMm = 50;
    if (!m_measured && m_book <= kMeasureAt) {
        m_measured = true;
        m_book = Length::fromMillimetres(std::max(0LL, std::llround(m_trueMm + dice.normal(0, kMeasureSdMm))));
    }
}

} // namespace rw::world
