// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "tests/sql/engines.h"
#include "tests/stories/windows/open_window.h"
#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/tension_edit.h"

#include <QLabel>
#include <QListView>

namespace rw::ui::test {
namespace {

class TwoWindows : public sql::test::OnEngine {
protected:
    void SetUp() override {
        const auto ledger = std::move(*sql::openLedger(*sql::LedgerAddress::parse(place().address())));
        ASSERT_TRUE(desk::inTransaction(*ledger, desk::Access::Write, [](desk::Transaction& t) {
                        return desk::stockDemoShop(t, kThursday);
                    }).has_value());
    }
    OnlyKnownWarnings warnings;
    FixedClock clock{kThursday};
};
ON_BOTH_ENGINES(TwoWindows);

TEST_P(TwoWindows, WhatOneDoesTheOtherShowsAndWhoeverTypesThereGoesOn) {
    OpenWindow other(place().address(), clock);
    OpenWindow here(place().address(), clock);
    here.window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(here.window.get()));
    auto& counter = *here.window->counter();
    counter.intake()->personFinder()->setFocus();
    type("417");
    ASSERT_TRUE(becomes([&] { return counter.person().isSearched(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.person().picked().has_value(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.racket().picked().has_value(); }));
    press(Qt::Key_F5);
    auto* mains = counter.intake()->mainsTension();
    ASSERT_TRUE(mains->hasFocus());
    type("53.");
    ASSERT_TRUE(here.showsOnTheMachine());
    const int before = here.changes;

    ASSERT_EQ(other.bench().step(), BenchPresenter::Step::Cut);
    other.bench().putDown();
    ASSERT_TRUE(becomes([&] { return !here.showsOnTheMachine(); }));
    EXPECT_TRUE(mains->hasFocus());
    EXPECT_EQ(mains->text(), QStringLiteral("53."));
    EXPECT_EQ(counter.person().picked()->customer.name, "Petra Lindobi");
    EXPECT_EQ(here.changes, before + 1);

    ASSERT_TRUE(becomes([&] { return other.bench().step() == BenchPresenter::Step::Take; }));
    other.bench().take();
    ASSERT_TRUE(becomes([&] { return here.showsOnTheMachine(); }));
    EXPECT_EQ(here.changes, before + 2) << "told once for each change, and never for none";
    EXPECT_EQ(mains->text(), QStringLiteral("53."));
}

TEST_P(TwoWindows, OfTwoThatMoveOneRacketsStepTheSecondSeesBoth) {
    OpenWindow here(place().address(), clock);
    ASSERT_EQ(here.bench().card()->job.number, 2122);
    const JobId job = *here.bench().selected();
    here.window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(here.window.get()));
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return here.bench().canGoOn() && here.window->bench()->queue()->hasFocus(); }));
    press(Qt::Key_Space);
    ASSERT_TRUE(becomes([&] { return here.bench().canGoBack(); }));

    // Another station moves it on; before this window hears of it somebody moves it back here.
    const auto other = std::move(*sql::openLedger(*sql::LedgerAddress::parse(place().address())));
    const desk::MoveStep command{job, BenchStep::Mains, BenchStep::Crosses, here.shift.by("bench")};
    ASSERT_TRUE(desk::inTransaction(*other, desk::Access::Write, [&](desk::Transaction& t) {
                    return desk::moveStep(t, command);
                }).has_value());
    press(Qt::Key_Backspace);
    ASSERT_TRUE(becomes([&] {
        const QString said = here.window->message()->text();
        return said.contains(QStringLiteral("crosses")) && said.contains(QStringLiteral("look-over"));
    })) << here.window->message()->text().toStdString();
    ASSERT_TRUE(becomes([&] { return here.bench().card()->job.benchStep == BenchStep::Crosses; }));
}

} // namespace
} // namespace rw::ui::test
