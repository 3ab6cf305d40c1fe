// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/files/csv_files.h"
#include "core/desk/unit_of_work.h"
#include "tests/ui/support/chosen_folder.h"
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "tests/ui/support/paper_tray.h"
#include "ui/presenter/shift.h"
#include "ui/qtport/ledger_desk_runner.h"
#include "ui/shell/main_window.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <string_view>

namespace rw::ui::test {

/// The demo shop's day: Thursday 12 March 2026, eleven o'clock.
constexpr Instant kThursday = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

inline Length metres(double m) { return Length::fromMillimetres(static_cast<std::int64_t>(m * 1000 + 0.5)); }

/// Opens a ledger as the desktop does: one that is refused is lost.
[[nodiscard]] std::unique_ptr<desk::Ledger> openOrLost(const std::string& address);

/// The desktop on a ledger file of its own, with the shop in it or empty. What the windows did is looked up by a
/// second connection, as another station would see it.
class AtTheWindow : public testing::Test {
protected:
    enum class Shop { Stocked, Empty };
    explicit AtTheWindow(Shop shop = Shop::Stocked);
    ~AtTheWindow() override;

    /// Opens the window, and waits until the ledger has answered. Again: the program was closed in between.
    void openWindow();
    void closeWindow();

    template<class Work>
    auto look(Work work) {
        const auto transaction = m_ledger->begin(desk::Access::Read);
        return work(*transaction);
    }
    [[nodiscard]] Lot lot(std::string_view tag);
    [[nodiscard]] std::vector<desk::JobLine> jobs(JobState state);
    [[nodiscard]] Job job(JobId id);
    [[nodiscard]] QString message() const;
    [[nodiscard]] bool saysSoon(const QString& words);

    OnlyKnownWarnings m_warnings;
    QTemporaryDir m_folder;
    FixedClock m_clock{kThursday};
    ChosenFolder m_folders;
    app::CsvFiles m_files;
    std::unique_ptr<desk::Ledger> m_ledger;
    std::unique_ptr<LedgerDeskRunner> m_runner;
    std::unique_ptr<Shift> m_shift;
    PaperTray m_tray;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace rw::ui::test
