// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/shell/paper_sheet.h"

#include <QListView>

namespace rw::ui::test {
namespace {

using Out = std::vector<std::pair<Slip, std::int64_t>>;

class Papers : public AtTheWindow {};

TEST_F(Papers, ARacketJustLoggedHasItsTagAndTicketAndTheSameNumberAgain) {
    press(Qt::Key_T, Qt::ControlModifier);
    EXPECT_TRUE(m_tray.slips.empty()) << "nothing was logged yet";
    EXPECT_TRUE(saysSoon(QStringLiteral("A paper belongs to a job")));
    m_window->goTo(0);
    type("417");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->person().picked().has_value(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->racket().picked().has_value(); }));
    press(Qt::Key_F5);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged 2129")));
    press(Qt::Key_T, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return m_tray.slips.size() == 2; }));
    EXPECT_EQ(m_tray.slips, (Out{{Slip::Tag, 2129}, {Slip::Ticket, 2129}}));
    EXPECT_TRUE(saysSoon(QStringLiteral("Ticket 2129 went to the printer")));
    press(Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(becomes([&] { return m_tray.slips.size() == 3; }));
    EXPECT_EQ(m_tray.slips.back(), (std::pair{Slip::Tag, std::int64_t{2129}})) << "printed again, no new number";
}

TEST_F(Papers, OnTheRackItIsTheChosenRacketAndAtTheBenchTheCard) {
    press(Qt::Key_F8);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->rack()->list()->model()->rowCount() > 0; }));
    press(Qt::Key_Home);
    ASSERT_NE(m_window->counter()->rack()->chosen(), nullptr);
    const auto hanging = m_window->counter()->rack()->chosen()->number;
    press(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(becomes([&] { return m_tray.slips == Out{{Slip::Ticket, hanging}}; }));
    press(Qt::Key_2, Qt::ControlModifier);
    auto& bench = m_window->bench()->presenter();
    ASSERT_TRUE(becomes([&] { return bench.card().has_value(); }));
    press(Qt::Key_P, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return m_tray.slips.size() == 2; }));
    EXPECT_EQ(m_tray.slips.back(), (std::pair{Slip::JobCard, bench.card()->job.number}));
}

TEST_F(Papers, AReadySlipAndALabelComeOnceItIsStrungAndNotBefore) {
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return m_window->bench()->presenter().card().has_value(); }));
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(saysSoon(QStringLiteral("strung")));
    EXPECT_TRUE(m_tray.slips.empty());
    press(Qt::Key_1, Qt::ControlModifier);
    press(Qt::Key_F8);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->rack()->list()->model()->rowCount() > 0; }));
    press(Qt::Key_Home);
    const auto hanging = m_window->counter()->rack()->chosen()->number;
    press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(becomes([&] { return m_tray.slips == Out{{Slip::FrameLabel, hanging}, {Slip::Ready, hanging}}; }));
}

TEST_F(Papers, AFullDiskIsSaidAndTheTicketIsNotTriedAfterTheTag) {
    m_tray.diskIsFull = true;
    press(Qt::Key_F8);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->rack()->list()->model()->rowCount() > 0; }));
    press(Qt::Key_Home);
    press(Qt::Key_T, Qt::ControlModifier);
    EXPECT_TRUE(becomes([&] { return message().contains(QStringLiteral("could not be written")); }))
        << message().toStdString();
    EXPECT_FALSE(message().contains(QLatin1Char('\n'))) << message().toStdString();
}

TEST_F(Papers, EachSlipHasItsPrinterAndPaperAtThisStation) {
    m_tray.names = {QStringLiteral("Counter"), QStringLiteral("Office")};
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(m_window->papers()->isVisible());
    press(Qt::Key_Down); // from the PDF to the first printer
    EXPECT_EQ(m_tray.choice(Slip::Tag).printer, QStringLiteral("Counter"));
    press(Qt::Key_Tab);
    press(Qt::Key_Up); // from A7 to A6
    EXPECT_EQ(m_tray.choice(Slip::Tag).paper, PaperSize::A6);
    press(Qt::Key_Tab);
    type("O");
    EXPECT_EQ(m_tray.choice(Slip::Ticket).printer, QStringLiteral("Office"));
    press(Qt::Key_Escape);
    EXPECT_TRUE(m_window->counter()->isVisible());
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(m_window->papers()->printerOf(Slip::Ticket)->currentText(), QStringLiteral("Office"));
}

} // namespace
} // namespace rw::ui::test
