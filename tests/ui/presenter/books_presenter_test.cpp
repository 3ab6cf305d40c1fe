// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/at_work.h"
#include "ui/presenter/earned_presenter.h"
#include "ui/presenter/open_matters_presenter.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/presenter/takings_presenter.h"
#include "ui/text/books_words.h"

namespace rw::ui::test {
namespace {

using namespace std::chrono;

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

class StillOpen : public AtWork {
protected:
    StillOpen() {
        QObject::connect(&open, &OpenMattersPresenter::refused, [this](const Refusal& refusal) { why = refusal; });
        QObject::connect(&open, &OpenMattersPresenter::paid,
                         [this](const desk::PaymentTaken& taken) { said << paymentTakenText(taken); });
        open.open();
    }
    const desk::OpenMatter& first() { return open.matters().front(); }
    std::size_t paymentsOf(JobId job) {
        return look([&](desk::Transaction& t) { return t.jobs().payments(job).size(); });
    }

    OpenMattersPresenter open{runner, shift};
    std::optional<Refusal> why;
    QStringList said;
};

TEST_F(StillOpen, OldestFirstAndWhatIsStillToBeDone) {
    ASSERT_FALSE(open.matters().empty());
    EXPECT_TRUE(std::ranges::is_sorted(open.matters(), {}, &desk::OpenMatter::strung));
    EXPECT_TRUE(openMatterText(first()).contains(QStringLiteral("not told"))) << openMatterText(first()).toStdString();
    open.tell(first().job.id, QStringLiteral("phone"));
    EXPECT_TRUE(openMatterText(first()).startsWith(QStringLiteral("told, not collected")));
    EXPECT_EQ(first().told, kThursday);
    EXPECT_FALSE(why);
}

TEST_F(StillOpen, APaymentThatIsPressedTwiceIsTakenOnce) {
    const JobId job = first().job.id;
    const auto before = paymentsOf(job);
    const OpenMattersPresenter::Payment payment{job, pounds(500), QStringLiteral("cash"), "sheet 1"};
    runner.held = true;
    open.pay(payment);
    open.pay(payment);
    runner.release();
    open.pay(payment); // the answer was lost, and somebody pressed again
    EXPECT_EQ(paymentsOf(job), before + 1);
    ASSERT_EQ(said.size(), 2);
    EXPECT_TRUE(said.last().contains(QStringLiteral("was taken before"))) << said.last().toStdString();
    EXPECT_EQ(first().paid, pounds(500));
}

TEST_F(StillOpen, WhatIsNoPaymentIsRefusedAndNothingIsTaken) {
    const JobId job = first().job.id;
    const auto before = paymentsOf(job);
    open.pay({job, pounds(0), QStringLiteral("cash"), "sheet 1"});
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ImpossibleValue);
    EXPECT_EQ(paymentsOf(job), before);
}

TEST_F(StillOpen, WhatIsTooMuchGoesBackAndNoMoreThanThat) {
    const JobId job = first().job.id;
    const Money total = first().total;
    open.pay({job, total + pounds(300), QStringLiteral("cash"), "sheet 1"});
    EXPECT_TRUE(openMatterText(first()).contains(QStringLiteral("£3.00 too much paid")));
    open.giveBack({job, pounds(301), QStringLiteral("cash"), "sheet 2"});
    ASSERT_TRUE(why) << "more than is theirs";
    EXPECT_EQ(why->code(), Code::ImpossibleValue);
    open.giveBack({job, pounds(300), QStringLiteral("cash"), "sheet 2"});
    EXPECT_EQ(first().paid, total);
}

TEST_F(StillOpen, APageThatNobodyLooksAtAsksNothing) {
    open.close();
    const int reads = runner.reads;
    shift.noteChange();
    EXPECT_EQ(runner.reads, reads);
    open.open();
    EXPECT_EQ(runner.reads, reads + 1);
}

class TakingsByDay : public AtWork {
protected:
    TakingsByDay() { takings.open(); }
    void pay(Money amount, const char* way) {
        OpenMattersPresenter open(runner, shift);
        open.open();
        open.pay({open.matters().front().job.id, amount, QString::fromLatin1(way), std::string("sheet ") + way});
    }

    TakingsPresenter takings{runner, shift};
};

TEST_F(TakingsByDay, BeginsTodayAndGoesBackAndForth) {
    EXPECT_EQ(takings.day(), CivilDate(2026y / March / 12));
    EXPECT_FALSE(takings.mayGoOn()) << "nothing is taken tomorrow yet";
    const Money month = takings.ofMonth()->total;
    pay(pounds(700), "transfer");
    EXPECT_EQ(takings.ofDay()->total, pounds(700)) << "what is written is read again";
    EXPECT_EQ(takings.ofMonth()->total, month + pounds(700));
    EXPECT_EQ(takings.ofDay()->byWay, (std::vector<std::pair<std::string, Money>>{{"transfer", pounds(700)}}));
    takings.goDays(-1);
    EXPECT_EQ(takings.day(), CivilDate(2026y / March / 11));
    EXPECT_TRUE(takings.mayGoOn());
    takings.goDays(1);
    takings.goDays(1);
    EXPECT_EQ(takings.day(), CivilDate(2026y / March / 12)) << "not beyond today";
}

TEST_F(TakingsByDay, AMonthBackKeepsTheDayWhereThereIsOne) {
    takings.goMonths(-1);
    EXPECT_EQ(takings.day(), CivilDate(2026y / February / 12));
    takings.goDays(19); // 3 March
    takings.goDays(-4); // 27 February
    EXPECT_EQ(takings.day(), CivilDate(2026y / February / 27));
    takings.goMonths(1);
    EXPECT_EQ(takings.day(), CivilDate(2026y / March / 12)) << "a month on would be beyond today";
    takings.goDays(-12); // 28 February
    takings.goMonths(-1);
    takings.goDays(3); // 31 January
    takings.goMonths(1);
    EXPECT_EQ(takings.day(), CivilDate(2026y / February / 28));
    takings.goToday();
    EXPECT_EQ(takings.day(), CivilDate(2026y / March / 12));
}

TEST_F(TakingsByDay, TheLastDayAskedForIsTheOneThatIsShown) {
    pay(pounds(700), "cash");
    runner.held = true;
    takings.goDays(-1);
    takings.goDays(1);
    runner.release();
    EXPECT_EQ(takings.ofDay()->total, pounds(700));
}

class OwnersEyes : public AtWork {
protected:
    OwnersEyes() {
        QObject::connect(&owner, &OwnerPresenter::wrongPin, [this] { ++wrong; });
        QObject::connect(&owner, &OwnerPresenter::refused, [this](const Refusal& refusal) { why = refusal; });
    }
    void setPin(const char* pin) { owner.change({}, QString::fromLatin1(pin)); }

    OwnerPresenter owner{runner, shift};
    EarnedPresenter earned{runner, shift, owner};
    int wrong = 0;
    std::optional<Refusal> why;
};

TEST_F(OwnersEyes, WithoutAPinTheMonthIsShownOnceTheLedgerHasSaidSo) {
    EXPECT_FALSE(owner.mayShow()) << "nobody knows yet";
    earned.open();
    EXPECT_FALSE(earned.earned());
    owner.refresh();
    EXPECT_TRUE(owner.mayShow());
    ASSERT_TRUE(earned.earned());
    EXPECT_EQ(earned.month(), CivilDate(2026y / March / 1));
    ASSERT_FALSE(earned.earned()->jobs.empty());
    EXPECT_FALSE(earned.mayGoOn());
    const auto march = earned.earned()->sum;
    earned.goMonths(-1);
    EXPECT_EQ(earned.month(), CivilDate(2026y / February / 1));
    EXPECT_NE(earned.earned()->sum, march);
    earned.goMonths(5);
    EXPECT_EQ(earned.month(), CivilDate(2026y / March / 1)) << "not beyond this month";
    EXPECT_EQ(earned.earned()->sum, march);
}

TEST_F(OwnersEyes, APinHidesUntilItIsGiven) {
    owner.refresh();
    setPin("4417");
    EXPECT_TRUE(owner.mayShow()) << "who set it sees what it hides";
    earned.open();
    EXPECT_TRUE(earned.earned());
    owner.hide();
    EXPECT_FALSE(owner.mayShow());
    EXPECT_FALSE(earned.earned()) << "nothing of it is kept";
    const int reads = runner.reads;
    earned.open();
    EXPECT_EQ(runner.reads, reads) << "and nothing is asked";
    owner.give(QStringLiteral("4418"));
    EXPECT_EQ(wrong, 1);
    EXPECT_FALSE(earned.earned());
    owner.give(QStringLiteral("4417"));
    EXPECT_EQ(wrong, 1);
    EXPECT_TRUE(earned.earned());
}

TEST_F(OwnersEyes, APinThatIsPressedTwiceIsLookedAtOnce) {
    owner.refresh();
    setPin("4417");
    owner.hide();
    runner.held = true;
    owner.give(QStringLiteral("0000"));
    owner.give(QStringLiteral("0000"));
    runner.release();
    EXPECT_EQ(wrong, 1);
}

TEST_F(OwnersEyes, OnlyWhoKnowsThePinChangesIt) {
    owner.refresh();
    setPin("123");
    ASSERT_TRUE(why) << "it is too short";
    EXPECT_FALSE(owner.hasPin());
    setPin("4417");
    ASSERT_TRUE(owner.hasPin());
    owner.change(QStringLiteral("0000"), QStringLiteral("9999"));
    EXPECT_EQ(wrong, 1);
    owner.change(QStringLiteral("0000"), std::nullopt);
    EXPECT_EQ(wrong, 2);
    EXPECT_TRUE(owner.hasPin());
    owner.change(QStringLiteral("4417"), std::nullopt);
    EXPECT_FALSE(owner.hasPin());
    EXPECT_TRUE(owner.mayShow());
}

TEST_F(OwnersEyes, APinThatAnotherStationSetIsAskedForHereToo) {
    owner.refresh();
    ASSERT_TRUE(owner.mayShow());
    OwnerPresenter elsewhere(runner, shift);
    elsewhere.change({}, QStringLiteral("4417"));
    EXPECT_FALSE(owner.mayShow());
}

TEST_F(OwnersEyes, ALedgerThatIsGoneWhileThePinIsLookedAtLetsItBeGivenAgain) {
    owner.refresh();
    setPin("4417");
    owner.hide();
    runner.world = HeldDeskRunner::World::LostBefore;
    owner.give(QStringLiteral("4417"));
    EXPECT_FALSE(owner.mayShow());
    EXPECT_FALSE(shift.trouble().isEmpty());
    runner.world = HeldDeskRunner::World::Whole;
    owner.give(QStringLiteral("4417"));
    EXPECT_TRUE(owner.mayShow());
}

} // namespace
} // namespace rw::ui::test
