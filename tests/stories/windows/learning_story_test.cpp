// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/card_view.h"
#include "ui/bench/finish_strip.h"
#include "ui/books/books_station.h"
#include "ui/books/frame_needs_sheet.h"
#include "ui/books/frames_page.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/frames_presenter.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"

#include <gmock/gmock.h>

// Tails are told at the bench, and the counter and the books know what they say.
namespace rw::ui::test {
namespace {

using testing::HasSubstr;

class LearningStory : public AtTheWindow {
protected:
    BenchStation& bench() { return *m_window->bench(); }
    FinishStrip& finish() { return *bench().finishStrip(); }

    /// 2122 lies on Bench A: its one piece is cut and the finish is open.
    void openTheFinish() {
        press(Qt::Key_2, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return bench().presenter().step() == BenchPresenter::Step::Cut; }));
        ASSERT_EQ(bench().presenter().card()->job.number, 2122);
        press(Qt::Key_C);
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return bench().presenter().step() == BenchPresenter::Step::Finish; }));
        press(Qt::Key_F);
        ASSERT_TRUE(becomes([&] { return finish().isVisible(); }));
    }
    void goToTails() {
        press(Qt::Key_Tab);
        press(Qt::Key_Tab);
        ASSERT_EQ(whereTheKeyboardIs(), finish().tailsEdit());
    }
    std::vector<desk::OwnCut> cutsOf(std::string_view frame) {
        return look([&](desk::Transaction& t) {
            const FrameModel model = t.frames().find(frame, 1).front();
            return t.ownCuts().cuts(*model.id, model.sport, 100, 0);
        });
    }
};

TEST_F(LearningStory, TheFinishWithoutTailsIsStillTwoKeys) {
    openTheFinish();
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2122 is strung")));
}

TEST_F(LearningStory, TailsThatCannotBeReadAreSentBack) {
    openTheFinish();
    goToTails();
    type("plenty");
    press(Qt::Key_Return);
    EXPECT_EQ(jobs(JobState::OnTheMachine).size(), 1U);
    EXPECT_EQ(whereTheKeyboardIs(), finish().tailsEdit());
    press(Qt::Key_A, Qt::ControlModifier);
    type("a hand");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2122 is strung")));
}

TEST_F(LearningStory, ToldAtTheBenchTheyAreKnownEverywhere) {
    openTheFinish();
    const std::string frame = bench().presenter().card()->frame.name;
    goToTails();
    type("30 / 85");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2122 is strung")));
    ASSERT_FALSE(cutsOf(frame).empty());
    EXPECT_EQ(cutsOf(frame).front().tails, Tails::measured(metres(1.15)));
    EXPECT_EQ(cutsOf(frame).front().shortSideTails, Tails::measured(metres(0.3)));

    press(Qt::Key_1, Qt::ControlModifier);
    press(Qt::Key_N, Qt::ControlModifier);
    type("417");
    press(Qt::Key_Return);
    auto& counter = *m_window->counter();
    ASSERT_TRUE(becomes([&] { return counter.person().picked().has_value(); }));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.racket().picked().has_value(); }));
    press(Qt::Key_F5);
    ASSERT_TRUE(becomes([&] { return counter.intakePresenter().preview().has_value(); }));
    const auto* reasons = counter.intake()->outcome()->reasons();
    EXPECT_FALSE(reasons->isVisible());
    press(Qt::Key_F4);
    EXPECT_TRUE(reasons->isVisible());
    EXPECT_THAT(reasons->text().toStdString(), HasSubstr("of the shop's own"));
    EXPECT_THAT(reasons->text().toStdString(), HasSubstr("as last time; the model's own cut is"));
    press(Qt::Key_F4);
    EXPECT_FALSE(reasons->isVisible());

    press(Qt::Key_4, Qt::ControlModifier);
    auto& books = *m_window->books();
    ASSERT_TRUE(becomes([&] { return books.isVisible(); }));
    for (int turns = 0; qobject_cast<FramesPage*>(books.page()) == nullptr && turns < 20; ++turns) {
        press(Qt::Key_PageDown, Qt::ControlModifier);
    }
    auto* page = qobject_cast<FramesPage*>(books.page());
    ASSERT_NE(page, nullptr);
    press(Qt::Key_Return);
    type(frame.c_str());
    ASSERT_TRUE(becomes([&] { return page->rows().rowCount() == 1; }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return page->isFrameOpen() && page->list()->hasFocus(); }));
    press(Qt::Key_L);
    ASSERT_TRUE(becomes([&] { return page->sheet() == page->needsSheet(); }));
    EXPECT_THAT(page->needsSheet()->learned().toStdString(), HasSubstr("1 with tails"));
    EXPECT_GT(page->needsSheet()->figures().rowCount(), 1);
    const QString first = page->needsSheet()->title();
    press(Qt::Key_Right);
    EXPECT_NE(page->needsSheet()->title(), first);
    press(Qt::Key_Left);
    EXPECT_EQ(page->needsSheet()->title(), first);
    press(Qt::Key_Escape);
    EXPECT_EQ(page->sheet(), nullptr);
    EXPECT_TRUE(page->isFrameOpen());
}

} // namespace
} // namespace rw::ui::test
