// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/slow_ledger.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/person_presenter.h"
#include "ui/shell/history_sheet.h"
#include "ui/shell/station_band.h"

#include <QComboBox>
#include <QListView>

#include <gmock/gmock.h>

namespace rw::ui::test {
namespace {

using testing::HasSubstr;

/// The window as it opens in a shop where several people work.
class NewUser : public SlowLedger {
protected:
    NewUser() { openWindow(); }
    std::string empty() { return window->history()->empty()->text().toStdString(); }
    void backFromHistory() {
        ASSERT_TRUE(window->history()->isVisible());
        press(Qt::Key_Escape);
        ASSERT_FALSE(window->history()->isVisible());
    }
};

TEST_F(NewUser, TheBandAsksWhoIsWorkingAndTheFirstWriteWaitsForIt) {
    auto* staff = window->band()->staff();
    EXPECT_EQ(staff->currentIndex(), -1);
    EXPECT_EQ(staff->placeholderText(), QStringLiteral("Who is working?"));
    type("417");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_F5);
    auto* line = whereTheKeyboardIs();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(runner.writes, 0);
    EXPECT_THAT(message(), HasSubstr("Who is working?"));
    ASSERT_TRUE(staff->view()->isVisible());
    QTest::keyClick(staff->view(), Qt::Key_Down);
    QTest::keyClick(staff->view(), Qt::Key_Return);
    ASSERT_TRUE(shift.staff());
    EXPECT_EQ(whereTheKeyboardIs(), line) << "the keyboard goes back to where it was";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(runner.writes, 1);
    EXPECT_THAT(message(), HasSubstr("Logged "));
}

TEST_F(NewUser, WhoeverLeavesTheQuestionGoesBackToTheSheet) {
    auto* line = whereTheKeyboardIs();
    press(Qt::Key_F2);
    ASSERT_TRUE(window->band()->staff()->view()->isVisible());
    QTest::keyClick(window->band()->staff()->view(), Qt::Key_Escape);
    ASSERT_TRUE(window->band()->staff()->hasFocus());
    press(Qt::Key_Escape);
    EXPECT_EQ(whereTheKeyboardIs(), line);
}

TEST_F(NewUser, HistoryOpensFromWhereverSomebodyIs) {
    press(Qt::Key_F6);
    EXPECT_FALSE(window->history()->isVisible());
    EXPECT_THAT(message(), HasSubstr("find one first"));

    type("417");
    press(Qt::Key_Return);
    press(Qt::Key_F6); // a person, no racket yet
    EXPECT_EQ(window->history()->title(), QStringLiteral("History: Petra Lindobi"));
    EXPECT_GT(window->history()->history().rowCount(), 0);
    backFromHistory();
    press(Qt::Key_Return);
    press(Qt::Key_F6);
    EXPECT_EQ(window->history()->title(), QStringLiteral("History: Aldermoor 98 B")) << "the one that was here last";
    backFromHistory();

    press(Qt::Key_F8);
    press(Qt::Key_Down); // nothing of hers hangs there, so nothing is chosen yet
    const auto* hanging = window->counter()->rack()->chosen();
    ASSERT_NE(hanging, nullptr);
    press(Qt::Key_F6);
    EXPECT_THAT(window->history()->title().toStdString(), HasSubstr(hanging->frame));
    EXPECT_GT(window->history()->history().rowCount(), 0) << "what hangs there was strung";
    backFromHistory();

    press(Qt::Key_2, Qt::ControlModifier);
    press(Qt::Key_F6);
    EXPECT_EQ(window->history()->title(), QStringLiteral("History: Ivo Castelmere, Aldermoor 98 A"));
    backFromHistory();
    press(Qt::Key_F6, Qt::ShiftModifier);
    EXPECT_EQ(window->history()->title(), QStringLiteral("History: Aldermoor 98"));
}

TEST_F(NewUser, AnEmptyHistoryAndARefusedOneAreToldApart) {
    type("Zo\xC3\xAB Marchbanks");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(window->counter()->person().picked());
    press(Qt::Key_F6);
    EXPECT_TRUE(window->history()->empty()->isVisible());
    EXPECT_THAT(empty(), HasSubstr("Nothing was strung yet"));
    window->showHistory({JobId::of(999999), QStringLiteral("nobody's")});
    EXPECT_TRUE(window->history()->empty()->isVisible());
    EXPECT_TRUE(empty().starts_with("✕ ")) << empty();
    EXPECT_THAT(empty(), testing::Not(HasSubstr("Nothing was strung")));
}

} // namespace
} // namespace rw::ui::test
