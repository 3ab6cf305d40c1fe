// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/weigh_words.h"

#include "tests/ui/sample_weighings.h"
#include "tests/ui/text/said.h"

namespace rw::ui {
namespace {

using samples::weighIn;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

TEST(WeighWords, AWeightIsSaidAsAScaleShowsIt) {
    EXPECT_EQ(said(massText(Mass::fromMilligrams(236'400), kEnglish)), "236.4 g");
    EXPECT_EQ(said(massText(Mass::fromMilligrams(236'000), kEnglish)), "236 g");
    EXPECT_EQ(said(massText(Mass::fromMilligrams(236'400), QLocale(QLocale::German))), "236,4 g");
}

TEST(WeighWords, ALengthGoesWithTwiceItsUncertainty) {
    EXPECT_EQ(said(sureLengthText({50'588.2, 617}, kEnglish)), "50.6 m ± 1.2 m");
    EXPECT_EQ(said(sureLengthText({6'400, 10}, kEnglish)), "6.40 m ± 0.02 m");
}

TEST(WeighWords, AFindingSaysWhatItMayBe) {
    const desk::WeighIn job = weighIn(48'800);
    EXPECT_EQ(said(weighStoryText(job, kEnglish)),
              "K-7: 48.8 m ± 0.8 m against its weight when new. 11.2 m less than the book says. It may be: a job that "
              "nobody booked; the empty weight of another spool; the tag of another reel.");
    EXPECT_EQ(said(weighStateText(job)), "▲ look");
    EXPECT_EQ(said(weighedChangeText(job, kEnglish)), "−11.2 m");
    desk::WeighIn more = weighIn(70'000);
    more.causes.front() = desk::WeighCause::CutNotMade;
    EXPECT_TRUE(weighStoryText(more, kEnglish).contains(QStringLiteral("10.0 m more than the book says.")));
    desk::WeighIn notFull = weighIn(48'800);
    notFull.weighing.whenNewMm = stock::Estimate{184'000, 900};
    notFull.causes = {desk::WeighCause::NotFull};
    EXPECT_TRUE(
        weighStoryText(notFull, kEnglish).contains(QStringLiteral("It may be: a reel that held 184.0 m ± 1.8 m")));
}

TEST(WeighWords, NoFindingIsSaidToo) {
    desk::WeighIn right = weighIn(60'100);
    EXPECT_EQ(said(weighVerdictText(right, kEnglish)), "The book is right, as far as a scale can tell.");
    EXPECT_EQ(said(weighCausesText(right, kEnglish)), "");
    EXPECT_EQ(said(weighStateText(right)), "✓ right");
    EXPECT_EQ(said(weighedChangeText(right, kEnglish)), "+0.1 m");
    EXPECT_EQ(said(weighedChangeText(weighIn(59'970), kEnglish)), "0.0 m") << "nothing has no sign";
    right.weighing.whenNewMm = stock::Estimate{199'200, 700};
    right.spoolOf = "K-3";
    right.owner = "Petra Lindobi";
    EXPECT_EQ(weighNotes(right, kEnglish),
              (QStringList{QStringLiteral("It is kept here for Petra Lindobi."),
                           QStringLiteral("Its spool is taken to weigh 150 g, as that of K-3 does."),
                           QStringLiteral("When new it held 199.2 m ± 1.4 m; its label says 200 m.")}));
    right.isNewWeight = true;
    EXPECT_EQ(said(weighStateText(right)), "○ new");
    right.weighing.booked = MovementId::of(1);
    EXPECT_EQ(said(weighStateText(right)), "● booked");
}

TEST(WeighWords, EverySentenceIsWhole) {
    for (const auto basis : {stock::WeighBasis::AgainstNew, stock::WeighBasis::ByMetre, stock::WeighBasis::ByGone}) {
        desk::WeighIn in = weighIn(48'800);
        in.weighing.basis = basis;
        expectWholeSentence(weighStoryText(in, kEnglish));
    }
    for (const QString& sentence : {weighFirstText(), weighNextText(), weighLimitsText(), stockTakeEndedText(),
                                    weighBookedText(weighIn(48'800), kEnglish)}) {
        expectWholeSentence(sentence);
    }
}

TEST(WeighWords, AStockTakeSaysHowFarItIs) {
    desk::StockTakeSheet sheet = samples::stockTake(4);
    sheet.toWeigh = {weighIn(1, "L-2").lot, weighIn(1, "L-3").lot};
    sheet.packets = 12;
    EXPECT_EQ(said(stockTakeText(sheet)),
              "4 weighed, 2 to look at. Still to weigh: L-2 and L-3. 12 packets are counted, not weighed.");
    sheet.toWeigh.clear();
    sheet.packets = 0;
    EXPECT_EQ(said(stockTakeText(sheet)), "4 weighed, 2 to look at. Nothing is left to weigh.");
    EXPECT_EQ(said(stockTakeText({})), "");
    EXPECT_EQ(said(stockTakeWhenText(*sheet.take, QStringLiteral("Bastian Quill"), {}, QTimeZone::utc(), kEnglish)),
              "Begun Thu 1 Jan 00:00 by Bastian Quill, still going on.");
}

} // namespace
} // namespace rw::ui
