// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/account.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/discount_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/tension_edit.h"

#include <algorithm>

namespace rw::ui::test {
namespace {

/// What is agreed with the customer beside the string: until when, for how much less, who takes it, who is told.
class Terms : public AtTheWindow {
protected:
    CounterStation& counter() { return *m_window->counter(); }
    IntakeSheet& sheet() { return *m_window->counter()->intake(); }
    RackSheet& rack() { return *m_window->counter()->rack(); }
    RackPresenter& rackPresenter() { return m_window->counter()->rackPresenter(); }

    void petrasRacketA() {
        type("417");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
        press(Qt::Key_Down); // B was here last
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().racket().picked().has_value(); }));
        press(Qt::Key_F5);
        previewed();
    }
    void previewed() {
        ASSERT_TRUE(becomes([&] {
            return counter().intakePresenter().preview().has_value() && !counter().intakePresenter().isThinking();
        }));
    }
    void atTheRack() {
        press(Qt::Key_F8);
        ASSERT_TRUE(becomes([&] { return !rackPresenter().lines().empty() && rack().list()->hasFocus(); }));
        press(Qt::Key_Down); // without a person no racket is chosen
        ASSERT_NE(rack().chosen(), nullptr);
    }
    bool isOnTheRack(JobId id) {
        return std::ranges::find(rackPresenter().lines(), id, &desk::JobLine::id) != rackPresenter().lines().end();
    }
};

TEST_F(Terms, MustByDiscountAndWhatCameWithItAreKeptWithTheJob) {
    petrasRacketA();
    sheet().mustBy()->setFocus(Qt::OtherFocusReason);
    type("tomorrow 17:00");
    press(Qt::Key_Tab);
    EXPECT_EQ(sheet().mustBy()->text(), QStringLiteral("tomorrow 17:00"));
    type("10 %");
    EXPECT_TRUE(sheet().termsNote()->text().contains(QStringLiteral("say why"))) << "no discount without a reason";
    previewed();
    EXPECT_EQ(sheet().outcome()->priceText(), QStringLiteral("£30.00"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(sheet().termsNote()->text().contains(QStringLiteral("✕ The reason is missing.")))
        << sheet().termsNote()->text().toStdString();
    ASSERT_TRUE(sheet().reason()->hasFocus());
    type("team");
    previewed();
    EXPECT_EQ(sheet().outcome()->priceText(), QStringLiteral("£27.00"));
    EXPECT_TRUE(sheet().termsNote()->text().contains(QStringLiteral("in time for tomorrow 17:00")))
        << sheet().termsNote()->text().toStdString();
    press(Qt::Key_Tab);
    ASSERT_TRUE(sheet().cameWith()->hasFocus());
    type("cover");
    press(Qt::Key_Tab);
    type("bumper worn");
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged 2129")));
    const Job logged = job(jobs(JobState::Logged).back().id);
    EXPECT_EQ(logged.mustBy, kThursday + std::chrono::hours(30)) << "Friday 17:00, in winter time";
    EXPECT_EQ(logged.total.minor(), 2700);
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().inspection(*logged.id); }),
              (Inspection{"cover", "bumper worn"}));
    EXPECT_TRUE(sheet().mustBy()->isBlank());
    EXPECT_TRUE(sheet().cameWith()->text().isEmpty()) << "nothing of it is the next racket's";
}

TEST_F(Terms, APromiseThatIsTooLateIsSaidBeforeItIsGiven) {
    petrasRacketA();
    sheet().mustBy()->setFocus(Qt::OtherFocusReason);
    type("11:30");
    previewed();
    EXPECT_TRUE(sheet().termsNote()->text().contains(QStringLiteral("▲ ready")))
        << sheet().termsNote()->text().toStdString();
    EXPECT_TRUE(sheet().termsNote()->text().contains(QStringLiteral("they must have it by today 11:30")));
    press(Qt::Key_A, Qt::ControlModifier);
    type("10:30 today");
    press(Qt::Key_Tab);
    EXPECT_TRUE(sheet().termsNote()->text().contains(QStringLiteral("✕"))) << "that is over";
}

TEST_F(Terms, TheCustomerIsToldByOneKey) {
    atTheRack();
    const desk::JobLine line = *rack().chosen();
    EXPECT_FALSE(line.told);
    press(Qt::Key_T);
    ASSERT_TRUE(saysSoon(QStringLiteral("Job %1: the customer was told.").arg(line.number)));
    ASSERT_TRUE(becomes([&] { return rack().chosen() != nullptr && rack().chosen()->told.has_value(); }));
    EXPECT_EQ(rack().chosen()->id, line.id);
}

TEST_F(Terms, OnAccountIsSaidOnPurposeAndAHandOverIsTakenBackByOneKey) {
    atTheRack();
    const JobId id = rack().chosen()->id;
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    press(Qt::Key_Tab);
    ASSERT_TRUE(rack().way()->hasFocus());
    type("on");
    press(Qt::Key_Tab);
    type("her brother");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is still owed")));
    const auto handover = look([&](desk::Transaction& t) { return t.jobs().handover(id); });
    EXPECT_EQ(handover, (Handover{"her brother", true}));
    ASSERT_TRUE(becomes([&] { return !isOnTheRack(id); }));

    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("hangs on the rack again")));
    EXPECT_EQ(job(id).state, JobState::Strung);
    EXPECT_TRUE(becomes([&] { return isOnTheRack(id); }));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(saysSoon(QStringLiteral("Nothing was handed over")));
}

TEST_F(Terms, WhatWentHomeUnpaidIsPaidLater) {
    atTheRack();
    const JobId id = rack().chosen()->id;
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    const Money total = rackPresenter().opened()->total;
    press(Qt::Key_Tab);
    type("on");
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is still owed")));

    press(Qt::Key_F7);
    ASSERT_TRUE(becomes([&] { return rackPresenter().unpaid().size() == 1U; }));
    press(Qt::Key_Down);
    ASSERT_TRUE(becomes([&] { return rack().chosen() != nullptr && rack().chosen()->id == id; }));
    EXPECT_TRUE(rackPresenter().unpaid().front().handover.onAccount);
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    EXPECT_FALSE(rack().takenBy()->isVisible());
    type("10");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Paid £10.00 for job %1.").arg(job(id).number)));
    EXPECT_TRUE(message().contains(QStringLiteral("is still owed")));
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(id); }).minor(), 1000) << "pressed twice, paid once";
    ASSERT_TRUE(becomes([&] { return rackPresenter().unpaid().front().owed.minor() == total.minor() - 1000; }));
    const Money owed = rackPresenter().unpaid().front().owed;
    const CustomerId owner = job(id).customer;
    EXPECT_EQ(look([&](desk::Transaction& t) { return desk::accountOf(t, owner); }), owed);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rack().isOpen(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return rackPresenter().unpaid().empty(); }));
    EXPECT_EQ(look([&](desk::Transaction& t) { return t.jobs().paid(id); }), total);
    press(Qt::Key_Escape);
    EXPECT_TRUE(sheet().isVisible());
}

TEST_F(Terms, WhoAsksToBeRemovedIsRemovedAfterAQuestion) {
    type("ferreday");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
    const CustomerId id = *counter().person().picked()->customer.id;
    press(Qt::Key_Delete, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(sheet().removeButton()->hasFocus());
    press(Qt::Key_Escape);
    EXPECT_FALSE(sheet().removeButton()->isVisible());
    EXPECT_FALSE(look([&](desk::Transaction& t) { return t.customers().get(id); })->removed);
    press(Qt::Key_Delete, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Tomas Ferreday is removed")));
    EXPECT_TRUE(look([&](desk::Transaction& t) { return t.customers().get(id); })->removed);
    EXPECT_FALSE(counter().person().picked());
    EXPECT_FALSE(sheet().removeButton()->isVisible());
}

TEST_F(Terms, SomebodyWhoseRacketIsHereIsNotRemoved) {
    type("castelmere");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
    const CustomerId id = *counter().person().picked()->customer.id;
    press(Qt::Key_Delete, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(sheet().removeButton()->hasFocus());
    press(Qt::Key_Return);
    const auto refused = [&] {
        for (const auto* note : sheet().findChildren<MarginNote*>()) {
            if (note->text().contains(QStringLiteral("still in the shop"))) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(becomes(refused));
    EXPECT_FALSE(look([&](desk::Transaction& t) { return t.customers().get(id); })->removed);
}

} // namespace
} // namespace rw::ui::test
