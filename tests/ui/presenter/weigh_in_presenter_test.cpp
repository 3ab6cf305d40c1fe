// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/weigh_in_presenter.h"

#include "tests/ui/support/at_work.h"

#include <cmath>

namespace rw::ui::test {
namespace {

Mass grams(double g) { return Mass::fromMilligrams(std::llround(g * 1000)); }

class AtTheScale : public AtWork {
protected:
    AtTheScale() {
        QObject::connect(&weighing, &WeighInPresenter::refused, [this](const Refusal& refusal) { why = refusal; });
        QObject::connect(&weighing, &WeighInPresenter::weighed, [this](const desk::WeighIn& in) { last = in; });
        // As the station does: whoever wrote, it is read again.
        QObject::connect(&shift, &Shift::ledgerChanged, [this] { weighing.refresh(); });
        weighing.start();
    }
    WeighInPresenter::OnScale k7(double gross) {
        return {.tag = QStringLiteral("K-7"), .gross = grams(gross), .empty = grams(150), .fresh = grams(385)};
    }

    WeighInPresenter weighing{runner, shift};
    std::optional<Refusal> why;
    std::optional<desk::WeighIn> last;
};

TEST_F(AtTheScale, TheFirstReelBeginsTheStockTake) {
    EXPECT_FALSE(weighing.isGoingOn());
    const auto toWeigh = weighing.sheet().toWeigh.size();
    weighing.weigh(k7(252));
    ASSERT_TRUE(last);
    EXPECT_TRUE(weighing.isGoingOn());
    EXPECT_EQ(weighing.sheet().lines.size(), 1U);
    EXPECT_EQ(weighing.sheet().toWeigh.size(), toWeigh - 1);
}

TEST_F(AtTheScale, AWeightPressedTwiceIsOneLine) {
    runner.held = true;
    weighing.weigh(k7(252));
    weighing.weigh(k7(252));
    runner.release();
    EXPECT_EQ(ledger.rows.weighings.size(), 1U);
}

TEST_F(AtTheScale, NobodyWeighsBeforeTheySayWhoTheyAre) {
    Shift nobody{clock};
    nobody.setShop(facts());
    bool asked = false;
    QObject::connect(&nobody, &Shift::staffWanted, [&] { asked = true; });
    WeighInPresenter without{runner, nobody};
    without.weigh(k7(252));
    EXPECT_TRUE(asked);
    EXPECT_TRUE(ledger.rows.weighings.empty());
}

TEST_F(AtTheScale, ARefusalBeginsNothing) {
    weighing.weigh(k7(100));
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ImpossibleValue);
    EXPECT_FALSE(weighing.isGoingOn());
    EXPECT_TRUE(ledger.rows.stockTakes.empty());
}

TEST_F(AtTheScale, WhatWasBookedIsTakenBackOnce) {
    weighing.weigh(k7(233));
    EXPECT_FALSE(weighing.canTakeBack());
    weighing.book(*last->weighing.id);
    ASSERT_TRUE(weighing.canTakeBack());
    EXPECT_TRUE(weighing.sheet().lines.front().weighing.booked);
    EXPECT_LT(lot("K-7").length, metres(49));
    weighing.takeBack();
    EXPECT_FALSE(weighing.canTakeBack());
    EXPECT_EQ(lot("K-7").length, metres(60));
    EXPECT_FALSE(weighing.sheet().lines.front().weighing.booked);
}

TEST_F(AtTheScale, OneThatWasEndedStaysInViewUntilTheNextBegins) {
    weighing.weigh(k7(252));
    weighing.end();
    EXPECT_FALSE(weighing.isGoingOn());
    weighing.refresh();
    ASSERT_EQ(weighing.sheet().lines.size(), 1U);
    EXPECT_TRUE(weighing.sheet().take->ended);
    weighing.weigh({.tag = QStringLiteral("K-4"), .gross = grams(489)});
    EXPECT_TRUE(weighing.isGoingOn());
    ASSERT_EQ(weighing.sheet().lines.size(), 1U);
    EXPECT_EQ(weighing.sheet().lines.front().lot.tag, "K-4");
    EXPECT_EQ(ledger.rows.stockTakes.size(), 2U);
}

} // namespace
} // namespace rw::ui::test
