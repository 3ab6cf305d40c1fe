// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"

#include "core/desk/demo_shop.h"
#include "core/sql/ledger_address.h"
#include "ui/presenter/pause.h"

#include <QLabel>

namespace rw::ui::test {

std::unique_ptr<desk::Ledger> openOrLost(const std::string& address) {
    auto ledger = sql::openLedger(*sql::LedgerAddress::parse(address));
    if (!ledger) {
        throw LedgerLost("the ledger of the test does not open");
    }
    return std::move(*ledger);
}

namespace {
std::unique_ptr<desk::Ledger> open(const QTemporaryDir& folder) {
    return openOrLost(folder.filePath(QStringLiteral("shop.sqlite")).toStdString());
}
} // namespace

AtTheWindow::AtTheWindow(Shop shop)
    : m_ledger(open(m_folder)) {
    if (shop == Shop::Stocked) {
        const auto stocked = desk::inTransaction(
            *m_ledger, desk::Access::Write, [](desk::Transaction& t) { return desk::stockDemoShop(t, kThursday); });
        EXPECT_TRUE(stocked.has_value());
    }
    openWindow();
}

AtTheWindow::~AtTheWindow() { closeWindow(); }

void AtTheWindow::openWindow() {
    m_runner = std::make_unique<LedgerDeskRunner>([this] { return open(m_folder); });
    m_shift = std::make_unique<Shift>(m_clock);
    m_window = std::make_unique<MainWindow>(*m_runner, *m_shift, Outside{m_folders, m_files, m_tray}, kTypingPause);
    m_window->show();
    m_window->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    EXPECT_TRUE(becomes([&] { return m_shift->hasShop() && QApplication::focusWidget() != nullptr; }));
    if (!m_shift->shop().staff.empty()) {
        m_shift->setStaff(*m_shift->shop().staff.front().id);
    }
}

void AtTheWindow::closeWindow() {
    m_window.reset();
    m_runner.reset();
    m_shift.reset();
}

Lot AtTheWindow::lot(std::string_view tag) {
    return *look([&](desk::Transaction& t) { return t.lots().byTag(tag); });
}

std::vector<desk::JobLine> AtTheWindow::jobs(JobState state) {
    return look([&](desk::Transaction& t) { return t.jobs().inStates({state}); });
}

Job AtTheWindow::job(JobId id) {
    return *look([&](desk::Transaction& t) { return t.jobs().get(id); });
}

QString AtTheWindow::message() const { return m_window->message()->text(); }

bool AtTheWindow::saysSoon(const QString& words) {
    const bool said = becomes([&] { return message().contains(words); });
    EXPECT_TRUE(said) << "it says: " << message().toStdString();
    return said;
}

} // namespace rw::ui::test
