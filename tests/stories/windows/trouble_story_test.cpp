// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/slow_ledger.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/tension_edit.h"

#include <gmock/gmock.h>

namespace rw::ui::test {
namespace {

class Trouble : public SlowLedger {
protected:
    Trouble() {
        openWindow();
        somebodyWorks();
    }
    [[nodiscard]] std::size_t logged() { return count(JobState::Logged); }
};

TEST_F(Trouble, AFullDiskIsSaidPlainlyNothingTypedIsLostAndWorkGoesOn) {
    auto& counter = *window->counter();
    type("417");
    press(Qt::Key_Return);
    press(Qt::Key_Down); // B was here last
    press(Qt::Key_Return);
    press(Qt::Key_F5);
    type("-2 lb");
    const auto before = logged();
    runner.world = HeldDeskRunner::World::Full;
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(window->message()->text().startsWith(QStringLiteral("✕ "))) << window->message()->text().toStdString();
    EXPECT_EQ(counter.person().picked()->customer.name, "Petra Lindobi");
    EXPECT_EQ(counter.intake()->mainsTension()->readable()->text(), "52 lb");
    EXPECT_EQ(logged(), before);
    runner.world = HeldDeskRunner::World::Whole;
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(window->message()->text().contains(QStringLiteral("Logged ")))
        << window->message()->text().toStdString();
    EXPECT_EQ(logged(), before + 1);
}

TEST_F(Trouble, ALedgerThatIsLostAfterItKeptTheJobDoesNotKeepItTwice) {
    type("417");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_F5);
    const auto before = logged();
    runner.world = HeldDeskRunner::World::LostAfter;
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(window->message()->text().startsWith(QStringLiteral("✕ ")));
    runner.world = HeldDeskRunner::World::Whole;
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(logged(), before + 1);
}

TEST_F(Trouble, WhoeverHearsFromTheLedgerAgainTakesTheTroubleAway) {
    runner.world = HeldDeskRunner::World::LostBefore;
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(window->message()->text().startsWith(QStringLiteral("✕ ")));
    runner.world = HeldDeskRunner::World::Whole;
    press(Qt::Key_1, Qt::ControlModifier);
    type("417");
    EXPECT_FALSE(window->message()->text().startsWith(QStringLiteral("✕ "))) << window->message()->text().toStdString();
}

TEST_F(Trouble, ClosingWaitsForWhatWasJustLogged) {
    type("417");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_F5);
    const auto before = logged();
    runner.held = true;
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Q, Qt::ControlModifier);
    EXPECT_TRUE(window->isVisible());
    runner.release();
    EXPECT_FALSE(window->isVisible());
    EXPECT_EQ(logged(), before + 1);
}

// The ledger does not answer when the program starts: the window says so, and goes on by itself when it does.
class GoneAtFirst : public SlowLedger {
protected:
    GoneAtFirst() {
        runner.world = HeldDeskRunner::World::LostBefore;
        openWindow();
    }
};

TEST_F(GoneAtFirst, TheWindowSaysSoAndOpensWhenTheLedgerIsBack) {
    EXPECT_THAT(message(), testing::HasSubstr("✕ "));
    EXPECT_THAT(message(), testing::HasSubstr("asks it again"));
    EXPECT_FALSE(window->counter()->isVisible());
    runner.world = HeldDeskRunner::World::Whole;
    EXPECT_TRUE(becomes([&] { return window->counter()->isVisible(); }));
    EXPECT_THAT(message(), testing::Not(testing::HasSubstr("✕")));
}

TEST_F(GoneAtFirst, TheWindowGoesOnAskingWhileItIsAway) {
    const int before = runner.reads;
    EXPECT_TRUE(becomes([&] { return runner.reads >= before + 2; }));
    EXPECT_FALSE(window->counter()->isVisible());
}

} // namespace
} // namespace rw::ui::test
