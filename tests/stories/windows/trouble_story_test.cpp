// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"
#include "tests/stories/windows/at_the_window.h"
#include "tests/ui/support/held_desk_runner.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/tension_edit.h"

#include <QLabel>

namespace rw::ui::test {
namespace {

/// The window on a ledger that the test can fill up or take away.
class Trouble : public testing::Test {
protected:
    Trouble()
        : ledger(std::move(*sql::openLedger(
              *sql::LedgerAddress::parse(folder.filePath(QStringLiteral("shop.sqlite")).toStdString())))) {
        EXPECT_TRUE(desk::inTransaction(*ledger, desk::Access::Write, [](desk::Transaction& t) {
                        return desk::stockDemoShop(t, kThursday);
                    }).has_value());
        window = std::make_unique<MainWindow>(runner, shift, std::chrono::milliseconds(0));
        window->show();
        window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    [[nodiscard]] std::size_t logged() {
        return ledger->begin(desk::Access::Read)->jobs().inStates({JobState::Logged}).size();
    }

    OnlyKnownWarnings warnings;
    QTemporaryDir folder;
    FixedClock clock{kThursday};
    std::unique_ptr<desk::Ledger> ledger;
    HeldDeskRunner runner{*ledger};
    Shift shift{clock};
    std::unique_ptr<MainWindow> window;
};

TEST_F(Trouble, AFullDiskIsSaidPlainlyNothingTypedIsLostAndWorkGoesOn) {
    auto& counter = *window->counter();
    type("417");
    press(Qt::Key_Return);
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

} // namespace
} // namespace rw::ui::test
