// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"
#include "tests/bench/stock_world/dice.h"

#include <vector>

// What really happens to string, whatever a planner believes. No planner sees more than the book.
namespace rw::world {

/// What a shop strings.
enum class Work { Mixed, TwoPiecesOnly, OnePieceOnly };

/// The pieces of the next job, on a tape with steps of 5 cm. In metres: mains N(6.1, 0.35) within 5.2 to 7.0, crosses
/// N(5.6, 0.35) within 5.0 to 6.6, one piece N(11.0, 0.6) within 9.5 to 12.0. Mixed: both 0.6, half a bed 0.2, one
/// piece 0.2. Two pieces only: both 0.75, half 0.25. One piece only: N(10.2, 0.8) within 9.0 to 12.0.
[[nodiscard]] std::vector<Length> nextJob(Work work, Dice& dice);

/// A reel with what the book says and what there is.
class TrueReel {
public:
    /// 200 m by the label, and truly so within 0.5 %.
    [[nodiscard]] static TrueReel opened(Dice& dice);

    [[nodiscard]] Length book() const { return m_book; }
    [[nodiscard]] double trueMm() const { return m_trueMm; }

    /// Cuts a piece off, within 2 cm. False when there is not so much: then nothing of use was cut.
    [[nodiscard]] bool cut(Length piece, Dice& dice);
    /// Once, when the book says that 25 m or less are left, somebody measures it, within 5 cm.
    void measureWhenDue(Dice& dice);

private:
    TrueReel(Length book, double trueMm)
        : m_book(book)
        , m_trueMm(trueMm) {}
    Length m_book;
    double m_trueMm;
    bool m_measured = false;
};

} // namespace rw::world
