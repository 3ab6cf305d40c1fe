// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/books/books_station.h"
#include "ui/books/contents_list.h"
#include "ui/books/open_page.h"
#include "ui/books/pay_sheet.h"
#include "ui/presenter/open_matters_presenter.h"
#include "ui/shell/guide_window.h"
#include "ui/shell/history_sheet.h"
#include "ui/widgets/money_edit.h"

#include <QTextBrowser>

namespace rw::ui::test {
namespace {

class AtTheBooks : public AtTheWindow {
protected:
    explicit AtTheBooks(Shop shop = Shop::Stocked)
        : AtTheWindow(shop) {}
    void goToTheBooks() {
        press(Qt::Key_4, Qt::ControlModifier);
        ASSERT_TRUE(becomes([&] { return books().isVisible() && books().contents()->hasFocus(); }));
    }
    BooksStation& books() { return *m_window->books(); }
    OpenPage& openPage() { return *qobject_cast<OpenPage*>(books().pages().front()); }
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

} // namespace
} // namespace rw::ui::test
