// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/at_work.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/text/ahead_words.h"
#include "ui/text/lot_words.h"
#include "ui/text/stock_words.h"
#include "ui/text/stockroom_words.h"

#include <algorithm>

namespace rw::ui::test {
namespace {

class Stockroom : public AtWork {
protected:
    Stockroom() {
        QObject::connect(&stockroom, &StockroomPresenter::refused, [this](const Refusal& refusal) { why = refusal; });
        stockroom.refresh();
    }
    const desk::ShelfString& onTheShelf(std::string_view code) {
        return *std::ranges::find_if(stockroom.shelf(), [&](const auto& s) { return s.article.code == code; });
    }
    StockroomPresenter::Receipt reelOf(std::string_view code, const char* tag) {
        return {.article = string(code),
                .kind = LotKind::Reel,
                .tag = QString::fromLatin1(tag),
                .nominal = metres(200),
                .price = Money::fromMinor(11000, Currency::pounds()),
                .shipping = Money::zero(Currency::pounds()),
                .batch = {}};
    }

    StockroomPresenter stockroom{runner, shift};
    std::optional<Refusal> why;
};

// Scenario 3: 27.6 m at 9.3 m a job, never "3".
TEST_F(Stockroom, TwoJobsAndTheThirdWouldBeShort) {
    const auto& lots = onTheShelf("T").lots;
    ASSERT_EQ(lots.size(), 1U);
    EXPECT_EQ(wholeJobsText(lots.front().whole), QStringLiteral("2 jobs; a third would be 0.3 m short"));
}

// Scenario 1: 48.7 m, of which open jobs will take 32.4 m.
TEST_F(Stockroom, SaysWhatRunsShort) {
    EXPECT_EQ(holdingText(onTheShelf("L").holding), QStringLiteral("48.7 m left, 32.4 m promised, 16.3 m free"));
    EXPECT_TRUE(onTheShelf("L").runningShort());
    EXPECT_TRUE(orderNowText(stockroom.shelf()).startsWith(QStringLiteral("▼ Order now: L Larkspun 130, likely out ")))
        << orderNowText(stockroom.shelf()).toStdString();
}

TEST_F(Stockroom, LotsThatAreGoneAreKeptUpToDateWhileTheyAreLookedAt) {
    stockroom.lookAtClosed(string("K"));
    const auto before = stockroom.closed().size();
    stockroom.takeOff(*lot("K-2").id, desk::LotLeaves::ThrownAway, QStringLiteral("frayed"));
    ASSERT_EQ(stockroom.closed().size(), before + 1);
    EXPECT_EQ(stockroom.closed().front().lot.tag, "K-2");
    EXPECT_EQ(closedLotText(stockroom.closed().front()), QStringLiteral("thrown away · batch A22"));
    const auto readsOfAChange = [this] {
        const int reads = runner.reads;
        shift.noteChange();
        return runner.reads - reads;
    };
    const int whileLookedAt = readsOfAChange();
    std::vector<std::string> opened;
    QObject::connect(&stockroom, &StockroomPresenter::closedLifeRead,
                     [&](const desk::LotLife& life) { opened.push_back(life.lot.tag); });
    runner.held = true;
    stockroom.openClosed(*lot("K-2").id);
    stockroom.leaveClosed();
    runner.release();
    EXPECT_TRUE(opened.empty()) << "left before it was read";
    stockroom.openClosed(*lot("K-2").id);
    EXPECT_EQ(opened, std::vector<std::string>{"K-2"});
    EXPECT_EQ(readsOfAChange(), whileLookedAt - 1) << "nobody looks at them any more";
}

TEST_F(Stockroom, AReelIsReceivedOnceUnderTheNextTag) {
    std::vector<std::string> tags;
    QObject::connect(&stockroom, &StockroomPresenter::received, [&](const Lot& lot) { tags.push_back(lot.tag); });
    runner.held = true;
    stockroom.receive(reelOf("L", ""));
    stockroom.receive(reelOf("L", ""));
    runner.release();
    ASSERT_EQ(tags.size(), 1U);
    EXPECT_EQ(lot(tags.front()).length, metres(200));
    EXPECT_EQ(onTheShelf("L").lots.size(), 2U);
    EXPECT_FALSE(onTheShelf("L").runningShort());
}

TEST_F(Stockroom, WhoWorksIsAskedBeforeAnythingIsWritten) {
    Shift nobody{clock};
    nobody.setShop(facts());
    int asked = 0;
    QObject::connect(&nobody, &Shift::staffWanted, [&] { ++asked; });
    StockroomPresenter unmanned{runner, nobody};
    const Lot k2 = lot("K-2");
    unmanned.receive(reelOf("L", ""));
    unmanned.receive(StockroomPresenter::Parcel{"key", {}, {}, Money::zero(Currency::pounds())});
    unmanned.correct(*k2.id, metres(6.35));
    unmanned.takeOff(*k2.id, desk::LotLeaves::ThrownAway, QStringLiteral("frayed"));
    unmanned.takeBack();
    unmanned.addString({});
    unmanned.changeString({});
    EXPECT_EQ(asked, 7);
    EXPECT_EQ(runner.writes, 0);
    EXPECT_EQ(lot("K-2").length, k2.length);
}

TEST_F(Stockroom, ATagInUseIsRefused) {
    stockroom.receive(reelOf("L", "L-3"));
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ImpossibleValue);
    EXPECT_EQ(onTheShelf("L").lots.size(), 1U);
}

TEST_F(Stockroom, ACorrectionIsALineInTheLifeOfTheLot) {
    const LotId k2 = *lot("K-2").id;
    stockroom.select(k2);
    const auto lines = stockroom.life()->movements.size();
    std::optional<Length> change;
    QObject::connect(&stockroom, &StockroomPresenter::corrected, [&](const Lot&, Length by) { change = by; });
    stockroom.correct(k2, metres(6.35));
    EXPECT_EQ(change, Length::fromMillimetres(-50));
    EXPECT_EQ(lot("K-2").length, metres(6.35));
    EXPECT_EQ(stockroom.life()->movements.size(), lines + 1);
    EXPECT_EQ(correctedText(lot("K-2"), *change),
              QStringLiteral("K-2 holds 6.35 m now; the book was corrected by −0.05 m."));
}

TEST_F(Stockroom, ADeliveryComesInOnceAndIsTakenBackWhole) {
    std::vector<std::vector<std::string>> proposed;
    std::vector<Lot> came;
    std::vector<Lot> back;
    QObject::connect(&stockroom, &StockroomPresenter::tagsProposed, [&](const auto& tags) { proposed = tags; });
    QObject::connect(&stockroom, &StockroomPresenter::delivered, [&](const auto& lots) { came = lots; });
    QObject::connect(&stockroom, &StockroomPresenter::tookBack, [&](const auto& lots) { back = lots; });
    const StockroomPresenter::Parcel parcel{.requestKey = "this sheet",
                                            .supplier = QStringLiteral(" Southmere "),
                                            .lines = {{.article = string("L"),
                                                       .count = 3,
                                                       .kind = LotKind::Reel,
                                                       .nominal = metres(200),
                                                       .priceEach = Money::fromMinor(14000, Currency::pounds())}},
                                            .shipping = Money::fromMinor(1000, Currency::pounds())};
    EXPECT_FALSE(stockroom.canTakeBack());
    stockroom.proposeTags(parcel.lines);
    ASSERT_EQ(proposed.size(), 1U);
    runner.held = true;
    stockroom.receive(parcel);
    stockroom.receive(parcel);
    runner.release();
    ASSERT_EQ(came.size(), 3U);
    EXPECT_EQ(came.front().tag, proposed.front().front());
    EXPECT_EQ(onTheShelf("L").lots.size(), 4U);
    std::vector<std::string> suppliers;
    QObject::connect(&stockroom, &StockroomPresenter::suppliersRead, [&](const auto& names) { suppliers = names; });
    stockroom.readSuppliers();
    EXPECT_EQ(suppliers, (std::vector<std::string>{"Fennimore", "Northgate String Company", "Southmere"}));

    ASSERT_TRUE(stockroom.canTakeBack());
    stockroom.takeBack();
    EXPECT_EQ(back.size(), 3U);
    EXPECT_EQ(onTheShelf("L").lots.size(), 1U);
    EXPECT_FALSE(stockroom.canTakeBack()) << "once";
}

TEST_F(Stockroom, WhatIsThrownAwayNeedsAReason) {
    const LotId k2 = *lot("K-2").id;
    std::optional<desk::LotLeaves> left;
    QObject::connect(&stockroom, &StockroomPresenter::tookOff, [&](const Lot&, desk::LotLeaves how) { left = how; });
    stockroom.takeOff(k2, desk::LotLeaves::ThrownAway, QStringLiteral("  "));
    ASSERT_TRUE(why);
    EXPECT_EQ(why->text("what"), "reason");
    EXPECT_FALSE(stockroom.canTakeBack());
    stockroom.takeOff(k2, desk::LotLeaves::Returned, QStringLiteral("wrong colour"));
    EXPECT_EQ(left, desk::LotLeaves::Returned);
    EXPECT_FALSE(lot("K-2").isOpen());
    stockroom.takeBack();
    EXPECT_TRUE(lot("K-2").isOpen());
}

TEST_F(Stockroom, ANewStringHasItsPriceAndItsBoard) {
    StringArticle article;
    article.code = "M";
    article.name = "Millrace 127";
    article.diameterMicrometres = 1270;
    std::string added;
    QObject::connect(&stockroom, &StockroomPresenter::stringAdded, [&](const StringArticle& string) {
        added = onTheShelf(string.code).article.name; // whoever hears of it finds it on the shelf
    });
    stockroom.addString({article, Money::fromMinor(1100, Currency::pounds()), std::nullopt});
    EXPECT_FALSE(why);
    EXPECT_EQ(added, "Millrace 127");
    stockroom.addString({article, Money::fromMinor(1100, Currency::pounds()), std::nullopt});
    ASSERT_TRUE(why) << "the code is in use";
    EXPECT_EQ(why->code(), Code::ImpossibleValue);
}

TEST_F(Stockroom, AStringIsReadAndChanged) {
    std::optional<desk::SoldString> found;
    QObject::connect(&stockroom, &StockroomPresenter::stringRead, [&](const desk::SoldString& s) { found = s; });
    stockroom.readString(string("L"));
    ASSERT_TRUE(found);
    EXPECT_EQ(found->article.name, "Larkspun 130");
    ASSERT_TRUE(found->fullBed);
    found->article.colour = "honey";
    found->halfBed = Money::fromMinor(925, Currency::pounds());
    stockroom.changeString(*found);
    EXPECT_FALSE(why);
    EXPECT_EQ(onTheShelf("L").article.colour, "honey");
    stockroom.readString(string("L"));
    EXPECT_EQ(found->halfBed, Money::fromMinor(925, Currency::pounds()));
    found->article.name.clear();
    stockroom.changeString(*found);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->text("what"), "name");
}

} // namespace
} // namespace rw::ui::test
