// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/stockroom/weigh_in_page.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/mass_edit.h"

namespace rw::ui::test {
namespace {

class AtTheScale : public AtTheWindow {
protected:
    AtTheScale() {
        press(Qt::Key_3, Qt::ControlModifier);
        EXPECT_TRUE(becomes([&] { return stockroom().presenter().isLoaded(); }));
        press(Qt::Key_W);
        EXPECT_TRUE(becomes([&] { return page().tag()->hasFocus() && !page().progress().isEmpty(); }));
    }
    StockroomStation& stockroom() { return *m_window->stockroom(); }
    WeighInPage& page() { return *stockroom().weighInPage(); }
    int lines() { return page().lines()->model()->rowCount(); }
    QString cell(int row, int column) { return page().lines()->model()->index(row, column).data().toString(); }
    /// Tag, Enter, weight, Enter: one reel.
    void weigh(const char* tag, const char* grams) {
        type(tag);
        press(Qt::Key_Return);
        type(grams);
        press(Qt::Key_Return);
    }
    /// The spool of K-7 weighs 150 g, and it weighed 385 g when it came with 138.4 m.
    void weighK7() {
        weigh("K-7", "252");
        ASSERT_TRUE(becomes([&] { return page().empty()->hasFocus(); })) << "its spool was never weighed";
        type("150");
        press(Qt::Key_Tab);
        type("385");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return lines() == 1; }));
    }
    void toTheLines() {
        for (int i = 0; i < 4; ++i) {
            press(Qt::Key_Tab);
        }
        ASSERT_TRUE(page().lines()->hasFocus());
    }
};

TEST_F(AtTheScale, OneReelAfterTheOtherByKeyboardAlone) {
    EXPECT_TRUE(page().progress().contains(QStringLiteral("Still to weigh: ")));
    weighK7();
    EXPECT_TRUE(page().tag()->hasFocus());
    EXPECT_TRUE(page().tag()->text().isEmpty()) << "ready for the next";
    EXPECT_EQ(cell(0, WeighInModel::State), QStringLiteral("✓ right"));
    EXPECT_EQ(cell(0, WeighInModel::Book), QStringLiteral("60.0 m ± 1.4 m"));
    weigh("k-4", "489");
    ASSERT_TRUE(becomes([&] { return lines() == 2; }));
    EXPECT_EQ(cell(0, WeighInModel::Tag), QStringLiteral("K-4"));
    EXPECT_EQ(cell(0, WeighInModel::State), QStringLiteral("○ new"));
    weigh("K-7", "250");
    ASSERT_TRUE(becomes([&] { return cell(0, WeighInModel::Scale) == QStringLiteral("250 g"); })) << "weighed again";
    EXPECT_EQ(lines(), 2);
    EXPECT_TRUE(page().progress().contains(QStringLiteral("2 weighed.")));
    EXPECT_EQ(lot("K-7").length, metres(60)) << "nothing is booked unasked";
}

TEST_F(AtTheScale, AFindingIsExplainedBookedAndTakenBack) {
    weighK7();
    weigh("K-7", "233"); // a job of 11.2 m is missing
    ASSERT_TRUE(becomes([&] { return cell(0, WeighInModel::State) == QStringLiteral("▲ look"); }));
    EXPECT_TRUE(page().story().contains(QStringLiteral("11.1 m less than the book says. It may be: a job that nobody "
                                                       "booked;")))
        << page().story().toStdString();
    toTheLines();
    press(Qt::Key_B);
    ASSERT_TRUE(saysSoon(QStringLiteral("K-7 holds 48.88 m now, as it was weighed. Ctrl+Z takes that back.")))
        << message().toStdString();
    ASSERT_TRUE(becomes([&] { return cell(0, WeighInModel::State) == QStringLiteral("● booked"); }));
    EXPECT_LT(lot("K-7").length, metres(49));
    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("K-7 is on the shelf with 60 m, as before.")));
    EXPECT_EQ(lot("K-7").length, metres(60));
    ASSERT_TRUE(becomes([&] { return cell(0, WeighInModel::State) == QStringLiteral("▲ look"); }));
}

TEST_F(AtTheScale, WhatCannotBeStandsBesideTheLineAndNothingTypedIsLost) {
    weigh("X-9", "252");
    ASSERT_TRUE(becomes([&] { return !page().note()->problem().isEmpty(); }));
    EXPECT_TRUE(page().note()->problem().contains(QStringLiteral("X-9")));
    EXPECT_EQ(page().gross()->readable(), Mass::fromMilligrams(252'000));
    press(Qt::Key_Escape);
    press(Qt::Key_W);
    weigh("K-7", "heavy");
    EXPECT_TRUE(page().note()->problem().contains(QStringLiteral("write it as 236 or 236.4 g")))
        << page().note()->problem().toStdString();
    EXPECT_TRUE(page().gross()->hasFocus());
    page().gross()->selectAll();
    type("149");
    press(Qt::Key_Tab);
    type("150");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] {
        return page().note()->problem().contains(QStringLiteral("more than the empty spool's 150 g"));
    })) << page().note()->problem().toStdString();
    EXPECT_TRUE(page().gross()->hasFocus());
    EXPECT_EQ(lines(), 0);
}

TEST_F(AtTheScale, TheSheetIsPrintedAndTheStockTakeEndedAndGoneOnWithAfterAPause) {
    weighK7();
    press(Qt::Key_Escape);
    ASSERT_TRUE(becomes([&] { return stockroom().shelf()->hasFocus(); }));
    press(Qt::Key_W);
    ASSERT_TRUE(becomes([&] { return lines() == 1; })) << "it goes on where it was left";
    toTheLines();
    press(Qt::Key_D);
    ASSERT_TRUE(saysSoon(QStringLiteral("The stock-take is ended.")));
    EXPECT_EQ(lines(), 1) << "it stays in view to be printed";
    EXPECT_TRUE(page().progress().contains(QStringLiteral("ended Thu 12 Mar 11:00 by ")));
    press(Qt::Key_P);
    ASSERT_TRUE(becomes([&] { return m_tray.pages.size() == 1; }));
    EXPECT_TRUE(saysSoon(QStringLiteral("Stock-take by weight is kept as stock-take-1.pdf")));
    press(Qt::Key_Escape);
    press(Qt::Key_W);
    ASSERT_TRUE(becomes([&] { return lines() == 0; })) << "the next one begins with the first reel";
}

} // namespace
} // namespace rw::ui::test
