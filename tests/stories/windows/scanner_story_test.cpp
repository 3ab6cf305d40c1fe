// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/rack_sheet.h"
#include "ui/counter/to_be_strung_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/widgets/finder.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>

#include <algorithm>

// A scanner is a keyboard that types a tag's digits and Enter, and knows nothing of where it types.
namespace rw::ui::test {
namespace {

class Scanner : public AtTheWindow {
protected:
    CounterStation& counter() { return *m_window->counter(); }
    BenchPresenter& bench() { return m_window->bench()->presenter(); }
    static void scan(std::int64_t number) {
        type(std::to_string(number).c_str());
        press(Qt::Key_Return);
    }
    std::int64_t firstIn(JobState state) {
        const auto lines = jobs(state);
        EXPECT_FALSE(lines.empty());
        return lines.front().number;
    }
    void atTheRack() {
        press(Qt::Key_F8);
        ASSERT_TRUE(becomes([&] { return !counter().rackPresenter().lines().empty(); }));
    }
    void atTheBench() {
        press(Qt::Key_2, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return bench().card().has_value(); }));
    }
};

TEST_F(Scanner, AtTheCountersSearchAFinishedRacketIsChosenOnTheRack) {
    const auto lines = jobs(JobState::Strung);
    ASSERT_GE(lines.size(), 2U);
    const auto number = lines.back().number;
    scan(number);
    ASSERT_TRUE(becomes([&] { return counter().rack()->chosen() != nullptr; }));
    EXPECT_EQ(counter().rack()->chosen()->number, number);
    EXPECT_TRUE(counter().rack()->isVisible());
    EXPECT_FALSE(counter().rack()->isOpen()) << "chosen, and not yet opened to be handed over";
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter().rack()->isOpen(); }));
    EXPECT_EQ(counter().rackPresenter().opened()->number, number);
}

TEST_F(Scanner, AtTheCountersSearchOneThatIsStillToBeStrungIsChosenThere) {
    const auto number = firstIn(JobState::Logged);
    scan(number);
    ASSERT_TRUE(becomes([&] { return counter().toBeStrung()->chosen() != nullptr; }));
    EXPECT_EQ(counter().toBeStrung()->chosen()->number, number);
    EXPECT_TRUE(counter().toBeStrung()->isVisible());
    press(Qt::Key_Escape);
    ASSERT_TRUE(counter().intake()->isVisible());
    EXPECT_EQ(counter().intake()->personFinder()->line()->text(), QString()) << "nothing of the number stays behind";
    EXPECT_FALSE(counter().person().picked());
}

TEST_F(Scanner, TheLabelOnAFrameBringsItsOwnerAndTheRacketToTheCounter) {
    const auto lines = jobs(JobState::Collected);
    ASSERT_FALSE(lines.empty());
    scan(lines.front().number);
    ASSERT_TRUE(becomes([&] { return counter().racket().picked().has_value(); }));
    EXPECT_EQ(counter().person().picked()->customer.id, lines.front().customerId);
    EXPECT_EQ(counter().racket().picked()->frame.name, lines.front().frame);
    EXPECT_EQ(counter().racket().picked()->racket.mark, lines.front().mark);
}

TEST_F(Scanner, OnTheRackItChoosesAndNeverOpens) {
    const auto lines = jobs(JobState::Strung);
    atTheRack();
    scan(lines.back().number);
    ASSERT_NE(counter().rack()->chosen(), nullptr);
    EXPECT_EQ(counter().rack()->chosen()->number, lines.back().number);
    EXPECT_FALSE(counter().rack()->isOpen());
    scan(lines.front().number);
    ASSERT_NE(counter().rack()->chosen(), nullptr);
    EXPECT_EQ(counter().rack()->chosen()->number, lines.front().number);
    EXPECT_FALSE(counter().rack()->isOpen());
    scan(999'999);
    EXPECT_TRUE(saysSoon(QStringLiteral("Tag 999999 is not in this list.")));
    EXPECT_EQ(counter().rack()->chosen(), nullptr) << "Enter must not open the one before";
}

TEST_F(Scanner, AtTheBenchItOpensTheCardAndDoesNothingToIt) {
    const auto lines = jobs(JobState::Logged);
    ASSERT_GE(lines.size(), 2U);
    atTheBench();
    const auto before = bench().card()->job;
    const auto wanted = lines.back().number == before.number ? lines.front() : lines.back();
    scan(wanted.number);
    ASSERT_TRUE(becomes([&] { return bench().card() && bench().card()->job.number == wanted.number; }));
    EXPECT_EQ(job(wanted.id).state, JobState::Logged) << "Enter belonged to the number";
    EXPECT_EQ(job(*before.id).version, before.version);
    scan(wanted.number);
    EXPECT_EQ(bench().card()->job.number, wanted.number);
    EXPECT_EQ(job(wanted.id).state, JobState::Logged) << "nor does scanning it twice take it";
}

TEST_F(Scanner, AtTheBenchANumberThatIsTypedIsSeenAndCanBeDropped) {
    atTheBench();
    const auto before = bench().card()->job.number;
    type("21");
    EXPECT_TRUE(m_window->bench()->prompt()->text().contains(QStringLiteral("tag 21")));
    press(Qt::Key_Backspace);
    EXPECT_TRUE(m_window->bench()->prompt()->text().contains(QStringLiteral("tag 2 ")));
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_window->bench()->prompt()->text().contains(QStringLiteral("tag")));
    EXPECT_EQ(bench().card()->job.number, before);
}

TEST_F(Scanner, AtTheBenchATagWithNothingToDoIsExplained) {
    const auto hanging = firstIn(JobState::Strung);
    atTheBench();
    scan(hanging);
    EXPECT_TRUE(saysSoon(QStringLiteral("Tag %1: strung.").arg(hanging)));
    scan(999'999);
    EXPECT_TRUE(saysSoon(QStringLiteral("No job has the tag 999999.")));
}

} // namespace
} // namespace rw::ui::test
