// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/files/csv_files.h"
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"
#include "tests/stories/windows/at_the_window.h"
#include "tests/ui/support/chosen_folder.h"
#include "tests/ui/support/held_desk_runner.h"
#include "tests/ui/support/paper_tray.h"

#include <QLabel>

namespace rw::ui::test {

/// The window on a ledger that the test can make slow, fill up or take away.
class SlowLedger : public testing::Test {
protected:
    SlowLedger()
        : ledger(std::move(*sql::openLedger(
              *sql::LedgerAddress::parse(folder.filePath(QStringLiteral("shop.sqlite")).toStdString())))) {
        EXPECT_TRUE(desk::inTransaction(*ledger, desk::Access::Write, [](desk::Transaction& t) {
                        return desk::stockDemoShop(t, kThursday);
                    }).has_value());
    }
    void openWindow() {
        window =
            std::make_unique<MainWindow>(runner, shift, Outside{folders, files, tray}, std::chrono::milliseconds(0));
        window->show();
        window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    void somebodyWorks() { shift.setStaff(*shift.shop().staff.front().id); }
    [[nodiscard]] std::size_t count(JobState state) {
        return ledger->begin(desk::Access::Read)->jobs().inStates({state}).size();
    }
    [[nodiscard]] Lot lot(std::string_view tag) { return *ledger->begin(desk::Access::Read)->lots().byTag(tag); }
    [[nodiscard]] std::string message() const { return window->message()->text().toStdString(); }

    OnlyKnownWarnings warnings;
    QTemporaryDir folder;
    FixedClock clock{kThursday};
    ChosenFolder folders;
    app::CsvFiles files;
    std::unique_ptr<desk::Ledger> ledger;
    HeldDeskRunner runner{*ledger};
    Shift shift{clock};
    PaperTray tray;
    std::unique_ptr<MainWindow> window;
};

} // namespace rw::ui::test
