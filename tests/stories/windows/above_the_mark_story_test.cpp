// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/settings.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/string_choice.h"
#include "ui/counter/to_be_strung_sheet.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/tension_edit.h"

#include <QAbstractItemModel>
#include <QScrollArea>
#include <QScrollBar>

namespace rw::ui::test {
namespace {

class AboveTheMark : public AtTheWindow {
protected:
    CounterStation& counter() { return *m_window->counter(); }
    IntakeSheet& sheet() { return *m_window->counter()->intake(); }
    ToBeStrungSheet& jobsSheet() { return *m_window->counter()->toBeStrung(); }

    void jun() {
        type("hallerby");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
    }
    /// His only racket, the string by its code, and one number: "28 please".
    void twentyEightPlease() {
        jun();
        ASSERT_TRUE(becomes([&] { return sheet().mains()->isAncestorOf(whereTheKeyboardIs()); }));
        type("w");
        for (int i = 0; i < 4; ++i) {
            press(Qt::Key_Tab); // over the source, and the crosses with theirs
        }
        ASSERT_TRUE(sheet().mainsTension()->hasFocus());
        type("28");
        press(Qt::Key_Tab);
        previewed();
    }
    void previewed() {
        ASSERT_TRUE(becomes([&] {
            return counter().intakePresenter().preview().has_value() && !counter().intakePresenter().isThinking();
        })) << sheet().outcome()->needed().toStdString();
    }
    void logIt() {
        press(Qt::Key_Return, Qt::ControlModifier);
        ASSERT_TRUE(saysSoon(QStringLiteral("Logged ")));
        ASSERT_TRUE(becomes([&] { return !counter().person().picked().has_value(); }));
    }
    JobId newest() { return jobs(JobState::Logged).back().id; }
    std::optional<Consent> consent(JobId id) {
        return look([&](desk::Transaction& t) { return desk::consentTo(t, id, highestPull(t.jobs().get(id)->asked)); });
    }
    /// The list of jobs to be strung, at his newest.
    void atHisJob(JobId id) {
        jun();
        press(Qt::Key_F9);
        ASSERT_TRUE(becomes([&] { return jobsSheet().list()->hasFocus() && jobsSheet().chosen() != nullptr; }));
        for (int i = 0; i < jobsSheet().list()->model()->rowCount() && jobsSheet().chosen()->id != id; ++i) {
            press(Qt::Key_Down);
        }
        ASSERT_EQ(jobsSheet().chosen()->id, id);
    }
};

// Its smallest window is 1280 by 800: the price, the promise and the button stay in view with the line of the yes too.
TEST_F(AboveTheMark, TheWholeSheetIsInViewWhenTheLineIsThere) {
    ASSERT_EQ(m_window->size(), QSize(1280, 800));
    jun();
    press(Qt::Key_F5);
    sheet().mainsTension()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_A, Qt::ControlModifier);
    type("28");
    press(Qt::Key_Tab);
    press(Qt::Key_A, Qt::ControlModifier);
    type("30");
    previewed();
    ASSERT_TRUE(becomes([&] { return sheet().agreed()->isVisible(); }));
    ASSERT_TRUE(sheet().tensionNote()->text().contains(QLatin1Char('\n'))) << "as much as the margin can hold";
    auto* page = counter().findChild<QScrollArea*>();
    EXPECT_TRUE(becomes([&] { return page->verticalScrollBar()->maximum() == 0; }))
        << page->verticalScrollBar()->maximum() << " pixels are out of view";
}

// Scenario 4, through the windows and by keyboard alone.
TEST_F(AboveTheMark, OneNumberIsReadBackAndTheYesIsOfThisJob) {
    twentyEightPlease();
    EXPECT_EQ(sheet().crossesTension()->text(), QStringLiteral("30 lb"));
    const QString tensions = sheet().tensionNote()->text();
    EXPECT_TRUE(tensions.contains(QStringLiteral("28/30 lb"))) << tensions.toStdString();
    EXPECT_TRUE(tensions.contains(QStringLiteral("crosses 2 lb higher"))) << tensions.toStdString();
    EXPECT_TRUE(tensions.contains(QStringLiteral("▲ The highest pull is 30 lb, 4 lb above the marked 26 lb.")))
        << tensions.toStdString();
    ASSERT_TRUE(sheet().agreed()->isVisible());
    EXPECT_TRUE(sheet().agreedNote()->text().contains(QStringLiteral("Shall we string it all the same?")))
        << sheet().agreedNote()->text().toStdString();
    press(Qt::Key_Tab);
    ASSERT_TRUE(sheet().agreed()->hasFocus());
    press(Qt::Key_Space);
    press(Qt::Key_Tab);
    ASSERT_TRUE(sheet().agreedBy()->hasFocus());
    type("his coach");
    logIt();
    EXPECT_FALSE(message().contains(QStringLiteral("Not agreed"))) << message().toStdString();
    const Job first = job(newest());
    EXPECT_EQ(first.asked.crosses, *Tension::tryParse("30", TensionUnit::Pound));
    const auto yes = consent(*first.id);
    ASSERT_TRUE(yes);
    EXPECT_EQ(yes->agreedBy, "his coach");
    EXPECT_EQ(yes->by.staff, *m_shift->staff());
    EXPECT_NE(yes->words.find("Shall we string it all the same?"), std::string::npos);

    // As last time, the next day: nothing of the yes comes along, and logging is not held up.
    jun();
    press(Qt::Key_F5);
    sheet().mainsTension()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_A, Qt::ControlModifier);
    type("28");
    press(Qt::Key_Tab);
    press(Qt::Key_A, Qt::ControlModifier);
    type("30");
    previewed();
    ASSERT_TRUE(sheet().agreed()->isVisible());
    EXPECT_FALSE(sheet().agreed()->isChecked());
    const auto logged = jobs(JobState::Logged).size();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(sheet().racketNote()->text().contains(QStringLiteral("▲ this racket is in the shop already")))
        << sheet().racketNote()->text().toStdString();
    EXPECT_EQ(jobs(JobState::Logged).size(), logged) << "said first";
    logIt();
    EXPECT_EQ(jobs(JobState::Logged).size(), logged + 1);
    EXPECT_TRUE(message().contains(QStringLiteral("Not agreed to 30 lb yet"))) << message().toStdString();
    EXPECT_FALSE(consent(newest()));
}

TEST_F(AboveTheMark, TheYesIsKeptLaterFromTheJobsToBeStrung) {
    twentyEightPlease();
    logIt();
    const Job logged = job(newest());
    atHisJob(*logged.id);
    const QModelIndex row = jobsSheet().list()->currentIndex();
    bool marked = false;
    for (int role = Qt::UserRole; role < Qt::UserRole + 10; ++role) {
        marked = marked || row.data(role).toString().contains(QStringLiteral("▲ not agreed"));
    }
    EXPECT_TRUE(marked);
    press(Qt::Key_A);
    ASSERT_TRUE(jobsSheet().agreedBy()->hasFocus());
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Agreed for job %1: 30 lb, 4 lb above the marked 26 lb.").arg(logged.number)));
    EXPECT_TRUE(consent(*logged.id));
    ASSERT_TRUE(becomes([&] { return !jobsSheet().chosen()->notAgreed; }));
    press(Qt::Key_A);
    EXPECT_FALSE(jobsSheet().agreedBy()->isVisible());
    EXPECT_TRUE(saysSoon(QStringLiteral("the yes is kept already")));
}

TEST_F(AboveTheMark, AYesIsTakenBackWithTheTensionsItWasGivenTo) {
    twentyEightPlease();
    press(Qt::Key_Tab);
    press(Qt::Key_Space);
    ASSERT_TRUE(counter().intakePresenter().form().agreed);
    press(Qt::Key_Backtab);
    ASSERT_TRUE(sheet().crossesTension()->hasFocus());
    type("31");
    EXPECT_FALSE(counter().intakePresenter().form().agreed);
    EXPECT_FALSE(sheet().agreed()->isChecked());
}

TEST_F(AboveTheMark, AnUnusualPullIsAskedAbout) {
    twentyEightPlease();
    press(Qt::Key_Backtab);
    ASSERT_TRUE(sheet().mainsTension()->hasFocus());
    type("12");
    press(Qt::Key_Tab);
    type("12");
    ASSERT_TRUE(becomes([&] {
        return sheet().tensionNote()->text().contains(
            QStringLiteral("▲ 12 lb is unusual for badminton: is the unit right?"));
    })) << sheet().tensionNote()->text().toStdString();
}

TEST_F(AboveTheMark, TheShopsOwnWordsAreReadOut) {
    ASSERT_TRUE(desk::inTransaction(*m_ledger, desk::Access::Write, [](desk::Transaction& t) -> Result<void> {
        t.shop().set(desk::setting::kAboveMarkedWords, "At your own risk?");
        return {};
    }));
    m_shift->noteChange();
    ASSERT_TRUE(becomes([&] { return m_shift->shop().aboveMarkedWords == "At your own risk?"; }));
    twentyEightPlease();
    EXPECT_TRUE(sheet().agreedNote()->text().contains(QStringLiteral("“At your own risk?”")));
}

TEST_F(AboveTheMark, OfTwoStationsTheSecondSeesBothAndChooses) {
    twentyEightPlease();
    logIt();
    const JobId id = newest();
    atHisJob(id);
    press(Qt::Key_T);
    ASSERT_TRUE(jobsSheet().mains()->hasFocus());
    EXPECT_EQ(jobsSheet().crosses()->text(), QStringLiteral("30 lb"));
    const auto theirs = desk::inTransaction(*m_ledger, desk::Access::Write, [&](desk::Transaction& t) {
        const Tension lower = *Tension::tryParse("25", TensionUnit::Pound);
        return desk::changeAsked(
            t, {id, t.jobs().get(id)->asked, {lower, lower}, {*t.shop().staff().front().id, "bench", kThursday}});
    });
    ASSERT_TRUE(theirs);
    type("24");
    press(Qt::Key_Return);
    type("26");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return jobsSheet().tensionNote()->text().contains(QStringLiteral("▲")); }));
    const QString both = jobsSheet().tensionNote()->text();
    EXPECT_TRUE(both.contains(QStringLiteral("it is 25/25 lb now, yours says 24/26 lb"))) << both.toStdString();
    EXPECT_EQ(job(id).asked.mains, *Tension::tryParse("25", TensionUnit::Pound)) << "nothing was overwritten unseen";
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is asked at 24/26 lb now")));
    EXPECT_EQ(job(id).asked.mains, *Tension::tryParse("24", TensionUnit::Pound));
    EXPECT_FALSE(message().contains(QStringLiteral("Not agreed"))) << "26 lb keeps to the mark";
}

} // namespace
} // namespace rw::ui::test
