// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "tests/sql/engines.h"
#include "tests/stories/windows/open_window.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/tension_edit.h"

#include <QLabel>
#include <QUrl>

#include <cstdlib>

namespace rw::ui::test {
namespace {

/// A server that takes no connection to one database and ends those that there are, as when it is stopped; and lets
/// them in again, as when it is started.
class StoppedServer {
public:
    explicit StoppedServer(const std::string& address)
        : m_database(QUrl(QString::fromStdString(address)).path().mid(1).toStdString()) {
        letIn("false");
        (void)server()->scalar("SELECT count(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE datname = '" +
                               m_database + "'");
    }
    ~StoppedServer() { letIn("true"); }
    StoppedServer(const StoppedServer&) = delete;
    StoppedServer& operator=(const StoppedServer&) = delete;

private:
    static std::unique_ptr<sql::Connection> server() {
        return sql::Connection::openPostgres(std::getenv("REELWRIGHT_TEST_POSTGRES"));
    }
    void letIn(const std::string& whether) const {
        server()->execute("ALTER DATABASE " + m_database + " ALLOW_CONNECTIONS " + whether);
    }
    std::string m_database;
};

class ServerGone : public testing::Test {
protected:
    ServerGone() {
        const auto ledger = std::move(*sql::openLedger(*sql::LedgerAddress::parse(place->address())));
        EXPECT_TRUE(desk::inTransaction(*ledger, desk::Access::Write, [](desk::Transaction& t) {
                        return desk::stockDemoShop(t, kThursday);
                    }).has_value());
    }
    std::size_t logged() {
        const auto ledger = std::move(*sql::openLedger(*sql::LedgerAddress::parse(place->address())));
        return ledger->begin(desk::Access::Read)->jobs().inStates({JobState::Logged}).size();
    }

    OnlyKnownWarnings warnings;
    FixedClock clock{kThursday};
    std::unique_ptr<sql::test::Place> place = sql::test::makePlace(sql::Dialect::Postgres);
};

TEST_F(ServerGone, UnderAnOpenWindowIsSaidNothingTypedIsLostAndWorkGoesOnWhenItIsBack) {
    OpenWindow here(place->address(), clock);
    here.window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(here.window.get()));
    auto& counter = *here.window->counter();
    press(Qt::Key_1, Qt::ControlModifier);
    type("417");
    ASSERT_TRUE(becomes([&] { return counter.person().isSearched(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.person().picked().has_value(); }));
    press(Qt::Key_Down); // B was here last
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.racket().picked().has_value(); }));
    press(Qt::Key_F5);
    type("53");
    const std::size_t before = logged();
    const auto message = [&] { return here.window->message()->text(); };
    {
        const StoppedServer stopped(place->address());
        press(Qt::Key_Return, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return message().startsWith(QStringLiteral("✕ ")); })) << message().toStdString();
        EXPECT_EQ(counter.intake()->mainsTension()->readable()->text(), "53 lb");
        EXPECT_EQ(counter.person().picked()->customer.name, "Petra Lindobi");
    }
    // It asks by itself until the server is back.
    ASSERT_TRUE(becomes([&] { return !message().startsWith(QStringLiteral("✕ ")); })) << message().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return message().contains(QStringLiteral("Logged ")); })) << message().toStdString();
    EXPECT_EQ(logged(), before + 1);
}

} // namespace
} // namespace rw::ui::test
