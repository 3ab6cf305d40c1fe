// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/at_work.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"

namespace rw::ui::test {
namespace {

class Intake : public AtWork {
protected:
    Intake() { intake.refresh(); }

    void onTheCounter(const char* person, std::string_view mark) {
        PersonPresenter finder{runner, shift, kAtOnce};
        finder.setText(QString::fromUtf8(person));
        for (const auto& racket : finder.found().front().rackets) {
            if (racket.racket.mark == mark) {
                intake.setRacket(racket);
            }
        }
    }
    std::size_t jobsInTheLedger() { return ledger.rows.jobs.size(); }
    IntakeForm with(const char* mains, const char* crosses) {
        IntakeForm form = intake.form();
        form.mainsTension = lb(mains);
        form.crossesTension = lb(crosses);
        return form;
    }

    IntakePresenter intake{runner, shift, kAtOnce};
};

// Scenario 1: the numbers are the shop's own.
TEST_F(Intake, AsLastTimeTwoPoundsLooser) {
    onTheCounter("417", "A");
    ASSERT_TRUE(intake.canRepeat(IntakePresenter::Repeat::AsAsked));
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    EXPECT_EQ(intake.form().mains, string("L"));
    EXPECT_EQ(intake.form().mainsTension, lb("54"));
    EXPECT_EQ(intake.form().crossesTension, lb("52"));
    EXPECT_EQ(intake.form().note, QStringLiteral("felt a touch stiff"));
    intake.setForm(with("52", "50"));
    ASSERT_TRUE(intake.preview());
    const auto& piece = intake.preview()->pieces.front();
    EXPECT_EQ(piece.cut, metres(10.8));
    EXPECT_EQ(piece.lot->tag, "L-3");
    EXPECT_EQ(piece.leavesOnLot, metres(5.5));
    EXPECT_EQ(piece.holding.free(), metres(16.3));
    EXPECT_EQ(intake.preview()->quote.total, Money::fromMinor(3000, Currency::pounds()));
}

TEST_F(Intake, AsStrungTakesWhatTheMachineDid) {
    onTheCounter("Hallerby", ""); // asked 24/26 lb, strung 10.5/11.5 kg
    intake.repeatLast(IntakePresenter::Repeat::AsStrung);
    EXPECT_EQ(intake.form().mainsTension->unit(), TensionUnit::Kilogram);
    EXPECT_EQ(intake.form().mainsTension->hundredths(), 1050);
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    EXPECT_EQ(intake.form().mainsTension, lb("24"));
}

TEST_F(Intake, OneNumberIsUnderstoodAsTheShopStringsIt) {
    EXPECT_EQ(intake.crossesOfOne(lb("28")), lb("28")) << "no racket yet";
    onTheCounter("Hallerby", "");
    EXPECT_EQ(intake.crossesOfOne(lb("28")), lb("30"));
    onTheCounter("Penhallow", "A");
    EXPECT_EQ(intake.crossesOfOne(lb("26")), lb("26")) << "squash";
}

TEST_F(Intake, AYesIsToTheTensionsThatWereShownAndGoesWithItsJob) {
    onTheCounter("Hallerby", "");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    intake.setForm(with("28", "30"));
    IntakeForm form = intake.form();
    form.agreed = true;
    form.agreedBy = QStringLiteral("his coach");
    intake.setForm(form);
    EXPECT_TRUE(intake.form().agreed);
    form.note = QStringLiteral("before Saturday");
    intake.setForm(form);
    EXPECT_TRUE(intake.form().agreed) << "a note is no other pull";
    form.crossesTension = lb("31");
    intake.setForm(form);
    EXPECT_FALSE(intake.form().agreed);
    form.agreed = true;
    intake.setForm(form);
    std::optional<LoggedIntake> done;
    QObject::connect(&intake, &IntakePresenter::logged, [&](const LoggedIntake& logged) { done = logged; });
    intake.log();
    ASSERT_TRUE(done);
    EXPECT_FALSE(done->notAgreed);
    const auto consents = look([&](desk::Transaction& t) { return t.jobs().consents(*done->job.id); });
    ASSERT_EQ(consents.size(), 1U);
    EXPECT_EQ(consents.front().above.pull, lb("31"));
    EXPECT_EQ(consents.front().words, intake.wordsForTheYes().toStdString());
    EXPECT_FALSE(intake.form().agreed) << "it is not the next one's";
}

TEST_F(Intake, ADiscountCountsOnceItsReasonStandsThere) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    IntakeForm form = intake.form();
    form.discount = Discount{.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = {}};
    intake.setForm(form);
    EXPECT_EQ(intake.preview()->quote.total, Money::fromMinor(3000, Currency::pounds()));
    form.discount->reason = "team";
    intake.setForm(form);
    EXPECT_EQ(intake.preview()->quote.total, Money::fromMinor(2700, Currency::pounds()));
}

TEST_F(Intake, WhatIsRetiredIsNotOffered) {
    onTheCounter("417", "A");
    const auto before = intake.strings().size();
    for (auto& article : ledger.rows.articles) {
        article.retired = article.code == "L";
    }
    intake.refresh();
    ASSERT_EQ(intake.strings().size(), before - 1);
    for (const auto& offered : intake.strings()) {
        EXPECT_NE(offered.article.code, "L");
    }
}

TEST_F(Intake, OnlyStringsOfTheRacketsSportAreOffered) {
    onTheCounter("Penhallow", "A");
    ASSERT_EQ(intake.strings().size(), 1U);
    EXPECT_EQ(intake.strings().front().article.code, "T");
}

TEST_F(Intake, AStaleAnswerIsDropped) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    runner.held = true;
    int shown = 0;
    intake.setForm(with("70", "70"));
    intake.setForm(with("52", "50"));
    EXPECT_TRUE(intake.isThinking());
    QObject::connect(&intake, &IntakePresenter::previewChanged, [&] { ++shown; });
    runner.release();
    EXPECT_EQ(shown, 1);
    EXPECT_FALSE(intake.isThinking());
    ASSERT_TRUE(intake.preview());
    EXPECT_FALSE(intake.preview()->aboveMarked); // 70 lb would be above the marked 60
}

TEST_F(Intake, SaysWhatIsLackingAndLogsNothingMeanwhile) {
    EXPECT_EQ(intake.lacking(), (std::vector{Lacking::Racket, Lacking::Strings, Lacking::Tensions}));
    onTheCounter("417", "A");
    EXPECT_EQ(intake.lacking(), (std::vector{Lacking::Strings, Lacking::Tensions}));
    const auto before = jobsInTheLedger();
    intake.log();
    EXPECT_EQ(jobsInTheLedger(), before);
}

TEST_F(Intake, PressingTwiceLogsOnce) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    const auto before = jobsInTheLedger();
    int logged = 0;
    QObject::connect(&intake, &IntakePresenter::logged, [&] { ++logged; });
    runner.held = true;
    intake.log();
    intake.log();
    runner.release();
    EXPECT_EQ(logged, 1);
    EXPECT_EQ(jobsInTheLedger(), before + 1);
    EXPECT_FALSE(intake.racket()) << "the counter is clear for the next";
}

TEST_F(Intake, ALedgerThatIsLostWhileLoggingLosesNothingAndLogsOnce) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    const auto before = jobsInTheLedger();
    const std::string key = intake.requestKey();
    runner.world = HeldDeskRunner::World::LostAfter; // committed, but nobody heard of it
    intake.log();
    EXPECT_FALSE(intake.trouble().isEmpty());
    EXPECT_EQ(intake.requestKey(), key);
    EXPECT_EQ(intake.form().mainsTension, lb("54")) << "what was typed is still there";
    std::optional<Job> logged;
    QObject::connect(&intake, &IntakePresenter::logged, [&](const LoggedIntake& done) { logged = done.job; });
    runner.world = HeldDeskRunner::World::Whole;
    intake.log();
    ASSERT_TRUE(logged);
    EXPECT_TRUE(intake.trouble().isEmpty());
    EXPECT_EQ(jobsInTheLedger(), before + 1);
    EXPECT_NE(intake.requestKey(), key) << "the next racket is another intake";
}

TEST_F(Intake, ALateAnswerClearsItsOwnSheetOnly) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    std::vector<LoggedIntake> logged;
    QObject::connect(&intake, &IntakePresenter::logged, [&](const LoggedIntake& done) { logged.push_back(done); });
    runner.held = true;
    intake.log();
    runner.held = false;
    onTheCounter("Hallerby", ""); // the next one, while the first is on its way
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    runner.held = true;
    intake.log();
    runner.release();
    ASSERT_EQ(logged.size(), 2U);
    EXPECT_FALSE(logged[0].isOnTheCounter);
    EXPECT_EQ(logged[0].customer.name, "Petra Lindobi");
    EXPECT_TRUE(logged[1].isOnTheCounter);
    EXPECT_EQ(logged[1].customer.name, "Jun Hallerby");
}

TEST_F(Intake, ALateAnswerLeavesWhatWasTypedForTheNextRacket) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    runner.held = true;
    intake.log();
    runner.held = false;
    onTheCounter("Hallerby", "");
    intake.setForm(with("25", "25"));
    runner.release();
    ASSERT_TRUE(intake.racket());
    EXPECT_EQ(intake.racket()->frame.name, "Pellow Feather");
    EXPECT_EQ(intake.form().mainsTension, lb("25"));
}

TEST_F(Intake, AnotherWishAfterALostAnswerIsToldAndNotTakenForLogged) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    runner.world = HeldDeskRunner::World::LostAfter;
    intake.log();
    runner.world = HeldDeskRunner::World::Whole;
    std::optional<Refusal> why;
    QObject::connect(&intake, &IntakePresenter::logRefused, [&](const Refusal& refusal, bool isOnTheCounter) {
        EXPECT_TRUE(isOnTheCounter);
        why = refusal;
    });
    intake.setForm(with("52", "50"));
    intake.log();
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ChangedMeanwhile);
    EXPECT_EQ(intake.form().mainsTension, lb("52")) << "what was typed is still there";
}

TEST_F(Intake, AFullDiskIsSaidAndTypingGoesOn) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    runner.world = HeldDeskRunner::World::Full;
    intake.log();
    EXPECT_FALSE(intake.trouble().isEmpty());
    intake.setForm(with("50", "48"));
    EXPECT_EQ(intake.form().mainsTension, lb("50"));
    runner.world = HeldDeskRunner::World::Whole;
    intake.setForm(with("52", "50"));
    EXPECT_TRUE(intake.preview());
    EXPECT_TRUE(intake.trouble().isEmpty());
}

TEST_F(Intake, AnUnreadableTensionTakesThePlanAway) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked);
    ASSERT_TRUE(intake.preview());
    IntakeForm form = intake.form();
    form.mainsTension.reset();
    intake.setForm(form);
    EXPECT_FALSE(intake.preview());
    EXPECT_EQ(intake.lacking(), (std::vector{Lacking::Tensions}));
}

TEST_F(Intake, ARefusedPlanSaysWhy) {
    onTheCounter("417", "A");
    intake.repeatLast(IntakePresenter::Repeat::AsAsked); // one piece
    IntakeForm form = intake.form();
    form.crosses = string("K"); // of two strings
    intake.setForm(form);
    EXPECT_FALSE(intake.preview());
    EXPECT_TRUE(intake.refusal());
}

} // namespace
} // namespace rw::ui::test
