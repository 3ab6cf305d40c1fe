// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/delivery.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/none_sheet.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/ahead_view.h"
#include "ui/stockroom/correct_strip.h"
#include "ui/stockroom/life_strip.h"
#include "ui/stockroom/order_page.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/figures_table.h"
#include "ui/widgets/margin_note.h"

#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QGuiApplication>
#include <QListView>

// What runs short, when, and what to order, by keyboard.
namespace rw::ui::test {
namespace {

class Ordering : public AtTheWindow {
protected:
    void goToTheStockroom() {
        press(Qt::Key_3, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return stockroom().presenter().isLoaded() && stockroom().isVisible(); }));
    }
    StockroomStation& stockroom() { return *m_window->stockroom(); }
    [[nodiscard]] QString words() { return stockroom().lifeStrip()->words(); }
    [[nodiscard]] QString cell(int row, int column) {
        return stockroom().orderPage()->lines()->model()->index(row, column).data().toString();
    }
    [[nodiscard]] int timesAskedFor(std::string_view code) {
        return look([&](desk::Transaction& t) {
            int times = 0;
            for (const StringArticle& article : t.strings().all()) {
                for (const desk::StringWish& wish : t.supply().wishes(kThursday)) {
                    times += article.code == code && wish.article == article.id && wish.halfBeds == 2 ? 1 : 0;
                }
            }
            return times;
        });
    }
};

TEST_F(Ordering, TheStockroomOpensWithWhatRunsShortFirst) {
    goToTheStockroom();
    EXPECT_TRUE(stockroom().runningShort().startsWith(QStringLiteral("▼ Order now: L Larkspun 130, likely out ")))
        << stockroom().runningShort().toStdString();
    EXPECT_TRUE(stockroom().shelf()->hasFocus());
    EXPECT_EQ(stockroom().shelf()->currentIndex().column(), 0);
    EXPECT_TRUE(stockroom().shelf()->currentIndex().data().toString().startsWith(QStringLiteral("L Larkspun 130")));
    EXPECT_TRUE(words().startsWith(QStringLiteral("Order now: "))) << words().toStdString();
    EXPECT_TRUE(words().contains(QStringLiteral("1 job free; about "))) << words().toStdString();
    EXPECT_TRUE(stockroom().lifeStrip()->aheadView()->isVisible());

    press(Qt::Key_Down);
    EXPECT_TRUE(words().contains(QStringLiteral("2 jobs free; about "))) << words().toStdString();
    press(Qt::Key_F);
    ASSERT_TRUE(becomes([&] { return words().contains(QStringLiteral("a third would be 0.3 m short")); }));
    EXPECT_FALSE(stockroom().lifeStrip()->aheadView()->isVisible());
    EXPECT_TRUE(stockroom().lifeStrip()->lines()->isVisible());
    press(Qt::Key_F);
    EXPECT_TRUE(words().contains(QStringLiteral("2 jobs free; about ")));
    EXPECT_TRUE(stockroom().lifeStrip()->aheadView()->isVisible());
}

TEST_F(Ordering, WhatToOrderIsReadCopiedAndSaved) {
    goToTheStockroom();
    press(Qt::Key_O);
    OrderPage& page = *stockroom().orderPage();
    ASSERT_TRUE(becomes([&] { return page.isVisible() && !page.isEmpty(); }));
    EXPECT_TRUE(becomes([&] { return page.lines()->hasFocus(); }));
    EXPECT_EQ(cell(0, 0), QStringLiteral("Fennimore"));
    EXPECT_EQ(cell(0, 1), QStringLiteral("T Tarnweave 120, red"));
    EXPECT_EQ(cell(0, 2), QStringLiteral("2 reels of 100 m"));
    EXPECT_TRUE(cell(0, 3).startsWith(QStringLiteral("2 jobs left, likely out "))) << cell(0, 3).toStdString();
    EXPECT_EQ(cell(0, 4), QStringLiteral("£58.00"));
    EXPECT_EQ(cell(1, 3), QStringLiteral("shipping, as the last time"));
    EXPECT_EQ(cell(2, 3), QStringLiteral("together"));
    EXPECT_EQ(cell(2, 5), QStringLiteral("£120.50"));

    press(Qt::Key_C, Qt::ControlModifier);
    const QString letter = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(letter.startsWith(QStringLiteral(
        "Fennimore\n2 reels of 100 m: T Tarnweave 120, red, 1.20 mm (17)\n\nNorthgate String Company\n")))
        << letter.toStdString();
    EXPECT_FALSE(letter.contains(QStringLiteral("£")));

    press(Qt::Key_E, Qt::ControlModifier); // and chooses no folder
    EXPECT_EQ(m_folders.asked, 1);
    m_folders.folder = m_folder.filePath(QStringLiteral("to order"));
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Saved as order.csv")));
    QFile file(m_folder.filePath(QStringLiteral("to order/order.csv")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray csv = file.readAll();
    EXPECT_TRUE(csv.contains("Fennimore,T,Tarnweave 120,red,reel,100000,2,running-short,58.00")) << csv.toStdString();

    press(Qt::Key_Escape);
    EXPECT_TRUE(stockroom().shelf()->hasFocus());
}

// A reel that came takes its string off the order.
TEST_F(Ordering, WhatCameIsNotOrderedAgain) {
    goToTheStockroom();
    press(Qt::Key_R);
    press(Qt::Key_Return); // one more of L, as its last reel
    ASSERT_TRUE(saysSoon(QStringLiteral("Received L-4: 200 m.")) || saysSoon(QStringLiteral("L-4")));
    press(Qt::Key_O);
    OrderPage& page = *stockroom().orderPage();
    ASSERT_TRUE(becomes([&] {
        return page.isVisible() && !page.isEmpty() && page.lines()->model()->rowCount() > 0 && !cell(0, 0).isEmpty();
    }));
    for (int row = 0; row < page.lines()->model()->rowCount(); ++row) {
        EXPECT_FALSE(cell(row, 1).startsWith(QStringLiteral("L "))) << cell(row, 1).toStdString();
    }
}

TEST_F(Ordering, WhatWasAskedForInVainIsWrittenDownAtTheCounter) {
    const int before = timesAskedFor("T");
    press(Qt::Key_F3);
    NoneSheet& sheet = *m_window->counter()->askedForNone();
    ASSERT_TRUE(becomes([&] { return sheet.isVisible() && sheet.string()->count() == 5; }));
    EXPECT_TRUE(sheet.string()->hasFocus());
    press(Qt::Key_Return);
    EXPECT_EQ(sheet.line().note->problem(), QStringLiteral("Which string was asked for?"));
    type("t");
    EXPECT_EQ(sheet.string()->currentText(), QStringLiteral("T Tarnweave 120, red"));
    EXPECT_EQ(sheet.line().note->problem(), QString());
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Written down: somebody asked for T Tarnweave 120.")));
    EXPECT_EQ(timesAskedFor("T"), before + 1);
    EXPECT_FALSE(sheet.isVisible()) << "back to taking in";

    press(Qt::Key_F3); // somebody else asks
    ASSERT_TRUE(becomes([&] { return sheet.isVisible(); }));
    EXPECT_EQ(sheet.string()->currentText(), QString());
    type("t");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return timesAskedFor("T") == before + 2; }));
    press(Qt::Key_F3);
    press(Qt::Key_Escape);
    EXPECT_FALSE(sheet.isVisible());
    EXPECT_EQ(timesAskedFor("T"), before + 2);
    EXPECT_TRUE(m_ledger->check().empty());
}

TEST_F(Ordering, NothingRunsShortAndThatIsSaid) {
    const auto filled = desk::inTransaction(*m_ledger, desk::Access::Write, [](desk::Transaction& t) {
        desk::ReceiveDelivery parcel{.requestKey = "enough",
                                     .supplier = "Fennimore",
                                     .lines = {},
                                     .shipping = Money::zero(Currency::pounds()),
                                     .by = {*t.shop().staff().front().id, "stockroom", kThursday}};
        for (const StringArticle& article : t.strings().all()) {
            parcel.lines.push_back({.article = *article.id,
                                    .count = 3,
                                    .nominal = metres(200),
                                    .priceEach = Money::fromMinor(11000, Currency::pounds())});
        }
        return desk::receiveDelivery(t, parcel);
    });
    ASSERT_TRUE(filled);
    goToTheStockroom();
    EXPECT_EQ(stockroom().runningShort(), QString());
    press(Qt::Key_O);
    OrderPage& page = *stockroom().orderPage();
    ASSERT_TRUE(becomes([&] { return page.isVisible() && !page.words().isEmpty(); }));
    EXPECT_TRUE(page.words().startsWith(QStringLiteral("Nothing runs short"))) << page.words().toStdString();
    press(Qt::Key_Escape);
    EXPECT_FALSE(page.isVisible());
}

// A key belongs to the reel that the arrows have just reached, whether its life is read yet or not.
TEST_F(Ordering, TheKeysOfAReelWorkAtOnce) {
    goToTheStockroom();
    press(Qt::Key_F);
    press(Qt::Key_C);
    EXPECT_TRUE(stockroom().findChild<CorrectStrip*>()->isVisible());
}

} // namespace
} // namespace rw::ui::test
