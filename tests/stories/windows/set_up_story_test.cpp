// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/settings.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/books/books_station.h"
#include "ui/books/contents_list.h"
#include "ui/books/frames_page.h"
#include "ui/books/machines_page.h"
#include "ui/books/people_page.h"
#include "ui/books/person_sheet.h"
#include "ui/books/price_sheets.h"
#include "ui/books/prices_page.h"
#include "ui/books/setting_sheet.h"
#include "ui/books/shop_page.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/prices_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/presenter/staff_presenter.h"

#include <algorithm>

// The owner sets the shop up, by keyboard alone.
namespace rw::ui::test {
namespace {
using namespace std::chrono_literals;

class SetUpStory : public AtTheWindow {
protected:
    /// Goes to the books and onto the page of that type.
    template<class Page>
    Page& turnTo() {
        press(Qt::Key_4, Qt::ControlModifier);
        auto& books = *m_window->books();
        EXPECT_TRUE(becomes([&] { return books.isVisible(); }));
        for (int turns = 0; qobject_cast<Page*>(books.page()) == nullptr && turns < books.pages().size(); ++turns) {
            press(Qt::Key_PageDown, Qt::ControlModifier);
        }
        auto* page = qobject_cast<Page*>(books.page());
        EXPECT_NE(page, nullptr);
        if (!books.isInside()) {
            press(Qt::Key_Return);
        }
        EXPECT_TRUE(becomes([&] { return page->rows().rowCount() > 0; }));
        return *page;
    }
    static void goToRow(SetUpPage& page, const QString& title) {
        press(Qt::Key_Home);
        for (int i = 0; i < page.rows().rowCount(); ++i) {
            if (page.list()->currentIndex().data().toString().startsWith(title)) {
                return;
            }
            press(Qt::Key_Down);
        }
        FAIL() << "no row begins with " << title.toStdString();
    }
    static QString asideOf(const SetUpPage& page, const QString& title) {
        for (const WordsRow& row : page.rows().rows()) {
            if (row.title.startsWith(title)) {
                return row.aside;
            }
        }
        return {};
    }
    /// What the counter says for Petra's racket A with K at 52 lb, now.
    QString priceOfARacket() {
        press(Qt::Key_1, Qt::ControlModifier);
        press(Qt::Key_N, Qt::ControlModifier);
        type("417");
        press(Qt::Key_Return);
        auto& counter = *m_window->counter();
        EXPECT_TRUE(becomes([&] { return counter.person().picked().has_value(); }));
        press(Qt::Key_Down); // B was here last
        press(Qt::Key_Return);
        EXPECT_TRUE(becomes([&] { return counter.racket().picked().has_value(); }));
        press(Qt::Key_F5);
        EXPECT_TRUE(becomes([&] { return counter.intakePresenter().preview().has_value(); }));
        return counter.intake()->outcome()->priceText();
    }
    /// For one racket that nothing waits before, without a margin.
    Instant promise() {
        return look([this](desk::Transaction& t) {
            auto settings = desk::readSettings(t.shop());
            settings.marginPercent = 0;
            return earliestPromise(desk::workshopOf(t.shop(), settings), m_clock.now(), {}, settings.minutesPerJob);
        });
    }
};

// The owner sets new prices from tomorrow; a racket that comes today still has the old one.
TEST_F(SetUpStory, NewPricesHoldFromTomorrow) {
    const QString before = priceOfARacket();
    auto& page = turnTo<PricesPage>();
    press(Qt::Key_N);
    ASSERT_EQ(page.sheet(), page.newListSheet());
    press(Qt::Key_Return); // tomorrow is proposed
    ASSERT_TRUE(saysSoon(QStringLiteral("These prices hold from 13 March 2026.")));
    ASSERT_TRUE(becomes([&] { return page.isListOpen(); }));
    goToRow(page, QStringLiteral("Labour"));
    press(Qt::Key_Return);
    ASSERT_EQ(page.sheet(), page.lineSheet());
    type("15,50");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Kept. These prices hold from 13 March 2026.")));
    ASSERT_TRUE(becomes([&] { return asideOf(page, QStringLiteral("Labour")) == QStringLiteral("£15.50"); }));
    EXPECT_EQ(priceOfARacket(), before);
    m_clock.advance(24h);
    EXPECT_NE(priceOfARacket(), before);
}

TEST_F(SetUpStory, WhatCannotBeAPriceIsSaidBesideIt) {
    auto& page = turnTo<PricesPage>();
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return page.isListOpen(); }));
    goToRow(page, QStringLiteral("Rush"));
    press(Qt::Key_Return);
    type("five");
    press(Qt::Key_Return);
    EXPECT_TRUE(page.lineSheet()->margin().contains(QStringLiteral("“five” cannot be read as an amount of money")))
        << page.lineSheet()->margin().toStdString();
    press(Qt::Key_Escape);
    EXPECT_EQ(page.sheet(), nullptr);
    press(Qt::Key_N);
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Tab); // past what it is for, the sport, its name and its cost
    }
    type("2");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return page.lineSheet()->margin().contains(QStringLiteral("The extra is missing.")); }))
        << page.lineSheet()->margin().toStdString();
    EXPECT_EQ(whereTheKeyboardIs()->accessibleName(), QStringLiteral("Name of the extra"));
    type("stencil");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Kept in a new list that holds from today")));
    EXPECT_EQ(asideOf(page, QStringLiteral("stencil")), QStringLiteral("£2.00"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(page.isListOpen());
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_window->books()->isInside());
}

// Everybody but one is away; the one goes on holiday, and the promise moves.
TEST_F(SetUpStory, AHolidayMovesThePromise) {
    EXPECT_EQ(promise(), kThursday + 30min);
    auto& page = turnTo<PeoplePage>();
    const auto people = page.rows().rowCount();
    for (int row = 0; row < people; ++row) {
        const auto versions = [&] {
            std::int64_t sum = 0;
            for (const auto& member : page.presenter().staff()) {
                sum += member.version;
            }
            return sum;
        };
        const auto before = versions();
        press(Qt::Key_Home);
        for (int i = 0; i < row; ++i) {
            press(Qt::Key_Down);
        }
        press(Qt::Key_Return);
        ASSERT_EQ(page.sheet(), page.personSheet());
        for (int i = 0; i < 9; ++i) {
            press(Qt::Key_Tab); // past name, strings and seven days
        }
        ASSERT_EQ(whereTheKeyboardIs()->accessibleName(), QStringLiteral("Days off"));
        type("2026-03-12 to 2026-03-13");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return page.sheet() == nullptr && versions() == before + 1; }));
    }
    EXPECT_EQ(promise(), kThursday + 48h - 30min) << "Saturday, half an hour after ten";
}

TEST_F(SetUpStory, WhoLeavesIsOfferedNoMoreAndComesBack) {
    auto& page = turnTo<PeoplePage>();
    goToRow(page, QStringLiteral("Ines Varholt"));
    press(Qt::Key_R);
    ASSERT_TRUE(saysSoon(QStringLiteral("Ines Varholt works here no more")));
    ASSERT_TRUE(becomes([&] { return asideOf(page, QStringLiteral("Ines")) == QStringLiteral("◌ has left"); }));
    ASSERT_TRUE(becomes([&] { return m_shift->shop().staff.size() == 3; }));
    goToRow(page, QStringLiteral("Ines Varholt"));
    press(Qt::Key_B);
    ASSERT_TRUE(becomes([&] { return m_shift->shop().staff.size() == 4; }));
    press(Qt::Key_N);
    type("Oriel Tamm");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return page.personSheet()->margin().contains(QStringLiteral("“Oriel Tamm”")); }))
        << page.personSheet()->margin().toStdString();
}

TEST_F(SetUpStory, ARetiredMachineIsNoLongerOffered) {
    auto& page = turnTo<MachinesPage>();
    ASSERT_EQ(m_window->bench()->machines()->count(), 2);
    goToRow(page, QStringLiteral("Bench B"));
    press(Qt::Key_R);
    ASSERT_TRUE(saysSoon(QStringLiteral("Bench B is retired")));
    ASSERT_TRUE(becomes([&] { return m_window->bench()->machines()->count() == 1; }));
    goToRow(page, QStringLiteral("Bench A"));
    press(Qt::Key_R);
    ASSERT_TRUE(saysSoon(QStringLiteral("“Bench A” cannot be retired: no other machine is in use.")));
    press(Qt::Key_N);
    type("Bench C");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return m_window->bench()->machines()->count() == 2; }));
}

TEST_F(SetUpStory, AFrameIsFoundChangedAndGetsItsUsualCut) {
    auto& page = turnTo<FramesPage>();
    ASSERT_EQ(whereTheKeyboardIs(), page.search());
    type("ridge");
    ASSERT_TRUE(becomes([&] { return page.rows().rowCount() == 1; }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return page.isFrameOpen() && page.list()->hasFocus(); }));
    press(Qt::Key_Return);
    ASSERT_NE(page.sheet(), nullptr);
    while (whereTheKeyboardIs()->accessibleName() != QStringLiteral("Size of the head")) {
        press(Qt::Key_Tab);
    }
    type("98"); // square inches
    while (whereTheKeyboardIs()->accessibleName() != QStringLiteral("Note for the bench")) {
        press(Qt::Key_Tab);
    }
    type("awl for 7H");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Tarn Ridge 100 is kept.")));
    const auto frame = look([](desk::Transaction& t) { return t.frames().find("ridge", 1).front(); });
    EXPECT_EQ(frame.note.text, "awl for 7H");
    EXPECT_NEAR(*frame.hoop.headAreaCm2, 98 * 6.4516, 0.01);

    const auto cuts = page.rows().rowCount();
    press(Qt::Key_N);
    press(Qt::Key_M); // the mains
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    type("6,3");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("mains, any string: 6.3 m is the usual cut.")));
    ASSERT_TRUE(becomes([&] { return page.rows().rowCount() == cuts + 1; }));
    goToRow(page, QStringLiteral("mains"));
    press(Qt::Key_Delete);
    ASSERT_TRUE(becomes([&] { return page.rows().rowCount() == cuts; }));
    press(Qt::Key_Escape);
    ASSERT_TRUE(becomes([&] { return whereTheKeyboardIs() == page.search(); }));
}

TEST_F(SetUpStory, ASettingIsChangedOrSaysWhyNot) {
    auto& page = turnTo<ShopPage>();
    goToRow(page, QStringLiteral("Minutes for a job"));
    press(Qt::Key_Return);
    type("soon");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] {
        return page.settingSheet()->margin().contains(QStringLiteral("“soon” cannot be read as a number of minutes"));
    })) << page.settingSheet()->margin().toStdString();
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Backspace);
    }
    type("40");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Minutes for a job: 40 minutes.")));
    ASSERT_TRUE(becomes([&] { return asideOf(page, QStringLiteral("Minutes for")) == QStringLiteral("40 minutes"); }));
    EXPECT_EQ(promise(), kThursday + 45min) << "forty minutes, rounded up";
    goToRow(page, QStringLiteral("Short side"));
    press(Qt::Key_Return);
    press(Qt::Key_R);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Short side: right.")));
}

} // namespace
} // namespace rw::ui::test
