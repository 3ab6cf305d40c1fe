// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/sold_string.h"
#include "tests/stories/windows/at_the_window.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/receive_strip.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/stockroom/string_strip.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"

namespace rw::ui::test {
namespace {

class AtTheShelf : public AtTheWindow {
protected:
    AtTheShelf() {
        press(Qt::Key_3, Qt::ControlModifier);
        EXPECT_TRUE(becomes([&] { return stockroom().presenter().isLoaded(); }));
        EXPECT_TRUE(becomes([&] { return stockroom().isVisible(); }));
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
    press(Qt::Key_Down); // the squash string, whose sport the new one most likely has
    press(Qt::Key_Down);
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
    EXPECT_EQ(stockroom().receiveStrip()->strings()->currentText(), QStringLiteral("O Otterline 118"));
    tab(2);
    type("220 yd");
    tab();
    EXPECT_EQ(problemsOn(*stockroom().receiveStrip()).size(), 1);
    press(Qt::Key_Backtab, Qt::ShiftModifier);
    stockroom().receiveStrip()->length()->selectAll();
    type("660 ft");
    tab(2);
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
    auto* strip = stockroom().receiveStrip();
    tab(2);
    type("200");
    tab(2);
    type("84");
    strip->tag()->setText(QString(21, QLatin1Char('t')));
    strip->batch()->setText(QString(81, QLatin1Char('b')));
    press(Qt::Key_Return);
    const auto sentence = [&] { return problemsOn(*strip).join(QLatin1Char('\n')); };
    ASSERT_TRUE(becomes([&] { return sentence().contains(QStringLiteral("batch is too long: 81 characters")); }))
        << sentence().toStdString();
    EXPECT_TRUE(strip->batch()->hasFocus());
    EXPECT_EQ(strip->batch()->text().size(), 81);
    strip->batch()->setText(QStringLiteral("A41"));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return sentence().contains(QStringLiteral("tag is too long: 21 characters")); }));
    EXPECT_EQ(problemsOn(*strip).size(), 1) << "the batch is right by now";
    EXPECT_TRUE(strip->tag()->hasFocus());
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
    ASSERT_TRUE(becomes([&] { return stockroom().presenter().shelf().front().article.name == "Kestrelline Pro"; }));
    const auto kept = look([](desk::Transaction& t) { return t.strings().all().front(); });
    EXPECT_EQ(kept.name, "Kestrelline Pro");
    EXPECT_EQ(kept.gaugeName, "17") << "what was not touched is as it was";
    EXPECT_TRUE(kept.milligramsPerMetre);
}

} // namespace
} // namespace rw::ui::test
