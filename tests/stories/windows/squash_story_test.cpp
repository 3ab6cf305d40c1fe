// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/string_choice.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/life_strip.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/margin_note.h"

namespace rw::ui::test {
namespace {

class Squash : public AtTheWindow {
protected:
    CounterStation& counter() { return *m_window->counter(); }
    IntakeSheet& sheet() { return *m_window->counter()->intake(); }

    void dario() {
        type("penhallow");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return counter().person().picked().has_value(); }));
    }
    /// From the mains on: the string by its code, then both tensions.
    void string(const char* code, const char* mains, const char* crosses) {
        ASSERT_TRUE(becomes([&] { return sheet().mains()->isAncestorOf(whereTheKeyboardIs()); }));
        type(code);
        for (int i = 0; i < 4; ++i) {
            press(Qt::Key_Tab); // over the source, and the crosses with theirs
        }
        type(mains);
        press(Qt::Key_Tab);
        type(crosses);
        ASSERT_TRUE(becomes([&] {
            return counter().intakePresenter().preview().has_value() && !counter().intakePresenter().isThinking();
        })) << sheet().outcome()->needed().toStdString()
            << sheet().outcome()->planText().toStdString() << " with the keyboard at "
            << whereTheKeyboardIs()->accessibleName().toStdString();
    }
    void logIt() {
        press(Qt::Key_Return, Qt::ControlModifier);
        ASSERT_TRUE(saysSoon(QStringLiteral("Logged ")));
        ASSERT_TRUE(becomes([&] { return !counter().person().picked().has_value(); }));
    }
};

// Scenario 3, through the windows and by keyboard alone.
TEST_F(Squash, OnePieceAndAFrameThatForcesItsSide) {
    press(Qt::Key_3, Qt::ControlModifier);
    auto& stockroom = m_window->stockroom()->presenter();
    ASSERT_TRUE(becomes([&] { return stockroom.isLoaded(); }));
    press(Qt::Key_Down);
    press(Qt::Key_F); // from the string to its reel
    ASSERT_TRUE(becomes([&] { return stockroom.life() && stockroom.life()->lot.tag == "T-1"; }));
    EXPECT_TRUE(
        m_window->stockroom()->lifeStrip()->words().contains(QStringLiteral("2 jobs; a third would be 0.3 m short")));

    press(Qt::Key_1, Qt::ControlModifier);
    dario();
    press(Qt::Key_Return); // racket A
    string("t", "26", "26");
    EXPECT_EQ(sheet().outcome()->planText().section(QLatin1Char(','), 0, 0), QStringLiteral("9.3 m off T-1"));
    const QString method = sheet().methodNote()->text();
    EXPECT_TRUE(method.contains(QStringLiteral("2.9 m = 8 head lengths, two top crosses"))) << method.toStdString();
    logIt();

    dario();
    press(Qt::Key_Return); // racket B: A is here, and stands after it
    string("t", "26", "26");
    EXPECT_TRUE(sheet().methodNote()->text().contains(QStringLiteral("matched with A")))
        << sheet().methodNote()->text().toStdString();
    logIt();

    const auto logged = jobs(JobState::Logged);
    const Job second = job(logged.back().id);
    const Job first = job(logged[logged.size() - 2].id);
    EXPECT_EQ(first.shortSide, second.shortSide);
    EXPECT_EQ(first.shortSideLength, metres(2.9));
    EXPECT_EQ(second.method, Method::OnePiece);

    // A Tarn Ridge next: it is new for him, the shop knows the frame.
    dario();
    type("tarn");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter().racket().picked().has_value(); }));
    EXPECT_EQ(counter().racket().picked()->frame.name, "Tarn Ridge 100");
    string("k", "52", "52");
    press(Qt::Key_Tab);
    type("one"); // the method
    press(Qt::Key_Tab);
    ASSERT_TRUE(becomes([&] { return sheet().methodNote()->text().contains(QStringLiteral("groove in the strip")); }))
        << sheet().methodNote()->text().toStdString();
    EXPECT_TRUE(sheet().methodNote()->text().contains(QStringLiteral("short side right, butt-cap logo up")));
    EXPECT_FALSE(sheet().methodNote()->text().contains(QStringLiteral("▲")));
    press(Qt::Key_Down); // left, which this frame does not allow
    ASSERT_TRUE(becomes([&] { return sheet().methodNote()->text().contains(QStringLiteral("▲")); }));
    EXPECT_TRUE(sheet().methodNote()->text().contains(QStringLiteral("short side right")));
}

} // namespace
} // namespace rw::ui::test
