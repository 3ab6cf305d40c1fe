// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/owner.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/books/books_station.h"
#include "ui/books/contents_list.h"
#include "ui/books/earned_page.h"
#include "ui/books/export_page.h"
#include "ui/books/open_page.h"
#include "ui/books/pay_sheet.h"
#include "ui/books/pin_page.h"
#include "ui/books/takings_page.h"
#include "ui/presenter/earned_presenter.h"
#include "ui/presenter/open_matters_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/presenter/takings_presenter.h"
#include "ui/shell/guide_window.h"
#include "ui/shell/history_sheet.h"
#include "ui/stockroom/life_page.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/text/format.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/pin_sheet.h"

#include <QDir>
#include <QFile>
#include <QTextBrowser>

namespace rw::ui::test {
namespace {

class AtTheBooks : public AtTheWindow {
protected:
    void goToTheBooks() {
        press(Qt::Key_4, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return books().isVisible() && books().contents()->hasFocus(); }));
    }
    BooksStation& books() { return *m_window->books(); }
    template<class Page>
    Page& page() {
        return *books().findChild<Page*>();
    }
    OpenPage& openPage() { return page<OpenPage>(); }
    TakingsPage& takingsPage() { return page<TakingsPage>(); }
    EarnedPage& earnedPage() { return page<EarnedPage>(); }
    PinPage& pinPage() { return page<PinPage>(); }
    const std::vector<desk::OpenMatter>& matters() { return openPage().presenter().matters(); }
    Money paidFor(JobId job) {
        return look([&](desk::Transaction& t) { return t.jobs().paid(job); });
    }
    desk::OpenMatter matterOf(JobId job) {
        const auto open = look([](desk::Transaction& t) { return t.reports().openMatters(); });
        return *std::ranges::find_if(open, [&](const auto& matter) { return matter.job.id == job; });
    }
};

TEST_F(AtTheBooks, ContentsAndPageChangeHandsByKeys) {
    goToTheBooks();
    EXPECT_TRUE(m_window->keys()->text().contains(QStringLiteral("Enter into the page")));
    EXPECT_FALSE(m_window->keys()->text().contains(QStringLiteral("take a payment")));
    ASSERT_TRUE(becomes([&] { return openPage().presenter().isLoaded(); }));
    press(Qt::Key_Right);
    EXPECT_TRUE(openPage().list()->hasFocus());
    EXPECT_TRUE(m_window->keys()->text().contains(QStringLiteral("P take a payment")));
    EXPECT_FALSE(m_window->keys()->text().contains(QStringLiteral("into the page")));
    press(Qt::Key_Escape);
    EXPECT_TRUE(books().contents()->hasFocus());
    press(Qt::Key_F1);
    ASSERT_TRUE(becomes([&] { return m_window->guide()->isActiveWindow(); }));
    EXPECT_TRUE(m_window->guide()->text()->toPlainText().startsWith(QStringLiteral("Books")));
}

TEST_F(AtTheBooks, ACustomerIsToldAndPaysInParts) {
    goToTheBooks();
    ASSERT_TRUE(becomes([&] { return !matters().empty(); }));
    const desk::OpenMatter first = matters().front();
    press(Qt::Key_Return);
    press(Qt::Key_T);
    press(Qt::Key_M); // by a message
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("%1: the customer was told.").arg(first.job.number)));
    EXPECT_EQ(matterOf(first.job.id).told, kThursday);
    ASSERT_TRUE(becomes([&] { return openPage().list()->hasFocus(); }));

    press(Qt::Key_P);
    EXPECT_EQ(openPage().paySheet()->amount()->readable(), first.owed()) << "all of it is proposed";
    press(Qt::Key_A, Qt::ControlModifier);
    type("abc");
    press(Qt::Key_Return);
    EXPECT_TRUE(openPage().paySheet()->margin().startsWith(QStringLiteral("✕ ")));
    EXPECT_TRUE(openPage().paySheet()->amount()->hasFocus());
    press(Qt::Key_A, Qt::ControlModifier);
    type("10");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is still owed")));
    EXPECT_EQ(paidFor(first.job.id), Money::fromMinor(first.paid.minor() + 1000, Currency::pounds()));
    ASSERT_TRUE(becomes([&] { return matters().front().paid == paidFor(first.job.id); }));

    press(Qt::Key_P);
    press(Qt::Key_A, Qt::ControlModifier);
    type("500");
    press(Qt::Key_Return);
    EXPECT_EQ(paidFor(first.job.id), matters().front().paid) << "more than is owed is said first";
    EXPECT_TRUE(openPage().paySheet()->margin().contains(QStringLiteral("▲"))) << "and where it is read";
    press(Qt::Key_Escape);
    EXPECT_TRUE(openPage().list()->hasFocus()) << "Esc closes the sheet first";
    press(Qt::Key_Escape);
    EXPECT_TRUE(books().contents()->hasFocus());
}

TEST_F(AtTheBooks, EnterShowsWhatWasStrungForTheCustomerAndEscComesBack) {
    goToTheBooks();
    ASSERT_TRUE(becomes([&] { return !matters().empty(); }));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return m_window->history()->isVisible(); }));
    EXPECT_TRUE(m_window->history()->title().contains(QString::fromStdString(matters().front().job.customer)));
    press(Qt::Key_Escape);
    ASSERT_TRUE(becomes([&] { return openPage().list()->hasFocus(); }));
}

TEST_F(AtTheBooks, TakingsGoBackAndForthByDaysAndMonths) {
    goToTheBooks();
    press(Qt::Key_Down);
    press(Qt::Key_Right);
    ASSERT_TRUE(becomes([&] { return takingsPage().presenter().ofDay().has_value(); }));
    EXPECT_EQ(takingsPage().dayTitle(), QStringLiteral("Thursday 12 March 2026"));
    EXPECT_FALSE(m_window->keys()->text().contains(QStringLiteral("day after")));
    press(Qt::Key_Left);
    EXPECT_EQ(takingsPage().dayTitle(), QStringLiteral("Wednesday 11 March 2026"));
    EXPECT_TRUE(m_window->keys()->text().contains(QStringLiteral("day after")));
    press(Qt::Key_PageUp);
    EXPECT_EQ(takingsPage().dayTitle(), QStringLiteral("Wednesday 11 February 2026"));
    press(Qt::Key_Home);
    EXPECT_EQ(takingsPage().dayTitle(), QStringLiteral("Thursday 12 March 2026"));
    ASSERT_TRUE(becomes([&] { return takingsPage().presenter().ofMonth().has_value(); }));
    const auto& month = takingsPage().monthFigures();
    EXPECT_EQ(month.index(month.rowCount() - 1, 1).data().toString(),
              moneyText(takingsPage().presenter().ofMonth()->total));
    press(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(books().page()->name(), QStringLiteral("Earned"));
    EXPECT_TRUE(books().isInside()) << "the keyboard stays on the pages";
}

TEST_F(AtTheBooks, APinIsSetAndAskedForAgainWhenTheBooksWereLeft) {
    goToTheBooks();
    books().open(&pinPage(), false);
    press(Qt::Key_Return);
    ASSERT_TRUE(pinPage().pin()->hasFocus()) << "there is none to give first";
    type("4417");
    press(Qt::Key_Tab);
    type("4471");
    press(Qt::Key_Return);
    EXPECT_FALSE(pinPage().problem().isEmpty()) << "typed differently the second time";
    ASSERT_TRUE(pinPage().again()->hasFocus());
    type("4417");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("The PIN is kept.")));
    EXPECT_TRUE(pinPage().pin()->text().isEmpty());

    press(Qt::Key_1, Qt::ControlModifier);
    press(Qt::Key_4, Qt::ControlModifier);
    books().open(&earnedPage(), true);
    ASSERT_TRUE(becomes([&] { return earnedPage().pinSheet()->line()->hasFocus(); }));
    EXPECT_TRUE(earnedPage().isLocked());
    type("0000");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return earnedPage().pinSheet()->margin().startsWith(QStringLiteral("✕ ")); }));
    EXPECT_TRUE(earnedPage().pinSheet()->line()->hasFocus());
    EXPECT_TRUE(earnedPage().pinSheet()->line()->text().isEmpty());
    type("4417");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return !earnedPage().isLocked() && earnedPage().presenter().earned().has_value(); }));
    const auto& figures = earnedPage().figures();
    EXPECT_EQ(figures.rowCount(), static_cast<int>(earnedPage().presenter().earned()->jobs.size()) + 1);
    press(Qt::Key_H, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return earnedPage().isLocked(); }));
    EXPECT_EQ(figures.rowCount(), 0);
    EXPECT_TRUE(earnedPage().pinSheet()->line()->hasFocus());
}

TEST_F(AtTheBooks, WhatAReelCostIsShownInTheStockroomToWhoGivesThePin) {
    ASSERT_TRUE(desk::inTransaction(*m_ledger, desk::Access::Write, [](desk::Transaction& t) {
                    return desk::keepPin(t, **desk::preparePin(t, {{}, "4417"}));
                }).has_value());
    press(Qt::Key_3, Qt::ControlModifier);
    auto& stockroom = *m_window->stockroom();
    ASSERT_TRUE(becomes([&] { return stockroom.presenter().isLoaded(); }));
    press(Qt::Key_F); // from the first string to its reel
    ASSERT_TRUE(becomes([&] { return stockroom.presenter().life().has_value(); }));
    press(Qt::Key_Return);
    const auto cost = [&] { return stockroom.lifePage()->facts().contains(QStringLiteral("£")); };
    ASSERT_TRUE(stockroom.lifePage()->isVisible());
    EXPECT_FALSE(cost());
    ASSERT_TRUE(becomes([&] { return m_window->keys()->text().contains(QStringLiteral("what was paid")); }));
    press(Qt::Key_H, Qt::ControlModifier);
    ASSERT_TRUE(stockroom.pinSheet()->line()->hasFocus());
    type("0000");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return stockroom.pinSheet()->margin().startsWith(QStringLiteral("✕ ")); }));
    type("4417");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes(cost));
    EXPECT_TRUE(stockroom.lifePage()->isVisible());
    press(Qt::Key_1, Qt::ControlModifier);
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_FALSE(cost()) << "the station was left";
}

TEST_F(AtTheBooks, EverythingGoesIntoAFolderAsFiles) {
    m_folders.folder = m_folder.filePath(QStringLiteral("as files"));
    goToTheBooks();
    press(Qt::Key_PageDown, Qt::ControlModifier);
    press(Qt::Key_PageDown, Qt::ControlModifier);
    press(Qt::Key_PageDown, Qt::ControlModifier);
    ASSERT_EQ(books().page()->name(), QStringLiteral("As files"));
    ASSERT_TRUE(becomes([&] { return !page<ExportPage>().words().contains(QStringLiteral("left out")); }));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("12 files with ")));
    EXPECT_EQ(m_folders.asked, 1);
    const QDir out(m_folders.folder);
    EXPECT_EQ(out.entryList({QStringLiteral("*.csv")}).size(), 12);
    QFile lots(out.filePath(QStringLiteral("lots.csv")));
    ASSERT_TRUE(lots.open(QIODevice::ReadOnly));
    EXPECT_TRUE(lots.readLine().contains("price")) << "no PIN: nothing is left out";
}

TEST(CsvFilesTest, WhereOneFileMayNotBeNoneComes) {
    const QTemporaryDir folder;
    const app::CsvFiles files([](const QString& path) -> Result<void> {
        if (path.endsWith(QStringLiteral("lots.csv"))) {
            return refuse(Code::FileUnwritable, {{"file", path.toStdString()}, {"reason", std::string("the ledger")}});
        }
        return {};
    });
    const std::vector<desk::LedgerTable> tables{{"jobs", {{"job", desk::ColumnKind::Number}}, {}},
                                                {"lots", {{"tag", desk::ColumnKind::Words}}, {}}};
    const auto goOn = [](int) { return true; };
    const auto refused = files.write(folder.path(), tables, Currency::pounds(), goOn);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), Code::FileUnwritable);
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
    EXPECT_EQ(app::CsvFiles().write(folder.path(), tables, Currency::pounds(), [](int written) { return written < 2; }),
              false);
    EXPECT_TRUE(QDir(folder.path()).isEmpty()) << "stopped before they were in place";
    EXPECT_EQ(app::CsvFiles().write(folder.path(), tables, Currency::pounds(), goOn), true);
    EXPECT_EQ(QDir(folder.path()).count(), 4U) << "two files beside . and ..";
}

TEST_F(AtTheBooks, WhoChoosesNoFolderWritesNothing) {
    goToTheBooks();
    books().open(&page<ExportPage>(), true);
    press(Qt::Key_Return);
    EXPECT_EQ(m_folders.asked, 1);
    EXPECT_FALSE(message().contains(QStringLiteral("files with")));
}

} // namespace
} // namespace rw::ui::test
