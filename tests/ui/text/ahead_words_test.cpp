// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/text/said.h"
#include "ui/text/ahead_words.h"

namespace rw::ui {
namespace {

using namespace std::chrono_literals;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

desk::StringAhead ahead() {
    desk::StringAhead ahead;
    ahead.today = 2026y / 4 / 20;
    ahead.jobsPerDay = 0.25;
    ahead.jobsLeft = 7;
    ahead.s = 5;
    ahead.chanceOfNone = 0.004;
    ahead.runOut = {.p10 = 2026y / 5 / 2, .p50 = 2026y / 5 / 20, .p90 = 2026y / 7 / 1};
    return ahead;
}

desk::ShelfString shelf(const desk::StringAhead& ahead, std::string_view code = "L",
                        std::string_view name = "Larkspun 130") {
    const Length nothing = Length::fromMillimetres(0);
    desk::ShelfString string{.article = {},
                             .lots = {},
                             .holding = {nothing, nothing},
                             .perJob = Length::fromMillimetres(11'000),
                             .wholeJobsFree = ahead.jobsLeft};
    string.article.code = code;
    string.article.name = name;
    string.ahead = ahead;
    return string;
}

TEST(AheadWords, SayTheLikelyDayAndTheEarlyOne) {
    desk::StringAhead left = ahead();
    EXPECT_EQ(said(likelyOutText(left, kEnglish)), "likely out 20 May, could be 2 May");
    left.runOut.p50 = 2027y / 5 / 20;
    EXPECT_EQ(said(likelyOutText(left, kEnglish)), "likely out 20 May 2027, could be 2 May");
    left.runOut.p50.reset();
    EXPECT_EQ(said(likelyOutText(left, kEnglish)), "could be out 2 May, likely far later");
    left.runOut = {.p10 = left.today, .p50 = 2026y / 4 / 21, .p90 = std::nullopt};
    EXPECT_EQ(said(likelyOutText(left, kEnglish)), "likely out 21 April, could be today");
    left.runOut.p50 = left.today;
    EXPECT_EQ(said(likelyOutText(left, kEnglish)), "likely out today");
    EXPECT_EQ(said(likelyOutText({}, kEnglish)), "") << "nothing is known";
    left.jobsLeft = 0;
    EXPECT_EQ(said(likelyOutText(left, kEnglish)), "none left");
}

TEST(AheadWords, ABoardSaysWhatToDo) {
    desk::StringAhead left = ahead();
    EXPECT_EQ(said(boardAheadText(left, kEnglish)), "order at 5 jobs; likely out 20 May, could be 2 May");
    left.runningShort = true;
    EXPECT_EQ(said(boardAheadText(left, kEnglish)), "order now; likely out 20 May, could be 2 May");
    left.runningShort = false;
    left.s = 0;
    EXPECT_EQ(said(whenToOrderText(left)), "order when none is left");
    left.onRequest = true;
    EXPECT_EQ(said(boardAheadText(left, kEnglish)), "on request");
    EXPECT_EQ(said(boardAheadText({}, kEnglish)), "");
}

TEST(AheadWords, AtLengthWhyAndHowOften) {
    desk::StringAhead left = ahead();
    EXPECT_EQ(said(aheadSentences(shelf(left), kEnglish).join(QLatin1Char('|'))),
              "Order at 5 jobs or fewer: about 1 in 50 that none is left before the delivery.|"
              "7 jobs free; about 1.8 jobs a week.|Likely out 20 May, could be 2 May.");
    left.runningShort = true;
    left.jobsLeft = 2;
    left.chanceOfNone = 0.25;
    EXPECT_EQ(said(aheadSentences(shelf(left), kEnglish).front()),
              "Order now: about 1 in 4 that none is left before it comes.");
    left.jobsLeft = 6;
    EXPECT_EQ(said(aheadSentences(shelf(left), kEnglish).front()),
              "Order now: fewer are left than the shop always wants, though they would last.");
    left.jobsLeft = 0;
    EXPECT_EQ(
        said(aheadSentences(shelf(left), kEnglish).join(QLatin1Char('|'))),
        "Order now: none is left.|0 jobs free; about 1.8 jobs a week.|The next job finds none, likely on 20 May.");
    left.runOut.p50 = left.today;
    EXPECT_EQ(said(aheadSentences(shelf(left), kEnglish).back()), "The next job finds none, likely today.");
    left.onRequest = true;
    for (const desk::StringAhead& each : {left, ahead(), desk::StringAhead{}}) {
        for (const QString& sentence : aheadSentences(shelf(each), kEnglish)) {
            expectWholeSentence(sentence);
        }
    }
}

TEST(AheadWords, WhatTheOwnerMustDoFirstIsNamed) {
    EXPECT_EQ(said(orderNowText({shelf(ahead())}, kEnglish)), "");
    desk::StringAhead left = ahead();
    left.runningShort = true;
    desk::StringAhead none = left;
    none.jobsLeft = 0;
    EXPECT_EQ(said(orderNowText({shelf(left), shelf(none, "T", "Tarnweave 120"), shelf(ahead(), "K", "K")}, kEnglish)),
              "▼ Order now: L Larkspun 130, likely out 20 May; T Tarnweave 120, none left");
    const desk::ShelfString each = shelf(none, "A", "A");
    EXPECT_EQ(said(orderNowText({each, each, each, each, each, each}, kEnglish)),
              "▼ Order now: A A, none left; A A, none left; A A, none left; A A, none left; and 2 more");
}

} // namespace
} // namespace rw::ui
