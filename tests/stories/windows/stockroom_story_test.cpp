// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/sold_string.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/string_choice.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/closed_lots_page.h"
#include "ui/stockroom/correct_strip.h"
#include "ui/stockroom/delivery_sheet.h"
#include "ui/stockroom/keep_strip.h"
#include "ui/stockroom/life_page.h"
#include "ui/stockroom/life_strip.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/stockroom/string_strip.h"
#include "ui/stockroom/take_off_strip.h"
#include "ui/widgets/count_edit.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"

#include <algorithm>

namespace rw::ui::test {
namespace {

class AtTheShelf : public AtTheWindow {
protected:
    AtTheShelf() {
        press(Qt::Key_3, Qt::ControlModifier);
        EXPECT_TRUE(becomes([&] { return stockroom().presenter().isLoaded(); }));
        EXPECT_TRUE(becomes([&] { return stockroom().isVisible(); }));
        stockroom().shelf()->setCurrentLot(*lot("K-2").id); // below what runs short
    }
    const desk::ShelfString& kestrelline() {
        return *std::ranges::find(stockroom().presenter().shelf(), "K",
                                  [](const desk::ShelfString& string) { return string.article.code; });
    }
    StockroomStation& stockroom() { return *m_window->stockroom(); }
    std::size_t lots() {
        return look([](desk::Transaction& t) { return t.lots().open().size(); });
    }
    /// What is wrong, beside whichever line of a strip it stands.
    static QStringList problemsOn(const QWidget& strip) {
        QStringList problems;
        for (const auto* note : strip.findChildren<MarginNote*>()) {
            if (!note->problem().isEmpty()) {
                problems << note->problem();
            }
        }
        return problems;
    }
    void tab(int times = 1) {
        for (int i = 0; i < times; ++i) {
            press(Qt::Key_Tab);
        }
    }
};

TEST_F(AtTheShelf, ANewStringIsTheOneThatIsReceivedNext) {
    press(Qt::Key_Up); // the squash string, whose sport the new one most likely has
    press(Qt::Key_N);
    type("O");
    tab();
    type("Otterline 118");
    tab(4); // colour, sport, kind
    type("1.18");
    tab();
    type("11.01");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("O Otterline 118 is on the list. R receives a reel of it.")));
    press(Qt::Key_R);
    DeliveryRow& line = stockroom().deliverySheet()->row(0);
    EXPECT_EQ(line.strings()->currentText(), QStringLiteral("O Otterline 118"));
    tab(3);
    type("220 yd");
    tab();
    EXPECT_FALSE(line.note()->problem().isEmpty());
    press(Qt::Key_Backtab, Qt::ShiftModifier);
    line.length()->selectAll();
    type("660 ft");
    tab();
    type("84");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Received O-1: 201.16 m. Write O-1 on it.")));
    const StringArticleId received = lot("O-1").article;
    const auto otterline = look([&](desk::Transaction& t) { return *t.strings().get(received); });
    EXPECT_EQ(otterline.sport, Sport::Squash);
    EXPECT_EQ(otterline.gaugeName, "17") << "as nearestGaugeName has it";
    EXPECT_EQ(lot("O-1").length, Length::fromMillimetres(201'168)) << "the book keeps what is there";
}

TEST_F(AtTheShelf, WordsThatAreTooLongAreSentBackAndNotCut) {
    const auto before = lots();
    press(Qt::Key_R);
    DeliveryRow& line = stockroom().deliverySheet()->row(0);
    tab(4);
    type("84");
    line.tag()->setText(QString(21, QLatin1Char('t')));
    line.batch()->setText(QString(81, QLatin1Char('b')));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] {
        return line.note()->problem().contains(QStringLiteral("batch is too long: 81 characters"));
    })) << line.note()->problem().toStdString();
    EXPECT_TRUE(line.batch()->hasFocus());
    EXPECT_EQ(line.batch()->text().size(), 81);
    line.batch()->setText(QStringLiteral("A41"));
    press(Qt::Key_Return);
    ASSERT_TRUE(
        becomes([&] { return line.note()->problem().contains(QStringLiteral("tag is too long: 21 characters")); }));
    EXPECT_TRUE(line.tag()->hasFocus());
    EXPECT_EQ(lots(), before);

    press(Qt::Key_Escape);
    press(Qt::Key_N);
    auto* string = stockroom().stringStrip();
    string->code()->setText(QString(21, QLatin1Char('c')));
    tab();
    type("Otterline 118");
    tab(4);
    type("1.18");
    tab();
    type("11");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return !problemsOn(*string).isEmpty(); }));
    EXPECT_TRUE(problemsOn(*string).first().contains(QStringLiteral("code is too long: 21 characters")))
        << problemsOn(*string).first().toStdString();
    EXPECT_TRUE(string->code()->hasFocus());
}

TEST_F(AtTheShelf, AStringIsChangedWhereItStands) {
    press(Qt::Key_E);
    auto* strip = stockroom().stringStrip();
    ASSERT_TRUE(becomes([&] { return strip->nameEdit()->hasFocus(); }));
    EXPECT_EQ(strip->code()->text(), QStringLiteral("K"));
    EXPECT_FALSE(strip->code()->isEnabled());
    type("Kestrelline Pro"); // in place of the name, which is marked
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("K Kestrelline Pro, black is kept; its prices hold from today.")));
    ASSERT_TRUE(becomes([&] { return kestrelline().article.name == "Kestrelline Pro"; }));
    const auto kept = look([](desk::Transaction& t) { return t.strings().all().front(); });
    EXPECT_EQ(kept.name, "Kestrelline Pro");
    EXPECT_EQ(kept.gaugeName, "17") << "what was not touched is as it was";
    EXPECT_TRUE(kept.milligramsPerMetre);
}

// Three reels and a box, entered without the mouse, held against the bill, written down once.
TEST_F(AtTheShelf, ADeliveryOfThreeReelsAndABoxIsReceived) {
    const auto before = lots();
    press(Qt::Key_R);
    DeliverySheet& sheet = *stockroom().deliverySheet();
    EXPECT_EQ(sheet.rows(), 2U) << "the first is of the string that was looked at, the next is blank";
    tab(); // K
    type("2");
    tab(2);
    EXPECT_EQ(sheet.row(0).length()->text(), QStringLiteral("200 m")) << "as its last reel";
    tab();
    type("110");
    tab();
    type("A41");
    tab(3);
    type("l"); // the blank line
    EXPECT_EQ(sheet.rows(), 3U);
    tab(4);
    type("140");
    tab(4);
    type("k");
    tab();
    type("12");
    tab();
    type("p"); // packets
    tab();
    type("12");
    tab();
    type("9");
    tab(4); // batch, weight, tag, and past the blank line's string
    tab(8);
    type("Northgate String Company");
    tab();
    type("15");
    EXPECT_EQ(sheet.sum(), QStringLiteral("3 reels and 12 packets: £468.00, with shipping £483.00"));
    ASSERT_TRUE(becomes([&] { return sheet.row(2).tag()->placeholderText() == QStringLiteral("K-10 to K-21"); }))
        << sheet.row(2).tag()->placeholderText().toStdString();
    EXPECT_EQ(sheet.row(0).tag()->placeholderText(), QStringLiteral("K-8 and K-9"));
    EXPECT_EQ(lots(), before) << "nothing is written before Enter";
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Received 3 reels and 12 packets. Write K-8, K-9 and L-4 on the reels.")));
    EXPECT_EQ(lots(), before + 15);
    EXPECT_EQ(lot("K-9").batch, "A41");
    EXPECT_EQ(lot("K-21").kind, LotKind::Packet);
    EXPECT_EQ(lot("K-21").length, metres(12));
    EXPECT_TRUE(m_ledger->check().empty());

    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("taken back: nothing of it is on the shelf.")));
    EXPECT_EQ(lots(), before);
    EXPECT_TRUE(m_ledger->check().empty());
}

TEST_F(AtTheShelf, TheLifeOfALotThatIsGoneOpensFromTheListOfThem) {
    press(Qt::Key_T); // K-2, the first on the first board
    stockroom().takeOffStrip()->reason()->clear();
    type("frayed");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("K-2 is thrown away")));
    press(Qt::Key_G);
    ClosedLotsPage& page = *stockroom().closedLots();
    ASSERT_TRUE(becomes([&] { return page.list()->hasFocus() && page.list()->model()->rowCount() > 0; }));
    EXPECT_TRUE(page.title().startsWith(QStringLiteral("Gone: K ")));
    EXPECT_TRUE(page.list()->currentIndex().data().toString().startsWith(QStringLiteral("K-2 · ")));
    press(Qt::Key_Return);
    LifePage& life = *stockroom().lifePage();
    ASSERT_TRUE(becomes([&] { return life.isVisible() && life.lines()->hasFocus(); }));
    const auto* lines = life.lines()->model();
    EXPECT_TRUE(lines->index(lines->rowCount() - 1, LotStoryModel::What)
                    .data()
                    .toString()
                    .contains(QStringLiteral("thrown away")))
        << lines->index(lines->rowCount() - 1, LotStoryModel::What).data().toString().toStdString();
    m_shift->noteChange(); // somebody wrote: what is read stays in view
    press(Qt::Key_Escape);
    ASSERT_TRUE(becomes([&] { return page.list()->hasFocus(); }));
    press(Qt::Key_Escape);
    EXPECT_TRUE(becomes([&] { return stockroom().shelf()->hasFocus(); }));
}

TEST_F(AtTheShelf, AnEndIsThrownAwayWithItsReasonAndComesBack) {
    press(Qt::Key_C); // K-2
    type("6.1");
    tab();
    type("the tape says so");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("K-2 holds 6.1 m now")));
    press(Qt::Key_T);
    EXPECT_EQ(stockroom().takeOffStrip()->why(), QStringLiteral("too short for a piece")) << "no job fits on it";
    stockroom().takeOffStrip()->reason()->clear();
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return !problemsOn(*stockroom().takeOffStrip()).isEmpty(); }));
    type("frayed");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("K-2 is thrown away: 6.1 m.")));
    EXPECT_FALSE(lot("K-2").isOpen());
    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("K-2 is on the shelf with 6.1 m, as before.")));
    EXPECT_EQ(lot("K-2").length, metres(6.1));
    EXPECT_TRUE(m_ledger->check().empty());

    ASSERT_TRUE(becomes([&] {
        return stockroom().presenter().life() && stockroom().presenter().life()->lot.tag == "K-2" &&
               stockroom().presenter().life()->lot.isOpen() &&
               stockroom().shelf()->currentIndex().data().toString().startsWith(QStringLiteral("K-2"));
    }));
    press(Qt::Key_Return);
    LifePage& page = *stockroom().lifePage();
    ASSERT_TRUE(becomes([&] { return page.isVisible() && page.lines()->hasFocus(); }));
    const auto* lines = page.lines()->model();
    const int last = lines->rowCount() - 1;
    const auto cell = [&](int row, LotStoryModel::Column column) {
        return lines->index(row, column).data().toString();
    };
    EXPECT_EQ(cell(last, LotStoryModel::Why), QStringLiteral("takes back line %1").arg(last));
    EXPECT_EQ(cell(last - 1, LotStoryModel::Why), QStringLiteral("taken back in line %1; frayed").arg(last + 1));
    EXPECT_EQ(cell(last - 2, LotStoryModel::Why), QStringLiteral("the tape says so"));
    EXPECT_EQ(cell(last, LotStoryModel::Left), QStringLiteral("6.1 m"));
    EXPECT_EQ(cell(last, LotStoryModel::Who), QStringLiteral("Oriel Tamm"));
    EXPECT_TRUE(page.statement().contains(QStringLiteral("6.1 m left")));
    press(Qt::Key_Escape);
    EXPECT_TRUE(stockroom().shelf()->hasFocus());
}

TEST_F(AtTheShelf, ACustomersReelIsKeptUnderTheirName) {
    press(Qt::Key_K);
    ASSERT_TRUE(becomes([&] { return stockroom().keepStrip()->finder()->line()->hasFocus(); }));
    press(Qt::Key_Return);
    EXPECT_EQ(problemsOn(*stockroom().keepStrip()).size(), 1) << "whose is it";
    type("lindobi");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return stockroom().keepStrip()->strings()->hasFocus(); }));
    tab(2);
    type("22");
    tab();
    type("Petra 1");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Petra 1 is kept for Petra Lindobi: 22 m. Write Petra 1 on it.")));
    ASSERT_TRUE(becomes([&] { return stockroom().presenter().kept().size() == 1; }));
    EXPECT_EQ(stockroom().presenter().kept().front().owner, "Petra Lindobi");
    EXPECT_TRUE(lot("Petra 1").owner);
    EXPECT_EQ(kestrelline().lots.size(), 3U) << "it is not the shop's";
}

// A box comes in, a bed is sold from one packet, and nothing of that packet is left.
TEST_F(AtTheShelf, AJobIsStrungFromAPacket) {
    press(Qt::Key_E);
    auto* strip = stockroom().stringStrip();
    ASSERT_TRUE(becomes([&] { return strip->nameEdit()->hasFocus(); }));
    tab(7);
    ASSERT_TRUE(strip->packet()->hasFocus());
    type("12");
    tab();
    type("18");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("K Kestrelline 125, black is kept")));
    ASSERT_TRUE(becomes([&] { return kestrelline().article.packet.has_value(); }));
    press(Qt::Key_R);
    tab();
    type("5");
    tab();
    type("p");
    tab();
    EXPECT_EQ(stockroom().deliverySheet()->row(0).length()->text(), QStringLiteral("12 m")) << "what a packet holds";
    tab();
    type("9");
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("Received 5 packets.")));
    ASSERT_TRUE(becomes([&] { return stockroom().lifeStrip()->words().contains(QStringLiteral("5 packets of 12 m")); }))
        << stockroom().lifeStrip()->words().toStdString();

    press(Qt::Key_1, Qt::ControlModifier);
    auto& counter = *m_window->counter();
    type("417");
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.person().picked().has_value(); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return counter.racket().picked().has_value(); }));
    press(Qt::Key_F5); // as last time, with other string
    auto* mains = counter.intake()->mains();
    ASSERT_TRUE(becomes([&] { return mains->strings()->count() > 1; }));
    mains->strings()->setFocus(Qt::TabFocusReason);
    type("k");
    press(Qt::Key_Tab);
    type("a"); // "a packet of 12 m, 5 free"
    EXPECT_EQ(mains->sources()->currentText(), QStringLiteral("a packet of 12 m, 5 free"));
    ASSERT_TRUE(becomes([&] { return counter.intake()->outcome()->priceText() == QStringLiteral("£32.00"); }))
        << "labour and a packet: " << counter.intake()->outcome()->priceText().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(saysSoon(QStringLiteral("Logged ")));
    std::vector<desk::JobLine> lines = jobs(JobState::Logged);
    const auto newest = std::ranges::max_element(lines, {}, &desk::JobLine::number);
    ASSERT_NE(newest, lines.end());
    const Job logged = job(newest->id);
    const auto packet = look([&](desk::Transaction& t) { return t.lots().get(*logged.pieces.front().lot); });
    EXPECT_EQ(packet->kind, LotKind::Packet);

    press(Qt::Key_2, Qt::ControlModifier);
    auto& bench = m_window->bench()->presenter();
    ASSERT_TRUE(becomes(
        [&] { return std::ranges::any_of(bench.queue(), [&](const auto& line) { return line.id == *logged.id; }); }));
    bench.select(*logged.id);
    ASSERT_TRUE(becomes([&] { return bench.step() == BenchPresenter::Step::Take; }));
    press(Qt::Key_Return);
    press(Qt::Key_Return); // beside 2122, and meant
    for (std::size_t piece = 0; piece < logged.pieces.size(); ++piece) {
        ASSERT_TRUE(
            becomes([&] { return bench.step() == BenchPresenter::Step::Cut && bench.cutPieces().size() == piece; }));
        press(Qt::Key_Return);
        press(Qt::Key_Return);
    }
    ASSERT_TRUE(becomes([&] { return bench.step() == BenchPresenter::Step::Finish; }));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(saysSoon(QStringLiteral("is strung")));
    EXPECT_FALSE(lot(packet->tag).isOpen()) << "a packet is used up";
    EXPECT_EQ(lot(packet->tag).length, metres(0));
    EXPECT_TRUE(m_ledger->check().empty());
}

} // namespace
} // namespace rw::ui::test
