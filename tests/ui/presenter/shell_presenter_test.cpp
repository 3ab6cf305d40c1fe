// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/at_work.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/history_presenter.h"
#include "ui/presenter/shell_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/text/bench_words.h"
#include "ui/text/shell_words.h"

namespace rw::ui::test {
namespace {

class Shell : public AtWork {
protected:
    Shell() {
        QObject::connect(&shell, &ShellPresenter::foundOnMachines,
                         [this](const std::vector<desk::JobCard>& cards) { found = cards; });
    }
    ShellPresenter shell{runner, shift};
    std::vector<desk::JobCard> found;
};

// Scenario 6: after a restart the first screen says whether the piece is cut, and what the reel holds.
TEST_F(Shell, SaysOfTheRacketOnTheMachineWhetherItIsCut) {
    shell.lookAtMachines();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(foundOnMachineText(found.front()),
              QStringLiteral("Job 2122, Ivo Castelmere, Aldermoor 98 A, is on Bench A; one piece: not cut, L-3 holds "
                             "48.7 m."));
    BenchPresenter bench{runner, shift};
    bench.refresh();
    bench.confirmCut(bench.inHand(*bench.nextToCut()), std::nullopt, metres(10.8), std::nullopt);
    shell.lookAtMachines();
    EXPECT_EQ(foundOnMachineText(found.front()),
              QStringLiteral("Job 2122, Ivo Castelmere, Aldermoor 98 A, is on Bench A; one piece: cut, 10.8 m off L-3, "
                             "which now holds 37.9 m."));
}

// A clock that was set back by days would put what is written today before what was written already.
TEST_F(Shell, SaysWhatTheClockHasNotComeTo) {
    std::optional<Instant> ahead;
    QObject::connect(&shell, &ShellPresenter::foundAhead, [&](Instant moment) { ahead = moment; });
    shell.lookAtClock();
    EXPECT_FALSE(ahead);
    const auto newest = [&] {
        Instant last{};
        for (const auto& line : look([](desk::Transaction& t) { return t.jobs().inStates({JobState::Logged}); })) {
            last = std::max(last, line.logged);
        }
        return last;
    }();
    for (const auto& [before, said] : {std::pair(std::chrono::hours(20), false), {std::chrono::hours(72), true}}) {
        const FixedClock late{kThursday - before};
        Shift behind{late};
        ShellPresenter there{runner, behind};
        QObject::connect(&there, &ShellPresenter::foundAhead, [&](Instant moment) { ahead = moment; });
        there.lookAtClock();
        EXPECT_EQ(ahead.has_value(), said);
    }
    EXPECT_EQ(clockIsBehindText(kThursday, kThursday - std::chrono::hours(72), QTimeZone::utc()),
              QStringLiteral("This computer's clock says 9 March 2026, and the ledger holds what was written on 12 March "
                             "2026. If the clock is wrong, put it right before you go on."));
    EXPECT_GE(*ahead, newest);
    EXPECT_LE(*ahead, kThursday);
}

TEST_F(Shell, AnEmptyLedgerIsSetUpOnceAndThenHasEverythingAJobNeeds) {
    desk::test::FakeLedger empty;
    HeldDeskRunner onEmpty{empty};
    Shift nobody{clock};
    ShellPresenter first{onEmpty, nobody};
    first.refresh();
    ASSERT_TRUE(nobody.hasShop());
    EXPECT_TRUE(nobody.shop().isNew());
    EXPECT_FALSE(nobody.staff());
    std::optional<Refusal> why;
    QObject::connect(&first, &ShellPresenter::setUpRefused, [&](const Refusal& refusal) { why = refusal; });
    desk::NewShop shop{.name = "Harbour Lane Strings",
                       .timeZone = "Europe/London",
                       .person = "  ",
                       .machine = "Bench A",
                       .unit = TensionUnit::Kilogram,
                       .stepHundredths = 25,
                       .labour = Money::fromMinor(1400, Currency::pounds()),
                       .ownStringLabour = std::nullopt,
                       .rush = std::nullopt};
    first.setUpShop(shop);
    ASSERT_TRUE(why) << "somebody must work here";
    EXPECT_EQ(why->code(), Code::Missing);
    EXPECT_TRUE(empty.rows.machines.empty()) << "nothing half done";
    shop.person = "Oriel Tamm";
    const Currency euro = *Currency::fromCode("EUR");
    shop.labour = Money::fromMinor(1400, euro);
    shop.rush = Money::fromMinor(500, Currency::pounds());
    first.setUpShop(shop);
    EXPECT_EQ(why->code(), Code::CurrencyMismatch) << "one money for all of it";
    EXPECT_EQ(empty.rows.currency, Currency::pounds()) << "nothing half done";
    shop.rush = Money::fromMinor(500, euro);
    first.setUpShop(shop);
    EXPECT_EQ(nobody.shop().currency, euro);
    EXPECT_FALSE(nobody.shop().isNew());
    EXPECT_EQ(nobody.staffName(*nobody.staff()), QStringLiteral("Oriel Tamm"));
    EXPECT_EQ(nobody.usualUnit(), TensionUnit::Kilogram);
    EXPECT_EQ(nobody.shop().timeZone, "Europe/London");
    why.reset();
    first.setUpShop(shop);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ImpossibleValue);
    EXPECT_EQ(empty.rows.staff.size(), 1U);
}

TEST_F(Shell, WhoWorksStaysChosenWhileTheyAreThere) {
    const StaffId second = *shift.shop().staff[1].id;
    shift.setStaff(second);
    shell.refresh();
    EXPECT_EQ(shift.staff(), second);
    EXPECT_EQ(shift.by("bench").staff, second);
    EXPECT_EQ(shift.by("bench").at, kThursday);
}

TEST_F(Shell, WhoLeftWorksNoMoreButIsStillNamed) {
    const StaffId second = *shift.shop().staff[1].id;
    const MachineId bench = *shift.shop().machines.front().id;
    const StringArticleId string = *shift.shop().strings.front().id;
    shift.setStaff(second);
    shift.setMachine(bench);
    ledger.rows.staff[1].retired = true;
    for (auto& machine : ledger.rows.machines) {
        machine.retired = machine.id == bench;
    }
    for (auto& article : ledger.rows.articles) {
        article.retired = article.id == string;
    }
    shell.refresh();
    EXPECT_FALSE(shift.staff());
    EXPECT_NE(shift.machine(), bench);
    EXPECT_EQ(shift.staffName(second), QStringLiteral("Bastian Quill"));
    EXPECT_EQ(shift.machineName(bench), QStringLiteral("Bench A"));
    ASSERT_NE(shift.article(string), nullptr);
    EXPECT_TRUE(shift.article(string)->retired);
}

TEST_F(Shell, WhoeverWorksAloneIsNotAsked) {
    auto alone = facts();
    alone.staff.resize(1);
    Shift one{clock};
    one.setShop(alone);
    EXPECT_EQ(one.staff(), alone.staff.front().id);
}

TEST_F(Shell, AFullDiskIsNotForgottenBecauseTheLedgerCanStillBeRead) {
    shift.noteTrouble(desk::Access::Write, std::make_exception_ptr(LedgerFull("no room")));
    EXPECT_FALSE(shift.isCutOff());
    shell.refresh();
    EXPECT_FALSE(shift.trouble().isEmpty());
    shift.noteAnswer(desk::Access::Write);
    EXPECT_TRUE(shift.trouble().isEmpty());
}

TEST_F(Shell, ALedgerThatIsBackIsReadAgainByEverybody) {
    BenchPresenter bench{runner, shift};
    runner.world = HeldDeskRunner::World::LostBefore;
    bench.refresh();
    EXPECT_TRUE(shift.isCutOff());
    EXPECT_FALSE(bench.isLoaded());
    runner.world = HeldDeskRunner::World::Whole;
    shell.refresh();
    EXPECT_FALSE(shift.isCutOff());
    EXPECT_TRUE(bench.isLoaded());
}

TEST_F(Shell, WhatSomebodyElseWroteIsReadByEverybody) {
    BenchPresenter bench{runner, shift};
    bench.refresh();
    const int before = runner.reads;
    runner.somebodyElseWrote();
    EXPECT_GT(runner.reads, before);
}

// The window closes on this: what was refused or lost must be read first.
TEST_F(Shell, WhetherAllWasWrittenIsToldOnceNothingIsUnderWay) {
    std::vector<bool> told;
    QObject::connect(&shift, &Shift::allAnswered, [&told](bool written) { told.push_back(written); });
    shift.commandGiven();
    shift.commandGiven();
    shift.commandAnswered(false);
    EXPECT_TRUE(told.empty());
    shift.commandAnswered(true);
    EXPECT_EQ(told, std::vector<bool>{false});
    shift.commandGiven();
    shift.commandAnswered(true);
    EXPECT_EQ(told, (std::vector<bool>{false, true})) << "what was lost before does not count for ever";
}

TEST_F(Shell, ARefusedCommandIsAnsweredButNotWritten) {
    std::vector<bool> told;
    QObject::connect(&shift, &Shift::allAnswered, [&told](bool written) { told.push_back(written); });
    StockroomPresenter stockroom{runner, shift};
    stockroom.correct(LotId::of(999999), metres(1));
    EXPECT_EQ(told, std::vector<bool>{false});
}

// Nothing was ever strung on the racket of a job that is not there: that is no empty history.
TEST_F(Shell, AHistoryThatIsRefusedSaysWhy) {
    HistoryPresenter history{runner, shift};
    history.show({JobId::of(999999), QStringLiteral("nobody's")});
    EXPECT_TRUE(history.isLoaded());
    ASSERT_TRUE(history.refusal());
    EXPECT_EQ(history.refusal()->code(), Code::NotFound);
    const auto queue = look([](desk::Transaction& t) { return t.jobs().inStates({JobState::Logged}); });
    history.show({queue.front().id, QStringLiteral("somebody's")});
    EXPECT_FALSE(history.refusal());
    EXPECT_FALSE(history.entries().empty());
}

} // namespace
} // namespace rw::ui::test
