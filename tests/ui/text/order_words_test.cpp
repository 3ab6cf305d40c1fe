// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/text/said.h"
#include "ui/text/order_words.h"

namespace rw::ui {
namespace {

using namespace std::chrono_literals;
using Because = stock::DraftLine::Because;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

desk::OrderLine line(std::string_view code, int count) {
    desk::OrderLine line{
        .article = {}, .each = Length::fromMillimetres(200'000), .priceEach = pounds(11000), .ahead = {}};
    line.article.code = code;
    line.article.name = "Larkspun 130";
    line.article.diameterMicrometres = 1300;
    line.article.gaugeName = "16";
    line.count = count;
    line.ahead.today = 2026y / 3 / 12;
    line.ahead.jobsPerDay = 0.3;
    line.ahead.jobsLeft = 1;
    line.ahead.runOut = {.p10 = 2026y / 3 / 13, .p50 = 2026y / 3 / 19, .p90 = std::nullopt};
    return line;
}

TEST(OrderWords, SayHowMany) {
    EXPECT_EQ(said(orderCountText(line("L", 2), kEnglish)), "2 reels of 200 m");
    desk::OrderLine one = line("L", 1);
    one.each.reset();
    EXPECT_EQ(said(orderCountText(one, kEnglish)), "1 reel");
    one.kind = LotKind::Packet;
    one.each = Length::fromMillimetres(12'000);
    EXPECT_EQ(said(orderCountText(one, kEnglish)), "1 packet of 12 m");
}

TEST(OrderWords, SayWhy) {
    desk::OrderLine why = line("L", 1);
    EXPECT_EQ(said(orderWhyText(why, kEnglish)), "1 job left, likely out 19 March");
    why.because = Because::DueSoon;
    EXPECT_EQ(said(orderWhyText(why, kEnglish)), "comes along: likely out 19 March");
    why.because = Because::FillsFreeShipping;
    EXPECT_EQ(said(orderWhyText(why, kEnglish)), "comes early, for free shipping");
    why.because = Because::RunningShort;
    why.ahead.runOut.p50 = why.ahead.today;
    EXPECT_EQ(said(orderWhyText(why, kEnglish)), "1 job left, likely out today");
    why.ahead.jobsLeft = 0;
    EXPECT_EQ(said(orderWhyText(why, kEnglish)), "none left");
}

TEST(OrderWords, SayWhatItCostsAsFarAsThatIsKnown) {
    desk::OrderDraft draft{.supplier = "Northgate", .lines = {line("L", 2), line("K", 1)}, .shipping = pounds(900)};
    EXPECT_EQ(said(orderSumText(draft, kEnglish)), "£330.00, and shipping, £9.00 the last time");
    EXPECT_EQ(said(togetherText(draft)), "together");
    EXPECT_EQ(draft.together(), pounds(33900));
    draft.lines.back().priceEach.reset();
    draft.shipping.reset();
    EXPECT_EQ(said(orderSumText(draft, kEnglish)), "£220.00 and what nobody knows the price of");
    EXPECT_EQ(said(togetherText(draft)), "together, where it is known");
    EXPECT_EQ(draft.together(), pounds(22000));
    draft.lines.front().priceEach.reset();
    EXPECT_EQ(said(orderSumText(draft, kEnglish)), "nobody knows what it costs");
    EXPECT_EQ(said(togetherText(draft)), "nobody knows what it costs");
    EXPECT_FALSE(draft.together());
}

TEST(OrderWords, ALetterHasAParagraphForEachSupplierAndNoPrice) {
    EXPECT_EQ(said(orderLetterText({}, kEnglish)), "");
    const desk::OrderDraft northgate{.supplier = "Northgate", .lines = {line("L", 2), line("K", 1)}, .shipping = {}};
    const desk::OrderDraft unknown{.supplier = "", .lines = {line("N", 1)}, .shipping = {}};
    EXPECT_EQ(said(orderLetterText({northgate, unknown}, kEnglish)),
              "Northgate\n2 reels of 200 m: L Larkspun 130, 1.30 mm (16)\n1 reel of 200 m: K Larkspun 130, 1.30 mm "
              "(16)\n\nNobody said who sends these\n1 reel of 200 m: N Larkspun 130, 1.30 mm (16)\n");
    expectWholeSentence(nothingToOrderText());
    expectWholeSentence(orderHintText());
    expectWholeSentence(orderCopiedText());
    expectWholeSentence(orderSavedText(QStringLiteral("/orders")));
}

} // namespace
} // namespace rw::ui
