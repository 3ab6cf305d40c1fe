// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "tests/stories/windows/slow_ledger.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/card_view.h"
#include "ui/bench/cut_strip.h"
#include "ui/bench/finish_strip.h"
#include "ui/bench/lost_strip.h"
#include "ui/bench/undo_strip.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"

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
    Job job(JobId id) { return *ledger->begin(desk::Access::Read)->jobs().get(id); }
    std::string card() { return bench().card()->accessibleDescription().toStdString(); }
    template<class Work>
    void elsewhere(Work work) {
        ASSERT_TRUE(desk::inTransaction(*ledger, desk::Access::Write, work).has_value());
        runner.somebodyElseWrote();
    }
    static Tension lb(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }
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
                press(Qt::Key_T); // beside 2122, and meant
                ASSERT_EQ(presenter().card()->pieces.size(), 2U);
                return;
            }
        }
        FAIL() << "nobody wants two pieces today";
    }
};

TEST_F(BenchWindow, SpaceAndBackspaceMoveTheStepAndItOutlivesTheWindow) {
    const JobId id = *presenter().selected();
    EXPECT_THAT(card(), testing::HasSubstr("At the bench: look over"));
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    EXPECT_THAT(card(), testing::HasSubstr("At the bench: crosses"));
    press(Qt::Key_Backspace);
    EXPECT_THAT(card(), testing::HasSubstr("At the bench: mains"));
    press(Qt::Key_P);
    press(Qt::Key_Space);
    EXPECT_EQ(job(id).benchStep, BenchStep::Mains) << "it lies on no machine";
    window.reset();
    openWindow();
    somebodyWorks();
    press(Qt::Key_2, Qt::ControlModifier);
    presenter().select(id);
    press(Qt::Key_T);
    EXPECT_THAT(card(), testing::HasSubstr("At the bench: mains"));
}

TEST_F(BenchWindow, AChangeFromTheCounterIsNoddedToBeforeTheFinish) {
    const JobId id = *presenter().selected();
    press(Qt::Key_C);
    press(Qt::Key_Return);
    const By counter{*shift.shop().staff.front().id, "counter", kThursday};
    elsewhere([&](desk::Transaction& t) {
        return desk::changeAsked(t, {id, {lb("55"), lb("53")}, {lb("54"), lb("52")}, counter});
    });
    EXPECT_THAT(card(), testing::HasSubstr("54/52 lb instead of 55/53 lb; N nods to it"));
    EXPECT_THAT(bench().prompt()->text().toStdString(), testing::HasSubstr("N ▸ nod"));
    press(Qt::Key_F);
    EXPECT_FALSE(bench().finishStrip()->isVisible());
    EXPECT_THAT(message(), testing::HasSubstr("N nods to it, then finish"));
    press(Qt::Key_N);
    EXPECT_THAT(message(), testing::HasSubstr("Seen:"));
    EXPECT_THAT(card(), testing::Not(testing::HasSubstr("instead of")));
    press(Qt::Key_F);
    EXPECT_TRUE(bench().finishStrip()->isVisible());
}

TEST_F(BenchWindow, AChangeThatComesWhileTheFinishIsTypedIsNotStrungOver) {
    const JobId id = *presenter().selected();
    press(Qt::Key_C);
    press(Qt::Key_Return);
    press(Qt::Key_F);
    ASSERT_TRUE(bench().finishStrip()->isVisible());
    const By counter{*shift.shop().staff.front().id, "counter", kThursday};
    elsewhere([&](desk::Transaction& t) {
        return desk::changeAsked(t, {id, {lb("55"), lb("53")}, {lb("54"), lb("52")}, counter});
    });
    press(Qt::Key_Return);
    EXPECT_EQ(job(id).state, JobState::OnTheMachine);
    press(Qt::Key_Escape);
    press(Qt::Key_N);
    press(Qt::Key_F);
    press(Qt::Key_Return);
    EXPECT_EQ(job(id).state, JobState::Strung);
}

TEST_F(BenchWindow, CtrlZSaysWhatItTakesBackAndASecondKeyDoesIt) {
    const JobId id = *presenter().selected();
    press(Qt::Key_C);
    press(Qt::Key_Return);
    press(Qt::Key_F);
    press(Qt::Key_Return);
    ASSERT_EQ(job(id).state, JobState::Strung);
    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(bench().undoStrip()->isVisible());
    EXPECT_THAT(bench().undoStrip()->question()->text().toStdString(),
                testing::HasSubstr("Take back that job 2122 is strung, 55/53 lb?"));
    press(Qt::Key_Escape);
    EXPECT_EQ(job(id).state, JobState::Strung);
    press(Qt::Key_Z, Qt::ControlModifier);
    press(Qt::Key_Return);
    EXPECT_EQ(job(id).state, JobState::OnTheMachine);
    EXPECT_THAT(message(), testing::HasSubstr("Corrected: job 2122 is not strung"));
    EXPECT_EQ(presenter().selected(), id);
    EXPECT_EQ(lot("L-3").length, metres(37.9));

    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_THAT(bench().undoStrip()->question()->text().toStdString(), testing::HasSubstr("10.8 m off L-3"));
    press(Qt::Key_Return);
    EXPECT_THAT(message(), testing::HasSubstr("10.8 m are on L-3 again"));
    EXPECT_EQ(lot("L-3").length, metres(48.7));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(bench().undoStrip()->isVisible());
    EXPECT_THAT(message(), testing::HasSubstr("Nothing can be taken back"));
}

TEST_F(BenchWindow, ALengthFarFromThePlanIsTakenWithASecondEnter) {
    press(Qt::Key_C);
    type("16.8");
    EXPECT_THAT(bench().cutStrip()->note()->text().toStdString(), testing::HasSubstr("leaves 31.9 m"));
    press(Qt::Key_Return);
    EXPECT_EQ(runner.writes, 0);
    EXPECT_THAT(bench().cutStrip()->note()->text().toStdString(),
                testing::HasSubstr("16.8 m is 6 m more than was planned. Enter again takes it."));
    press(Qt::Key_Return);
    EXPECT_EQ(lot("L-3").length, metres(31.9));
}

TEST_F(BenchWindow, TensionsFarFromWhatIsAskedAreTakenWithASecondEnter) {
    const JobId id = *presenter().selected();
    press(Qt::Key_C);
    press(Qt::Key_Return);
    press(Qt::Key_F);
    type("25");
    press(Qt::Key_Return);
    EXPECT_EQ(job(id).state, JobState::OnTheMachine);
    press(Qt::Key_Return);
    EXPECT_EQ(job(id).state, JobState::Strung);
    EXPECT_EQ(job(id).strung->tensions.mains, lb("25"));
}

TEST_F(BenchWindow, WhatIsNotAgreedStandsOnTheCardAndBlocksNothing) {
    const JobId id = *presenter().selected();
    const By counter{*shift.shop().staff.front().id, "counter", kThursday};
    elsewhere([&](desk::Transaction& t) {
        return desk::changeAsked(t, {id, {lb("55"), lb("53")}, {lb("64"), lb("62")}, counter});
    });
    EXPECT_TRUE(bench().card()->accessibleDescription().startsWith(
        QStringLiteral("not agreed: 64 lb is 4 lb above the marked 60 lb")))
        << card();
    elsewhere([&](desk::Transaction& t) { return desk::agreeAboveMarked(t, {id, "his coach", "", counter}); });
    EXPECT_THAT(card(), testing::HasSubstr("his coach agreed"));
    EXPECT_THAT(card(), testing::Not(testing::HasSubstr("not agreed")));
    EXPECT_EQ(presenter().step(), Step::Cut);
}

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
