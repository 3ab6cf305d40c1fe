// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/shell/first_day_sheet.h"
#include "ui/stockroom/stockroom_station.h"

#include <QListView>

namespace rw::ui::test {
namespace {

class FirstDay : public AtTheWindow {
protected:
    FirstDay()
        : AtTheWindow(Shop::Empty) {}
};

// Nothing in the ledger, nobody who has seen the program before: one racket, from the first page to the rack.
TEST_F(FirstDay, FromAnEmptyLedgerToTheFirstRacketHandedOver) {
    ASSERT_TRUE(m_window->firstDay()->isVisible());
    type("Harbour Lane Strings");
    press(Qt::Key_Tab);
    type("Oriel Tamm");
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Tab); // the machine, its unit and its steps, and the currency are as they should be
    }
    type("14");
    // Enter goes from line to line; the last one opens the shop.
    press(Qt::Key_Return);
    EXPECT_EQ(whereTheKeyboardIs()->accessibleName(), QStringLiteral("Own string"));
    press(Qt::Key_Return);
    type("5");
    press(Qt::Key_Return);
    EXPECT_TRUE(m_window->firstDay()->isVisible());
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->isVisible(); }));
    EXPECT_EQ(m_shift->shop().name, "Harbour Lane Strings");

    press(Qt::Key_3, Qt::ControlModifier);
    auto& stockroom = m_window->stockroom()->presenter();
    ASSERT_TRUE(becomes([&] { return stockroom.isLoaded(); }));
    press(Qt::Key_N);
    type("M");
    press(Qt::Key_Tab);
    type("Millrace 127");
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Tab);
    }
    type("1.27");
    press(Qt::Key_Tab);
    type("11");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("M Millrace 127 is on the list. R receives a reel of it.")));
    ASSERT_TRUE(becomes([&] { return stockroom.shelf().size() == 1; }));
    press(Qt::Key_R);
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Tab); // how many, kind
    }
    type("200");
    press(Qt::Key_Tab);
    type("84");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Received M-1: 200 m. Write M-1 on it.")));

    press(Qt::Key_1, Qt::ControlModifier);
    auto& counter = *m_window->counter();
    type("Zo\xC3\xAB Marchbanks");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return whereTheKeyboardIs()->accessibleName() == QStringLiteral("Phone"); }));
    type("07700 900111");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.person().picked().has_value(); }));
    type("Fennel Prow 102");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return whereTheKeyboardIs()->accessibleName() == QStringLiteral("Sport"); }));
    press(Qt::Key_Tab);
    type("16x19");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.racket().picked().has_value(); }));
    type("m");
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Tab);
    }
    type("52");
    press(Qt::Key_Tab); // the crosses start as the mains
    ASSERT_TRUE(becomes([&] { return counter.intakePresenter().preview().has_value(); }));
    EXPECT_EQ(counter.intake()->outcome()->priceText(), QStringLiteral("£25.00"));
    EXPECT_TRUE(
        counter.intake()->outcome()->planText().contains(QStringLiteral("off M-1, for a usual head of its sport")))
        << counter.intake()->outcome()->planText().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged ")));

    press(Qt::Key_2, Qt::ControlModifier);
    auto& bench = m_window->bench()->presenter();
    ASSERT_TRUE(becomes([&] { return bench.step() == BenchPresenter::Step::Take; }));
    press(Qt::Key_Return);
    for (int piece = 0; piece < 2; ++piece) {
        ASSERT_TRUE(becomes([&] {
            return bench.step() == BenchPresenter::Step::Cut &&
                   bench.cutPieces().size() == static_cast<std::size_t>(piece);
        }));
        press(Qt::Key_Return);
        press(Qt::Key_Return);
    }
    ASSERT_TRUE(becomes([&] { return bench.step() == BenchPresenter::Step::Finish; }));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is strung, 52/52 lb")));

    press(Qt::Key_1, Qt::ControlModifier);
    press(Qt::Key_F8);
    ASSERT_TRUE(becomes([&] { return counter.rack()->list()->hasFocus() && counter.rack()->list()->isVisible(); }));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.rack()->isOpen(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Paid £25.00.")));
    EXPECT_TRUE(m_ledger->check().empty());
}

TEST_F(FirstDay, AShopThatWorksInOtherMoneyChoosesItAndWhatWasTypedKeepsItsNumber) {
    auto* page = m_window->firstDay();
    press(Qt::Key_Tab);
    type("Oriel Tamm");
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Tab);
    }
    type("14.50");
    press(Qt::Key_Backtab);
    ASSERT_TRUE(page->currency()->hasFocus());
    EXPECT_EQ(page->currency()->currentText(), QStringLiteral("GBP"));
    page->currency()->setCurrentText(QStringLiteral("EUR"));
    EXPECT_EQ(page->labourLine()->text(), QStringLiteral("14.50"));
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->isVisible(); }));
    EXPECT_EQ(m_shift->shop().currency.code(), "EUR");
    const auto prices = look([](desk::Transaction& t) { return t.priceLists().all(); });
    EXPECT_EQ(prices.front().lines.front().amount, Money::fromMinor(1450, *Currency::fromCode("EUR")));
    EXPECT_TRUE(m_ledger->check().empty());
}

TEST_F(FirstDay, EmptyScreensSayWhatToDoNext) {
    press(Qt::Key_Tab);
    type("Oriel Tamm");
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Tab);
    }
    type("fourteen");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->counter()->isVisible()) << "an amount that cannot be read opens no shop";
    for (int i = 0; i < 8; ++i) {
        press(Qt::Key_Backspace);
    }
    type("14");
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->isVisible(); }));
    EXPECT_FALSE(m_window->counter()->intake()->outcome()->needed().isEmpty());
}

} // namespace
} // namespace rw::ui::test
