// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"
#include "core/desk/stockroom.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/new_frame_form.h"
#include "ui/counter/new_person_form.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/rack_sheet.h"
#include "ui/counter/string_choice.h"
#include "ui/counter/to_be_strung_sheet.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/tension_edit.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSpinBox>

#include <algorithm>

namespace rw::ui::test {
namespace {

class Counter : public AtTheWindow {
protected:
    CounterStation& counter() { return *m_window->counter(); }
    IntakeSheet& sheet() { return *m_window->counter()->intake(); }
    RackSheet& rack() { return *m_window->counter()->rack(); }
    RackPresenter& rackPresenter() { return m_window->counter()->rackPresenter(); }

    void petra() {
        type("417");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
    }
    void petrasRacketA() {
        petra();
        press(Qt::Key_Down); // B was here last
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().racket().picked().has_value(); }));
    }
    void atTheRack() {
        press(Qt::Key_F8);
        ASSERT_TRUE(becomes([&] { return !rackPresenter().lines().empty() && rack().list()->hasFocus(); }));
        everythingAnswered();
    }
    /// With its first racket chosen: without a person none is.
    void atTheFirstOfTheRack() {
        atTheRack();
        EXPECT_EQ(rack().chosen(), nullptr);
        press(Qt::Key_Down);
        ASSERT_NE(rack().chosen(), nullptr);
    }
    /// What was asked of the ledger before is answered by then: its answers come in order.
    void everythingAnswered() {
        bool answered = false;
        ask(
            *m_runner, desk::Access::Read, m_window.get(), [](desk::Transaction&) { return Result<int>(0); },
            [&](const Result<int>&) { answered = true; }, [](const std::exception_ptr&) {});
        ASSERT_TRUE(becomes([&] { return answered; }));
    }
    void atTheJobs() {
        press(Qt::Key_F9);
        ASSERT_TRUE(becomes([&] { return jobList()->hasFocus() && counter().toBeStrung()->chosen() != nullptr; }));
        everythingAnswered();
    }
    QListView* jobList() { return counter().toBeStrung()->list(); }
    /// Another station withdraws the job, and this one hears of it.
    void elsewhereWithdrawn(JobId id) {
        const int before = jobList()->model()->rowCount();
        ASSERT_TRUE(desk::inTransaction(*m_ledger, desk::Access::Write, [&](desk::Transaction& t) {
                        return desk::withdrawJob(t, {id, {*t.shop().staff().front().id, "bench", kThursday}});
                    }).has_value());
        m_shift->noteChange();
        ASSERT_TRUE(becomes([&] { return jobList()->model()->rowCount() == before - 1; }));
    }
    QString paymentNote() {
        for (auto* note : rack().findChildren<MarginNote*>()) {
            if (note->text().contains(QStringLiteral("total"))) {
                return note->text();
            }
        }
        return {};
    }
};

TEST_F(Counter, MashingEnterAtTheRackHandsOverOneRacketAndNoOther) {
    const auto before = jobs(JobState::Strung).size();
    ASSERT_GE(before, 2U);
    atTheFirstOfTheRack();
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    press(Qt::Key_Return);
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Return);
    }
    ASSERT_TRUE(saysSoon(QStringLiteral("Handed over ")));
    ASSERT_TRUE(becomes([&] { return rackPresenter().lines().size() == before - 1; }));
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Return);
        everythingAnswered();
        EXPECT_FALSE(rack().isOpen());
    }
    EXPECT_EQ(jobs(JobState::Strung).size(), before - 1);
    press(Qt::Key_Down); // choosing is what arms it again
    press(Qt::Key_Return);
    EXPECT_TRUE(becomes([&] { return rack().isOpen(); }));
}

TEST_F(Counter, TheRackOfSomebodyWithNothingOnItOpensNobodyElses) {
    petra(); // nothing of hers is strung
    atTheRack();
    press(Qt::Key_Return);
    everythingAnswered();
    EXPECT_FALSE(rack().isOpen());
}

TEST_F(Counter, MovingOnClosesTheRacketThatWasOpen) {
    atTheFirstOfTheRack();
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    rack().list()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_Down);
    EXPECT_FALSE(rack().isOpen());
}

TEST_F(Counter, TooMuchIsSaidBeforeItIsTaken) {
    atTheFirstOfTheRack();
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    const JobId job = *rackPresenter().opened()->id;
    const Money total = rackPresenter().opened()->total;
    type(std::to_string(total.minor() / 100 + 2).c_str());
    EXPECT_TRUE(paymentNote().contains(QStringLiteral("too much"))) << paymentNote().toStdString();
    press(Qt::Key_Return);
    everythingAnswered();
    EXPECT_TRUE(rack().isOpen());
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(job); }).minor(), 0);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is in the customer's favour.")));
    EXPECT_GT(look([&](desk::Transaction& t) { return t.jobs().paid(job); }).minor(), total.minor());
}

TEST_F(Counter, TheKeysOfTheRackAreItsOwn) {
    const auto keys = [&] {
        for (const auto* label : m_window->findChildren<QLabel*>()) {
            if (label->accessibleName() == QStringLiteral("Keys")) {
                return label->text();
            }
        }
        return QString();
    };
    ASSERT_TRUE(keys().contains(QStringLiteral("as last time")));
    atTheRack();
    EXPECT_FALSE(keys().contains(QStringLiteral("as last time"))) << keys().toStdString();
    EXPECT_FALSE(keys().contains(QStringLiteral("log it"))) << keys().toStdString();
    press(Qt::Key_Escape);
    EXPECT_TRUE(keys().contains(QStringLiteral("as last time")));
}

TEST_F(Counter, EnterGoesOnAndLogsInTheLastField) {
    petrasRacketA();
    press(Qt::Key_F5);
    ASSERT_TRUE(sheet().mainsTension()->hasFocus());
    press(Qt::Key_Return);
    EXPECT_TRUE(sheet().crossesTension()->hasFocus());
    for (int i = 0; i < 12 && !sheet().note()->hasFocus(); ++i) {
        press(Qt::Key_Return);
    }
    ASSERT_TRUE(sheet().note()->hasFocus());
    press(Qt::Key_Return);
    EXPECT_TRUE(saysSoon(QStringLiteral("Logged 2129")));
}

TEST_F(Counter, AltAndALetterGoToTheirLine) {
    petrasRacketA();
    const struct {
        Qt::Key key;
        const QWidget* line;
    } cases[] = {{Qt::Key_P, sheet().personFinder()->focusProxy()},
                 {Qt::Key_R, sheet().racketFinder()->focusProxy()},
                 {Qt::Key_M, sheet().mains()->focusProxy()},
                 {Qt::Key_C, sheet().crosses()->focusProxy()},
                 {Qt::Key_T, sheet().mainsTension()},
                 {Qt::Key_N, sheet().note()}};
    for (const auto& c : cases) {
        press(c.key, Qt::AltModifier);
        EXPECT_EQ(whereTheKeyboardIs(), c.line) << static_cast<char>(c.key);
        press(Qt::Key_Escape);
    }
}

TEST_F(Counter, F5TakesTheRacketThatIsMarked) {
    petra();
    ASSERT_TRUE(becomes([&] { return sheet().racketFinder()->highlighted().has_value(); }));
    press(Qt::Key_F5);
    ASSERT_TRUE(counter().racket().picked());
    EXPECT_EQ(counter().intakePresenter().form().mainsTension, counter().racket().picked()->lastJob->asked.mains);
}

TEST_F(Counter, F5TakesThePersonWhoIsMarkedFurtherDownTheListToo) {
    // Somebody with one racket that was strung here, not the first of the list: who is looked up when they are picked.
    const auto row = look([](desk::Transaction& work) {
        const auto listed = desk::listPeople(work, "a");
        for (std::size_t i = 1; i < listed->size(); ++i) {
            const auto whole = desk::person(work, *listed->at(i).customer.id);
            if (whole->rackets.size() == 1 && whole->rackets.front().lastJob) {
                return static_cast<int>(i);
            }
        }
        return 0;
    });
    ASSERT_GT(row, 0);
    type("a");
    ASSERT_TRUE(becomes([&] { return sheet().personFinder()->highlighted() == 0; }));
    for (int i = 0; i < row; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_F5);
    ASSERT_TRUE(becomes([&] { return counter().intakePresenter().form().mainsTension.has_value(); }));
    ASSERT_TRUE(counter().racket().picked());
    EXPECT_EQ(counter().intakePresenter().form().mainsTension, counter().racket().picked()->lastJob->asked.mains);
    EXPECT_EQ(sheet().personNote()->text().indexOf(QStringLiteral("✕")), -1);
}

TEST_F(Counter, F5SaysSoOfATwinThatWasNeverStrungHere) {
    petra();
    type("aldermoor 98");
    ASSERT_TRUE(becomes([&] { return sheet().racketFinder()->highlighted().has_value(); }));
    press(Qt::Key_Down);
    press(Qt::Key_Down); // after her two: another one, which becomes C
    press(Qt::Key_Return);
    ASSERT_TRUE(
        becomes([&] { return counter().racket().picked() && counter().racket().picked()->racket.mark == "C"; }));
    press(Qt::Key_F5);
    EXPECT_TRUE(sheet().racketNote()->text().startsWith(QStringLiteral("✕ there is no last time for this racket")))
        << sheet().racketNote()->text().toStdString();

    press(Qt::Key_N, Qt::ControlModifier);
    petra();
    ASSERT_TRUE(becomes([&] { return sheet().racketFinder()->highlighted().has_value(); }));
    press(Qt::Key_Down);
    press(Qt::Key_Down); // A, B, and the one that never was here
    press(Qt::Key_F5);
    ASSERT_TRUE(counter().racket().picked());
    EXPECT_EQ(counter().racket().picked()->racket.mark, "C");
    EXPECT_TRUE(sheet().racketNote()->isVisible());
    EXPECT_TRUE(sheet().racketNote()->text().startsWith(QStringLiteral("✕ there is no last time for this racket")))
        << sheet().racketNote()->text().toStdString();
}

TEST_F(Counter, F5WithNobodyPickedSaysWhatComesFirst) {
    press(Qt::Key_F5);
    EXPECT_TRUE(sheet().personNote()->text().startsWith(QStringLiteral("✕ ")));
    EXPECT_EQ(whereTheKeyboardIs(), sheet().personFinder()->focusProxy());
    type("somebody nobody knows");
    ASSERT_TRUE(becomes([&] { return sheet().personFinder()->highlighted().has_value(); }));
    press(Qt::Key_F5);
    EXPECT_FALSE(sheet().newPerson()->isVisible()) << "nobody is added by a key that repeats";
}

TEST_F(Counter, ANoteThatComesAlongIsSaidToBeFromLastTime) {
    petrasRacketA();
    press(Qt::Key_F5);
    const auto says = [&](const char* words) {
        for (const auto* note : sheet().findChildren<MarginNote*>()) {
            if (note->text().contains(QString::fromUtf8(words))) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(says("from last time"));
    sheet().note()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_End);
    type("!");
    EXPECT_FALSE(says("from last time"));
}

TEST_F(Counter, ANewSheetKeepsNothingOfTheLastPerson) {
    petrasRacketA();
    press(Qt::Key_F5);
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_FALSE(counter().person().picked());
    EXPECT_FALSE(counter().racket().picked());
    EXPECT_FALSE(counter().intakePresenter().form().mainsTension);
    EXPECT_TRUE(sheet().note()->text().isEmpty());
    EXPECT_TRUE(sheet().mainsTension()->isBlank());
    EXPECT_FALSE(sheet().racketNote()->text().contains(QStringLiteral("54/52")));

    type("zoe");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return sheet().newPerson()->phone()->hasFocus(); }));
    type("07700");
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_FALSE(sheet().newPerson()->isVisible());
    EXPECT_TRUE(sheet().newPerson()->name()->text().isEmpty());
    EXPECT_TRUE(sheet().newPerson()->phone()->text().isEmpty());

    petra(); // two rackets, none picked
    press(Qt::Key_Escape);
    press(Qt::Key_F5);
    EXPECT_TRUE(sheet().racketNote()->text().contains(QStringLiteral("✕")));
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_FALSE(sheet().racketNote()->text().contains(QStringLiteral("✕")))
        << sheet().racketNote()->text().toStdString();
}

TEST_F(Counter, ExtrasStayInViewWhenTheShopIsReadAgain) {
    petrasRacketA();
    press(Qt::Key_F5);
    const auto extra = [&] { return sheet().findChild<QSpinBox*>(); };
    ASSERT_NE(extra(), nullptr);
    extra()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    ASSERT_EQ(counter().intakePresenter().form().extras.front().second, 2);
    desk::ShopFacts shop = m_shift->shop();
    shop.staff.front().name += " junior";
    m_shift->setShop(shop);
    ASSERT_TRUE(becomes([&] { return extra()->isVisible(); }));
    EXPECT_EQ(extra()->value(), 2);
    EXPECT_EQ(counter().intakePresenter().form().extras.front().second, 2);
    extra()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_TRUE(counter().intakePresenter().form().extras.empty());
}

TEST_F(Counter, ACustomersOwnSetIsJudgedByItsLength) {
    petrasRacketA();
    press(Qt::Key_F5);
    sheet().mains()->setFocus(Qt::OtherFocusReason);
    EXPECT_FALSE(sheet().mains()->setLength()->isVisible());
    press(Qt::Key_Tab);
    type("cust");
    ASSERT_TRUE(sheet().mains()->setLength()->isVisible());
    press(Qt::Key_Tab);
    ASSERT_TRUE(sheet().mains()->setLength()->hasFocus());
    type("15 m");
    EXPECT_EQ(sheet().crosses()->source(), PieceSource::CustomersSet) << "the same string comes from the same place";
    EXPECT_TRUE(becomes([&] { return sheet().mainsNote()->text().contains(QStringLiteral("15 m are enough")); }))
        << sheet().mainsNote()->text().toStdString();
    press(Qt::Key_A, Qt::ControlModifier);
    type("6 m");
    EXPECT_TRUE(becomes([&] { return sheet().mainsNote()->text().contains(QStringLiteral("▲")); }));
    EXPECT_TRUE(sheet().mainsNote()->text().contains(QStringLiteral("not enough")));
    EXPECT_TRUE(sheet().outcome()->promiseWords().startsWith(QStringLiteral("not enough string; with enough, ready ")))
        << sheet().outcome()->promiseWords().toStdString();
    press(Qt::Key_A, Qt::ControlModifier);
    type("abc");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(sheet().mainsNote()->text().startsWith(QStringLiteral("✕ ")));
    EXPECT_TRUE(sheet().mains()->setLength()->hasFocus());
}

TEST_F(Counter, ACustomersOwnReelCanBeChosen) {
    const auto received = desk::inTransaction(*m_ledger, desk::Access::Write, [](desk::Transaction& t) {
        const Customer petra = t.customers().find("lindobi", 1).front();
        const auto articles = t.strings().all();
        const auto l = std::ranges::find(articles, "L", &StringArticle::code);
        const Money nothing = Money::zero(Currency::pounds());
        return desk::receiveLot(t, {"P-1",
                                    *l->id,
                                    LotKind::Reel,
                                    petra.id,
                                    metres(100),
                                    nothing,
                                    nothing,
                                    "",
                                    {*t.shop().staff().front().id, "stockroom", kThursday}});
    });
    ASSERT_TRUE(received);
    petrasRacketA();
    press(Qt::Key_F5);
    sheet().mains()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_Tab);
    type("cust");
    EXPECT_EQ(sheet().mains()->source(), PieceSource::CustomersLot);
    EXPECT_TRUE(becomes([&] { return sheet().outcome()->planText().contains(QStringLiteral("off P-1")); }))
        << sheet().outcome()->planText().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged 2129")));
    const Job logged = job(jobs(JobState::Logged).back().id);
    EXPECT_EQ(logged.pieces.front().source, PieceSource::CustomersLot);
    EXPECT_EQ(logged.pieces.front().lot, received->id);
}

TEST_F(Counter, AJobWaitsGoesOnAndIsWithdrawnByKey) {
    petrasRacketA();
    press(Qt::Key_F5);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged 2129")));
    const JobId id = jobs(JobState::Logged).back().id;
    petra();
    press(Qt::Key_F9);
    ASSERT_TRUE(becomes([&] { return counter().toBeStrung()->list()->hasFocus(); }));
    everythingAnswered();
    press(Qt::Key_W);
    type("a call back");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2129 waits now: a call back.")));
    EXPECT_EQ(job(id).state, JobState::Waiting);
    everythingAnswered();
    press(Qt::Key_G);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2129 goes on.")));
    everythingAnswered();
    press(Qt::Key_X);
    press(Qt::Key_Escape);
    everythingAnswered();
    EXPECT_EQ(job(id).state, JobState::Logged) << "asked, and kept";
    press(Qt::Key_X);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job 2129 is withdrawn")));
    EXPECT_EQ(job(id).state, JobState::Withdrawn);
    everythingAnswered();
    press(Qt::Key_X);
    press(Qt::Key_Return);
    everythingAnswered();
    EXPECT_EQ(jobs(JobState::Withdrawn).size(), 1U) << "no other job is taken for it";
    press(Qt::Key_Escape);
    EXPECT_TRUE(sheet().isVisible());
}

TEST_F(Counter, WhatWasPaidForAJobThatIsWithdrawnIsSaidAndGivenBack) {
    atTheJobs();
    const JobId id = counter().toBeStrung()->chosen()->id;
    const desk::TakePayment deposit{"deposit", id, Money::fromMinor(2000, Currency::pounds()), "card",
                                    m_shift->by("counter")};
    ASSERT_TRUE(desk::inTransaction(*m_ledger, desk::Access::Write,
                                    [&](desk::Transaction& t) { return desk::takePayment(t, deposit); }));
    press(Qt::Key_X);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("£20.00 was paid for it and is to be given back (F7).")));

    press(Qt::Key_F7);
    ASSERT_TRUE(becomes([&] { return rackPresenter().toGiveBack().size() == 1U; }));
    press(Qt::Key_Down);
    ASSERT_TRUE(becomes([&] { return rack().chosen() != nullptr && rack().chosen()->id == id; }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    EXPECT_EQ(rack().paid()->readable(), deposit.amount) << "all of it is proposed";
    type("25");
    press(Qt::Key_Return);
    everythingAnswered();
    EXPECT_TRUE(rack().isOpen()) << "more than is theirs";
    rack().paid()->setFocus(Qt::OtherFocusReason);
    press(Qt::Key_A, Qt::ControlModifier);
    type("15");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(
        saysSoon(QStringLiteral("Given back £15.00 for job %1. £5.00 is still to be given back.").arg(job(id).number)));
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(id); }).minor(), 500)
        << "pressed twice, given once";
}

TEST_F(Counter, WhoeverTypesWhatAJobWaitsForIsNotDisturbedByAnotherStation) {
    atTheJobs();
    const desk::JobLine asked = *counter().toBeStrung()->chosen();
    const JobId other = jobs(JobState::Logged).back().id;
    ASSERT_NE(other, asked.id);
    QLineEdit* whatFor = counter().toBeStrung()->whatFor();
    press(Qt::Key_W);
    type("a string from ");
    elsewhereWithdrawn(other);
    ASSERT_TRUE(whatFor->hasFocus());
    type("Genoa");
    EXPECT_EQ(whatFor->text(), QStringLiteral("a string from Genoa"));
    press(Qt::Key_Return);
    EXPECT_TRUE(saysSoon(QStringLiteral("Job %1 waits now: a string from Genoa.").arg(asked.number)));
    EXPECT_EQ(job(asked.id).state, JobState::Waiting);
}

TEST_F(Counter, AQuestionAboutAJobThatIsGoneIsAskedNoMore) {
    atTheJobs();
    const JobId asked = counter().toBeStrung()->chosen()->id;
    press(Qt::Key_W);
    ASSERT_TRUE(counter().toBeStrung()->whatFor()->isVisible());
    elsewhereWithdrawn(asked);
    EXPECT_FALSE(counter().toBeStrung()->whatFor()->isVisible());
    EXPECT_EQ(counter().toBeStrung()->chosen(), nullptr) << "no other job is taken for it";
}

TEST_F(Counter, AJobThatLiesOnAMachineGoesOnAlreadyWhichIsSaid) {
    atTheJobs();
    for (int i = 0; i < jobList()->model()->rowCount(); ++i) {
        if (counter().toBeStrung()->chosen()->state == JobState::OnTheMachine) {
            break;
        }
        press(Qt::Key_Down);
    }
    const desk::JobLine onIt = *counter().toBeStrung()->chosen();
    ASSERT_EQ(onIt.state, JobState::OnTheMachine);
    press(Qt::Key_G);
    EXPECT_TRUE(saysSoon(QStringLiteral("Job %1 is on the machine").arg(onIt.number)));
    EXPECT_FALSE(counter().toBeStrung()->whatFor()->isVisible());
    EXPECT_FALSE(counter().toBeStrung()->withdrawButton()->isVisible());
}

TEST_F(Counter, ANameThatIsTooLongIsSaidBesideItAndStaysWhole) {
    const QString name = QStringLiteral("Zed ") + QString(220, QLatin1Char('z'));
    auto* line = sheet().personFinder()->findChild<QLineEdit*>();
    type(name.toUtf8().constData());
    EXPECT_EQ(line->text(), name);
    EXPECT_TRUE(sheet().personNote()->text().contains(QStringLiteral("too long")))
        << sheet().personNote()->text().toStdString();
}

} // namespace
} // namespace rw::ui::test
