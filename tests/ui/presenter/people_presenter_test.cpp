// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/at_work.h"
#include "ui/presenter/history_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/presenter/to_be_strung_presenter.h"
#include "ui/text/counter_words.h"

namespace rw::ui::test {
namespace {

class People : public AtWork {
protected:
    PersonPresenter person{runner, shift, kAtOnce};
    RacketPresenter racket{runner, shift, kAtOnce};

    void findAndPick(const char* text) {
        person.setText(QString::fromUtf8(text));
        ASSERT_EQ(person.found().size(), 1U) << text;
        person.pick(person.found().front());
        racket.setPerson(person.picked());
    }
};

TEST_F(People, AreFoundByTheLastDigitsOfTheirNumber) {
    person.setText(QStringLiteral("417"));
    ASSERT_EQ(person.found().size(), 1U);
    EXPECT_EQ(person.found().front().customer.name, "Petra Lindobi");
    EXPECT_TRUE(person.isSearched());
}

TEST_F(People, AnAnswerToAnOlderTextIsDropped) {
    runner.held = true;
    person.setText(QStringLiteral("petra"));
    person.setText(QStringLiteral("tomas"));
    EXPECT_FALSE(person.isSearched());
    runner.release();
    ASSERT_EQ(person.found().size(), 1U);
    EXPECT_EQ(person.found().front().customer.name, "Tomas Ferreday");
}

TEST_F(People, WhatIsInTheShopComesWithThePerson) {
    findAndPick("Castelmere");
    ASSERT_EQ(person.inTheShop().size(), 2U);
    for (const auto& entry : person.inTheShop()) {
        EXPECT_NE(entry.job.state, JobState::Collected);
    }
}

TEST_F(People, DigitsStartANumberAndWordsAName) {
    person.setText(QStringLiteral("07700 900999"));
    EXPECT_TRUE(person.newPersonFromText().name.empty());
    EXPECT_EQ(person.newPersonFromText().contacts.front().text, "07700 900999");
    person.setText(QStringLiteral("Zoë Marchbanks"));
    EXPECT_EQ(person.newPersonFromText().name, "Zoë Marchbanks");
    EXPECT_TRUE(person.newPersonFromText().contacts.empty());
}

TEST_F(People, SomebodyNewIsAddedOnceHoweverOftenEnterIsPressed) {
    runner.held = true;
    const Customer zoe{std::nullopt, "Zoë Marchbanks", {}, 0};
    person.add(zoe);
    person.add(zoe);
    runner.release();
    ASSERT_TRUE(person.picked());
    EXPECT_EQ(person.picked()->customer.name, "Zoë Marchbanks");
    EXPECT_EQ(look([](desk::Transaction& t) { return t.customers().find("marchbanks", 10); }).size(), 1U);
}

TEST_F(People, SomebodyWhoseAddingWasNeverAnsweredIsNotAddedTwice) {
    const Customer zoe{std::nullopt, "Zoë Marchbanks", {}, 0};
    runner.world = HeldDeskRunner::World::LostAfter; // committed, but nobody heard of it
    person.add(zoe);
    EXPECT_FALSE(person.picked());
    runner.world = HeldDeskRunner::World::Whole;
    person.add(zoe);
    ASSERT_TRUE(person.picked());
    racket.setPerson(person.picked());
    FrameModel frame;
    frame.name = "Fennel Prow 102";
    runner.world = HeldDeskRunner::World::LostAfter;
    racket.addNew(frame, "A");
    runner.world = HeldDeskRunner::World::Whole;
    racket.addNew(frame, "A");
    ASSERT_TRUE(racket.picked());
    EXPECT_EQ(racket.person()->rackets.size(), 1U);
    EXPECT_EQ(look([](desk::Transaction& t) { return t.customers().find("marchbanks", 10); }).size(), 1U);
    EXPECT_EQ(look([](desk::Transaction& t) { return t.frames().find("fennel prow", 10); }).size(), 1U);
}

TEST_F(People, NamesakesWithoutANumberAreTwoPeople) {
    const Customer zoe{std::nullopt, "Zoë Marchbanks", {}, 0};
    person.add(zoe);
    const auto first = person.picked()->customer.id;
    person.clear();
    person.add(zoe);
    EXPECT_NE(person.picked()->customer.id, first);
    EXPECT_EQ(look([](desk::Transaction& t) { return t.customers().find("marchbanks", 10); }).size(), 2U);
}

TEST_F(People, ANewFormIsNotTakenForOneWhoseAnswerWasLost) {
    person.setText(QStringLiteral("Zoë"));
    runner.world = HeldDeskRunner::World::LostAfter;
    person.add({std::nullopt, "Zoë Marchbanks", {}, 0});
    runner.world = HeldDeskRunner::World::Whole;
    person.setText(QStringLiteral("Ana"));
    person.add({std::nullopt, "Ana Marchbanks", {}, 0});
    ASSERT_TRUE(person.picked());
    EXPECT_EQ(person.picked()->customer.name, "Ana Marchbanks");
}

TEST_F(People, AreLookedForAtOnceWhenNoMoreLettersFollow) {
    PersonPresenter patient{runner, shift, std::chrono::hours(1)};
    RacketPresenter finder{runner, shift, std::chrono::hours(1)};
    patient.setText(QStringLiteral("417"));
    EXPECT_FALSE(patient.isSearched());
    patient.hurry();
    ASSERT_TRUE(patient.isSearched());
    EXPECT_EQ(patient.found().front().customer.name, "Petra Lindobi");
    finder.setPerson(patient.found().front());
    finder.setText(QStringLiteral("tarn"));
    EXPECT_FALSE(finder.isSearched());
    finder.hurry();
    EXPECT_TRUE(finder.isSearched());
}

TEST_F(People, ANameThatIsTooLongIsRefusedAndNothingIsPicked) {
    std::optional<Refusal> why;
    QObject::connect(&person, &PersonPresenter::addRefused, [&](const Refusal& refusal) { why = refusal; });
    person.add({std::nullopt, std::string(10'000, 'x'), {}, 0});
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::TooLong);
    EXPECT_FALSE(person.picked());
}

TEST_F(People, TwinsAreTwoChoicesAndAnOnlyRacketIsPickedAtOnce) {
    findAndPick("417");
    EXPECT_FALSE(racket.picked());
    ASSERT_EQ(racket.choices().size(), 2U);
    // B was here last.
    EXPECT_EQ(racket.choices()[0].own->racket.mark, "B");
    EXPECT_EQ(racket.choices()[1].own->racket.mark, "A");
    racket.pick(racket.choices()[1]);
    EXPECT_EQ(racket.picked()->lastJob->asked, (TensionPair{lb("54"), lb("52")})); // not B's 56/54
    findAndPick("Hallerby");
    ASSERT_TRUE(racket.picked());
    EXPECT_EQ(racket.picked()->frame.name, "Pellow Feather");
}

TEST_F(People, AKnownFrameIsAddedUnderTheNextMark) {
    findAndPick("417");
    racket.setText(QStringLiteral("aldermoor"));
    ASSERT_GE(racket.choices().size(), 3U);
    ASSERT_FALSE(racket.choices()[2].own);
    EXPECT_EQ(racket.choices()[2].frame.name, "Aldermoor 110");
    for (const auto& choice : racket.choices()) {
        if (!choice.own && choice.frame.name == "Aldermoor 98") {
            racket.pick(choice);
        }
    }
    ASSERT_TRUE(racket.picked());
    EXPECT_EQ(racket.picked()->racket.mark, "C");
    EXPECT_FALSE(racket.picked()->lastJob);
}

TEST_F(People, AFrameNobodyHasHeardOfTakesANameASportAndAPattern) {
    findAndPick("417");
    FrameModel frame;
    frame.name = "Fennel Prow 102";
    frame.pattern.mains = 18;
    frame.pattern.crosses = 20;
    racket.addNew(frame, "A");
    ASSERT_TRUE(racket.picked());
    EXPECT_EQ(racket.picked()->frame.name, "Fennel Prow 102");
    EXPECT_EQ(racket.person()->rackets.size(), 3U);
}

TEST_F(People, HistoryOfOneTwinIsNotTheOthers) {
    findAndPick("417");
    HistoryPresenter history{runner, shift};
    history.show({*racket.choices()[0].own->racket.id, QStringLiteral("Aldermoor 98 B")});
    ASSERT_FALSE(history.entries().empty());
    for (const auto& entry : history.entries()) {
        EXPECT_EQ(entry.mark, "B");
    }
}

TEST_F(People, ARacketIsHandedOverOnceWithWhatWasPaid) {
    RackPresenter rack{runner, shift};
    rack.refresh();
    ASSERT_FALSE(rack.lines().empty());
    const JobId job = rack.lines().front().id;
    const auto before = rack.lines().size();
    rack.open(job);
    ASSERT_TRUE(rack.opened());
    EXPECT_EQ(*rack.owed(), rack.opened()->total);
    int handed = 0;
    QObject::connect(&rack, &RackPresenter::handedOver, [&](const desk::HandedOver& done) {
        ++handed;
        EXPECT_EQ(done.job.state, JobState::Collected);
    });
    runner.held = true;
    const Money total = rack.opened()->total;
    rack.handOver(total, QStringLiteral("cash"), {});
    rack.handOver(total, QStringLiteral("cash"), {});
    runner.release();
    EXPECT_EQ(handed, 1);
    EXPECT_EQ(rack.lines().size(), before - 1);
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(job); }), total);
}

TEST_F(People, WhatWasPaidForAWithdrawnJobIsGivenBackOnce) {
    ToBeStrungPresenter jobs{runner, shift};
    jobs.refresh();
    const JobId job = jobs.lines().back().id;
    const desk::TakePayment deposit{"deposit", job, Money::fromMinor(2000, Currency::pounds()), "card",
                                    shift.by("counter")};
    ASSERT_TRUE(desk::inTransaction(ledger, desk::Access::Write,
                                    [&](desk::Transaction& t) { return desk::takePayment(t, deposit); }));
    QString said;
    QObject::connect(&jobs, &ToBeStrungPresenter::withdrawn,
                     [&](const Job& gone, const Money& paid) { said = withdrawnText(gone, paid); });
    jobs.withdraw(job);
    EXPECT_TRUE(said.contains(QStringLiteral("£20.00 was paid for it and is to be given back"))) << said.toStdString();

    RackPresenter rack{runner, shift};
    rack.refresh();
    rack.show(RackPresenter::Shows::Unpaid);
    ASSERT_EQ(rack.toGiveBack().size(), 1U);
    ASSERT_EQ(rack.lines().size(), rack.unpaid().size() + 1);
    rack.open(job);
    ASSERT_TRUE(rack.opened());
    EXPECT_EQ(*rack.owed(), -deposit.amount);
    QStringList given;
    QObject::connect(&rack, &RackPresenter::gaveBack,
                     [&](const desk::GivenBack& done) { given << gaveBackText(done); });
    runner.held = true;
    rack.giveBack(deposit.amount, QStringLiteral("cash"));
    rack.giveBack(deposit.amount, QStringLiteral("cash"));
    runner.release();
    EXPECT_EQ(given.size(), 1);
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(job); }).minor(), 0);
    EXPECT_TRUE(rack.toGiveBack().empty());
    EXPECT_FALSE(rack.opened());
}

TEST_F(People, ALateHandOverLeavesTheRacketThatWasOpenedMeanwhile) {
    RackPresenter rack{runner, shift};
    rack.refresh();
    ASSERT_GE(rack.lines().size(), 2U);
    const JobId next = rack.lines()[1].id;
    rack.open(rack.lines()[0].id);
    runner.held = true;
    rack.handOver(std::nullopt, {}, {});
    rack.close();
    rack.open(next);
    runner.release();
    ASSERT_TRUE(rack.opened());
    EXPECT_EQ(rack.opened()->id, next);
}

TEST_F(People, AHandOverIsTakenBackFromTheWindowThatMadeIt) {
    RackPresenter rack{runner, shift};
    EXPECT_FALSE(rack.bringBack()) << "nothing was handed over here";
    rack.refresh();
    const JobId job = rack.lines().front().id;
    const auto before = rack.lines().size();
    rack.open(job);
    rack.handOver(rack.opened()->total, QStringLiteral("cash"), {});
    ASSERT_EQ(rack.lines().size(), before - 1);
    runner.world = HeldDeskRunner::World::LostAfter; // done, but nobody heard of it
    EXPECT_TRUE(rack.bringBack());
    runner.world = HeldDeskRunner::World::Whole;
    EXPECT_TRUE(rack.bringBack());
    EXPECT_EQ(rack.lines().size(), before);
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(job); }).minor(), 0);
    EXPECT_FALSE(rack.bringBack());
}

TEST_F(People, WhoWasRemovedIsPickedNoMore) {
    findAndPick("Ferreday");
    const CustomerId id = *person.picked()->customer.id;
    QString name;
    QObject::connect(&person, &PersonPresenter::removed, [&](const QString& who) { name = who; });
    runner.held = true;
    person.remove();
    person.remove();
    runner.release();
    EXPECT_EQ(name, QStringLiteral("Tomas Ferreday"));
    EXPECT_FALSE(person.picked());
    EXPECT_TRUE(look([&](desk::Transaction& t) { return t.customers().get(id); })->removed);
}

TEST_F(People, OfTwoRacketsAskedForTheLastOneOpens) {
    RackPresenter rack{runner, shift};
    rack.refresh();
    ASSERT_GE(rack.lines().size(), 2U);
    runner.held = true;
    rack.open(rack.lines()[0].id);
    rack.open(rack.lines()[1].id);
    rack.close();
    runner.release();
    EXPECT_FALSE(rack.opened()) << "closed before the answer came";
}

} // namespace
} // namespace rw::ui::test
