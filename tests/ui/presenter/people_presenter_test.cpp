// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/at_work.h"
#include "ui/presenter/history_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"

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
    EXPECT_EQ(racket.choices()[0].own->racket.mark, "A");
    EXPECT_EQ(racket.choices()[1].own->racket.mark, "B");
    racket.pick(racket.choices()[0]);
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
    history.show({*racket.choices()[1].own->racket.id, QStringLiteral("Aldermoor 98 B")});
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
    QObject::connect(&rack, &RackPresenter::handedOver,
                     [&](const Job& done, const Money&, const std::optional<Money>&) {
                         ++handed;
                         EXPECT_EQ(done.state, JobState::Collected);
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

} // namespace
} // namespace rw::ui::test
