// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/order_presenter.h"

#include "core/base/world_error.h"
#include "tests/ui/support/at_work.h"
#include "ui/presenter/asked_for_none_presenter.h"

#include <algorithm>
#include <iterator>
#include <optional>

namespace rw::ui::test {
namespace {

/// Keeps what it was given, or breaks where the test says so.
class KeptOrder final : public TableFiles {
public:
    Result<bool> write(const QString&, const std::vector<desk::LedgerTable>& tables, Currency,
                       const GoOn&) const override {
        if (breaks) {
            throw FileLost("order.csv: no space left on device");
        }
        if (refuses) {
            return refuse(Code::FileUnwritable, {{"file", std::string("/orders")}, {"reason", std::string("no room")}});
        }
        std::ranges::copy(tables, std::back_inserter(kept));
        return true;
    }
    mutable std::vector<desk::LedgerTable> kept;
    bool breaks = false;
    bool refuses = false;
};

class Ordering : public AtWork {
protected:
    Ordering() {
        QObject::connect(&orders, &OrderPresenter::saved, [this](const QString& folder) { saved << folder; });
        QObject::connect(&orders, &OrderPresenter::notSaved, [this](const QString& sentence) { why = sentence; });
    }
    KeptOrder files;
    OrderPresenter orders{runner, shift, files};
    QStringList saved;
    QString why;
};

TEST_F(Ordering, SaysWhatToOrderOnceTheLedgerHasAnswered) {
    EXPECT_FALSE(orders.isLoaded());
    orders.refresh();
    ASSERT_TRUE(orders.isLoaded());
    ASSERT_EQ(orders.drafts().size(), 2U);
    EXPECT_EQ(orders.drafts().back().lines.front().article.code, "L");
}

TEST_F(Ordering, TheFileHasPricesForTheOwnerAlone) {
    orders.save(QStringLiteral("/orders"), false);
    orders.save(QStringLiteral("/orders"), true);
    ASSERT_EQ(files.kept.size(), 2U);
    EXPECT_EQ(files.kept[0].name, "order");
    EXPECT_EQ(files.kept[0].rows.size(), 2U);
    EXPECT_EQ(files.kept[1].columns.size(), files.kept[0].columns.size() + 1);
    EXPECT_EQ(files.kept[1].columns.back().name, "price_each");
    EXPECT_EQ(saved, (QStringList{QStringLiteral("/orders"), QStringLiteral("/orders")}));
}

TEST_F(Ordering, PressedTwiceItIsSavedOnce) {
    runner.held = true;
    orders.save(QStringLiteral("/orders"), true);
    orders.save(QStringLiteral("/orders"), true);
    runner.release();
    EXPECT_EQ(files.kept.size(), 1U);
}

TEST_F(Ordering, WhyNothingWasSavedIsSaid) {
    files.refuses = true;
    orders.save(QStringLiteral("/orders"), true);
    EXPECT_TRUE(why.contains(QStringLiteral("no room"))) << why.toStdString();
    files.refuses = false;
    files.breaks = true;
    why.clear();
    orders.save(QStringLiteral("/orders"), true);
    EXPECT_FALSE(why.isEmpty());
    EXPECT_TRUE(saved.isEmpty());
    files.breaks = false;
    orders.save(QStringLiteral("/orders"), true);
    EXPECT_EQ(saved.size(), 1) << "it can be tried again";
}

class AskingInVain : public AtWork {
protected:
    AskingInVain() {
        QObject::connect(&asked, &AskedForNonePresenter::wroteDown,
                         [this](const StringArticle& string) { wrote << QString::fromStdString(string.code); });
        QObject::connect(&asked, &AskedForNonePresenter::refused,
                         [this](const Refusal& refusal) { why = refusal.code(); });
    }
    AskedForNonePresenter asked{runner, shift};
    QStringList wrote;
    std::optional<Code> why;
};

TEST_F(AskingInVain, OffersEveryStringThatIsNotRetired) {
    ledger.rows.articles.front().retired = true;
    asked.refresh();
    ASSERT_EQ(asked.strings().size(), 3U);
    EXPECT_EQ(asked.strings().front().article.code, "L");
}

TEST_F(AskingInVain, PressedTwiceItIsWrittenDownOnce) {
    runner.held = true;
    asked.writeDown(string("T"));
    asked.writeDown(string("T"));
    runner.release();
    EXPECT_EQ(ledger.rows.askedForNone.size(), 1U);
    EXPECT_EQ(ledger.rows.askedForNone.front().by.station, "counter");
    asked.begin(); // somebody else
    asked.writeDown(string("T"));
    EXPECT_EQ(ledger.rows.askedForNone.size(), 2U);
    EXPECT_EQ(wrote, (QStringList{QStringLiteral("T"), QStringLiteral("T")}));
}

// The answer was lost, not the row: the same wish again finds it there.
TEST_F(AskingInVain, AnAnswerThatWasLostCountsNothingTwice) {
    runner.world = HeldDeskRunner::World::LostAfter;
    asked.writeDown(string("T"));
    EXPECT_TRUE(wrote.isEmpty());
    runner.world = HeldDeskRunner::World::Whole;
    asked.writeDown(string("T"));
    EXPECT_EQ(ledger.rows.askedForNone.size(), 1U);
    EXPECT_EQ(wrote, QStringList{QStringLiteral("T")});
}

TEST_F(AskingInVain, AStringThatIsNotThereIsRefused) {
    asked.writeDown(StringArticleId::of(999'999));
    EXPECT_EQ(why, Code::NotFound);
}

} // namespace
} // namespace rw::ui::test
