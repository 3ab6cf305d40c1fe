// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/slow_ledger.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/cut_strip.h"
#include "ui/bench/lost_strip.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/widgets/length_edit.h"

#include <QAbstractItemView>

#include <gmock/gmock.h>

#include <algorithm>

namespace rw::ui::test {
namespace {

using Step = BenchPresenter::Step;

/// At the bench, in front of 2122, which lies on Bench A and is to be cut off L-3.
class BenchWindow : public SlowLedger {
protected:
    BenchWindow() {
        openWindow();
        somebodyWorks();
        press(Qt::Key_2, Qt::ControlModifier);
        EXPECT_EQ(presenter().card()->job.number, 2122);
    }
    BenchStation& bench() { return *window->bench(); }
    BenchPresenter& presenter() { return bench().presenter(); }
    /// The mouse chooses the row of a job in which something lies on no machine yet.
    void clickAnotherRow() {
        const auto& queue = presenter().queue();
        const auto row =
            std::ranges::find_if(queue, [&](const auto& line) { return line.id != presenter().selected(); });
        ASSERT_NE(row, queue.end());
        bench().queue()->setCurrentIndex(bench().queue()->model()->index(static_cast<int>(row - queue.begin()), 0));
    }
    /// A job in two pieces is chosen and lies on the machine.
    void takeOneInTwoPieces() {
        for (const auto& line : presenter().queue()) {
            if (line.method == Method::TwoPiece && line.state == JobState::Logged) {
                presenter().select(line.id);
                bench().queue()->setFocus();
                press(Qt::Key_T);
                ASSERT_EQ(presenter().card()->pieces.size(), 2U);
                return;
            }
        }
        FAIL() << "nobody wants two pieces today";
    }
};

TEST_F(BenchWindow, AStripClosesWhenAnotherRacketIsChosenAndItsEnterCutsNothing) {
    press(Qt::Key_C);
    ASSERT_TRUE(bench().cutStrip()->isVisible());
    runner.held = true;
    clickAnotherRow();
    EXPECT_FALSE(bench().cutStrip()->isVisible());
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    runner.release();
    EXPECT_EQ(runner.writes, 0);
    EXPECT_EQ(lot("L-3").length, metres(48.7));
}

TEST_F(BenchWindow, ALostLengthIsAskedOfTheRacketThatIsShown) {
    press(Qt::Key_C);
    press(Qt::Key_Return);
    press(Qt::Key_L);
    ASSERT_TRUE(bench().lostStrip()->isVisible());
    const int before = runner.writes;
    runner.held = true;
    clickAnotherRow();
    EXPECT_FALSE(bench().lostStrip()->isVisible());
    press(Qt::Key_1);
    runner.release();
    EXPECT_EQ(runner.writes, before);
}

TEST_F(BenchWindow, AThirdEnterDoesNotBeginTheOtherPiece) {
    takeOneInTwoPieces();
    press(Qt::Key_Return);
    ASSERT_TRUE(bench().cutStrip()->isVisible());
    const int before = runner.writes;
    runner.held = true;
    press(Qt::Key_Return); // the mains
    press(Qt::Key_Return); // nobody knows yet
    runner.releaseOne();   // they are cut; the card still shows them uncut
    EXPECT_FALSE(bench().cutStrip()->isVisible());
    press(Qt::Key_Return);
    EXPECT_FALSE(bench().cutStrip()->isVisible());
    runner.release();
    EXPECT_FALSE(bench().cutStrip()->isVisible());
    EXPECT_EQ(runner.writes, before + 1);
    press(Qt::Key_Return);
    ASSERT_TRUE(bench().cutStrip()->isVisible());
    EXPECT_EQ(bench().cutStrip()->piece().role, PieceRole::Crosses);
}

TEST_F(BenchWindow, WhenAnotherStationCutsThePieceTheStripClosesAndSaysSo) {
    press(Qt::Key_C);
    const auto& inHand = bench().cutStrip()->piece();
    const desk::ConfirmCut elsewhere{inHand.job,   inHand.role,  inHand.attempt,   std::nullopt,
                                     metres(10.8), std::nullopt, shift.by("bench")};
    ASSERT_TRUE(desk::inTransaction(*ledger, desk::Access::Write, [&](desk::Transaction& t) {
                    return desk::confirmCut(t, elsewhere);
                }).has_value());
    runner.somebodyElseWrote();
    EXPECT_FALSE(bench().cutStrip()->isVisible());
    EXPECT_THAT(message(), testing::HasSubstr("changed meanwhile"));
}

TEST_F(BenchWindow, WhatIsTypedInAStripStaysWhenSomebodyElseWrites) {
    press(Qt::Key_C);
    type("10.");
    runner.somebodyElseWrote();
    EXPECT_TRUE(bench().cutStrip()->lengthEdit()->hasFocus());
    EXPECT_EQ(bench().cutStrip()->lengthEdit()->text(), QStringLiteral("10."));
}

TEST_F(BenchWindow, TheEnterThatPicksALotDoesNotConfirmTheCut) {
    press(Qt::Key_C);
    auto* lots = bench().cutStrip()->lots();
    lots->setFocus();
    lots->showPopup();
    QTest::keyClick(lots->view(), Qt::Key_Return);
    EXPECT_EQ(runner.writes, 0);
    press(Qt::Key_Return);
    EXPECT_EQ(runner.writes, 1);
}

TEST_F(BenchWindow, ALetterThatMeansNothingNowDoesNotJumpToAnotherRacket) {
    const JobId chosen = *presenter().selected();
    for (const char letter : std::string_view("0123456789abdeghijknoqrsuvwxyz")) {
        type(std::string(1, letter).c_str());
    }
    EXPECT_EQ(presenter().selected(), chosen);
}

TEST_F(BenchWindow, ACommandOfTheBenchChosenFromElsewhereOnlyGoesThere) {
    press(Qt::Key_1, Qt::ControlModifier);
    const auto keyOf = [](const Station& station, Qt::Key key) {
        return *std::ranges::find_if(station.keys(), [&](const QAction* a) { return a->shortcut() == key; });
    };
    keyOf(bench(), Qt::Key_P)->trigger();
    EXPECT_TRUE(bench().isVisible());
    EXPECT_EQ(runner.writes, 0);
    keyOf(bench(), Qt::Key_P)->trigger();
    EXPECT_EQ(runner.writes, 1);
}

TEST_F(BenchWindow, TheFootNamesOnlyKeysThatMeanSomethingNow) {
    const auto* foot = window->keys();
    EXPECT_THAT(foot->text().toStdString(), testing::HasSubstr("C cut"));
    EXPECT_THAT(foot->text().toStdString(), testing::Not(testing::HasSubstr("Esc")));
    press(Qt::Key_C);
    EXPECT_THAT(foot->text().toStdString(), testing::Not(testing::HasSubstr("C cut")));
    EXPECT_THAT(foot->text().toStdString(), testing::HasSubstr("Esc back"));
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_THAT(foot->text().toStdString(), testing::HasSubstr("F5"));
    press(Qt::Key_F8);
    EXPECT_THAT(foot->text().toStdString(), testing::Not(testing::HasSubstr("F5")));
}

} // namespace
} // namespace rw::ui::test
