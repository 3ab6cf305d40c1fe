// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/ledger_address.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/presenter/bench_presenter.h"

#include <algorithm>

namespace rw::ui::test {

/// One window on a ledger that others have open too.
struct OpenWindow {
    OpenWindow(const std::string& address, const Clock& clock)
        : runner([address] { return openOrLost(address); })
        , shift(clock) {
        QObject::connect(&shift, &Shift::ledgerChanged, [this] { ++changes; });
        window =
            std::make_unique<MainWindow>(runner, shift, Outside{folders, files, tray}, std::chrono::milliseconds(0));
        window->show();
        EXPECT_TRUE(becomes([&] { return shift.hasShop(); }));
        bench().refresh();
        EXPECT_TRUE(becomes([&] { return bench().card().has_value(); }));
        shift.setStaff(*shift.shop().staff.front().id);
    }
    [[nodiscard]] BenchPresenter& bench() const { return window->bench()->presenter(); }
    /// Whether 2122 lies on a machine, as this window shows it.
    [[nodiscard]] bool showsOnTheMachine() const {
        return std::ranges::any_of(bench().queue(), [](const desk::JobLine& line) {
            return line.number == 2122 && line.state == JobState::OnTheMachine;
        });
    }

    ChosenFolder folders;
    app::CsvFiles files;
    LedgerDeskRunner runner;
    Shift shift;
    PaperTray tray;
    std::unique_ptr<MainWindow> window;
    int changes = 0;
};

} // namespace rw::ui::test
