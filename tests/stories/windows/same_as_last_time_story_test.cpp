// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/finish_strip.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/shell/history_sheet.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/tension_edit.h"

#include <QListView>

namespace rw::ui::test {
namespace {

class SameAsLastTime : public AtTheWindow {
protected:
    CounterStation& counter() { return *m_window->counter(); }
    IntakeSheet& sheet() { return *m_window->counter()->intake(); }
    BenchPresenter& bench() { return m_window->bench()->presenter(); }

    void petrasRacketA() {
        type("417");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
        press(Qt::Key_Down); // B was here last
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().racket().picked().has_value(); }));
    }
    void twoPoundsLooser() {
        press(Qt::Key_F5);
        type("-2 lb");
        press(Qt::Key_Tab);
        type("-2 lb");
    }
    void toJobAtTheBench(std::int64_t number) {
        press(Qt::Key_2, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return bench().isLoaded() && bench().card().has_value(); }));
        press(Qt::Key_End); // it was promised last
        ASSERT_TRUE(becomes([&] { return bench().card()->job.number == number; }));
    }
};

// Scenario 1, through the windows and by keyboard alone.
TEST_F(SameAsLastTime, FromTheCounterToTheRack) {
    petrasRacketA();
    EXPECT_TRUE(sheet().racketNote()->text().contains(QStringLiteral("54/52 lb asked and strung")));
    EXPECT_TRUE(sheet().racketNote()->text().contains(QStringLiteral("felt a touch stiff")));
    EXPECT_FALSE(sheet().racketNote()->text().contains(QStringLiteral("56/54"))) << "B's is not A's last time";
    twoPoundsLooser();
    EXPECT_TRUE(becomes([&] { return sheet().outcome()->priceText() == QStringLiteral("£30.00"); }));
    EXPECT_TRUE(becomes([&] {
        return sheet().outcome()->planText() ==
               QStringLiteral("10.8 m off L-3, as last time: leaves 5.5 m: bad end, 2.44 m of it likely lost");
    })) << sheet().outcome()->planText().toStdString();
    EXPECT_TRUE(sheet().outcome()->promiseWords().startsWith(QStringLiteral("ready today")));
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged 2129: Petra Lindobi, Aldermoor 98 A. Write 2129 on the tag.")));

    const JobId id = jobs(JobState::Logged).back().id;
    EXPECT_EQ(job(id).asked.mains.text(), "52 lb");
    EXPECT_EQ(job(id).asked.crosses.text(), "50 lb");
    EXPECT_EQ(job(id).note, "felt a touch stiff");

    toJobAtTheBench(2129);
    press(Qt::Key_M); // from Bench A to Bench B
    ASSERT_TRUE(becomes([&] { return bench().card()->machine->name == "Bench B"; }));
    EXPECT_EQ(bench().card()->mains->below.text(), "23.5 kg");
    EXPECT_EQ(bench().card()->mains->above.text(), "24 kg");
    press(Qt::Key_Return); // take it
    ASSERT_TRUE(becomes([&] { return bench().step() == BenchPresenter::Step::Cut; }));
    press(Qt::Key_Return); // cut: the planned length stands there
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Cut 10.8 m off L-3, which now holds 37.9 m.")));
    EXPECT_EQ(lot("L-3").length, metres(37.9));
    ASSERT_TRUE(becomes([&] { return bench().step() == BenchPresenter::Step::Finish; }));
    press(Qt::Key_Return); // finished: the nearest steps of the dial stand there
    EXPECT_EQ(m_window->bench()->finishStrip()->mains()->text(), QStringLiteral("23.5 kg"));
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2129 is strung, 23.5/22.5 kg. Hang it on the rack.")));

    // Handed over: found again by the number, paid in cash.
    press(Qt::Key_1, Qt::ControlModifier);
    type("417");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes(
        [&] { return sheet().personNote()->text().contains(QStringLiteral("2129 Aldermoor 98 A: ● strung")); }));
    press(Qt::Key_F8);
    ASSERT_TRUE(becomes([&] { return counter().rackPresenter().isLoaded() && counter().rack()->list()->hasFocus(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter().rack()->isOpen(); }));
    EXPECT_EQ(counter().rackPresenter().opened()->number, 2129);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Handed over 2129. Paid £30.00.")));
    EXPECT_EQ(job(id).state, JobState::Collected);

    // History keeps both facts.
    press(Qt::Key_Escape);
    press(Qt::Key_F6, Qt::ShiftModifier);
    const auto& history = m_window->history()->history();
    ASSERT_TRUE(becomes([&] { return history.rowCount() == 3; }));
    EXPECT_EQ(history.pair(0), QStringLiteral("23.5/22.5 kg"));
    EXPECT_TRUE(history.facts(0).startsWith(QStringLiteral("asked 52/50 lb, strung 23.5/22.5 kg")));
    press(Qt::Key_Escape);
    EXPECT_TRUE(m_window->counter()->isVisible());
}

TEST_F(SameAsLastTime, PressingTwiceLogsOnce) {
    petrasRacketA();
    press(Qt::Key_F5);
    const auto before = jobs(JobState::Logged).size();
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged 2129")));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(jobs(JobState::Logged).size(), before + 1);
}

TEST_F(SameAsLastTime, ALengthIsLostInTwoKeysAndTheReelKnowsBoth) {
    press(Qt::Key_2, Qt::ControlModifier); // 2122 is on Bench A
    ASSERT_TRUE(becomes([&] { return bench().card() && bench().step() == BenchPresenter::Step::Cut; }));
    press(Qt::Key_C);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Cut 10.8 m off L-3")));
    ASSERT_TRUE(becomes([&] { return !bench().cutPieces().empty(); }));
    press(Qt::Key_L);
    press(Qt::Key_1);
    ASSERT_TRUE(saysSoon(QStringLiteral("Lost 10.8 m, one piece: came short. The next cut is 11.05 m.")));
    ASSERT_TRUE(becomes([&] { return bench().step() == BenchPresenter::Step::Cut; }));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Cut 11.05 m off L-3")));
    EXPECT_EQ(lot("L-3").length, metres(48.7 - 10.8 - 11.05));
}

TEST_F(SameAsLastTime, LongerThanTheReelAsksForTheTapeAndTheTapeCorrectsTheBook) {
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return bench().card() && bench().step() == BenchPresenter::Step::Cut; }));
    press(Qt::Key_C);
    type("48.9");
    press(Qt::Key_Return);
    press(Qt::Key_Return); // so far from the plan it is asked about once
    ASSERT_TRUE(becomes([&] { return whereTheKeyboardIs()->accessibleName().startsWith(QStringLiteral("Measured")); }));
    EXPECT_EQ(lot("L-3").length, metres(48.7)) << "nothing half done";
    type("49.0");
    press(Qt::Key_Return);
    ASSERT_TRUE(
        saysSoon(QStringLiteral("Cut 48.9 m off L-3, which now holds 0.1 m. The book was corrected by 0.3 m.")));
}

// Scenario 6: the first screen says which.
TEST_F(SameAsLastTime, AfterARestartTheFirstScreenSaysWhetherItIsCut) {
    EXPECT_TRUE(saysSoon(QStringLiteral("Job 2122, Ivo Castelmere, Aldermoor 98 A, is on Bench A; one piece: not cut, "
                                        "L-3 holds 48.7 m.")));
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return bench().card() && bench().step() == BenchPresenter::Step::Cut; }));
    press(Qt::Key_C);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Cut 10.8 m off L-3")));
    closeWindow();
    openWindow();
    EXPECT_TRUE(saysSoon(QStringLiteral("one piece: cut, 10.8 m off L-3, which now holds 37.9 m.")));
}

} // namespace
} // namespace rw::ui::test
