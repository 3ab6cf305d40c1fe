// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/stock_words.h"

#include "tests/ui/text/said.h"

#include <QLocale>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

TEST(StockWords, WholeJobsAreNeverRoundedUp) {
    const struct {
        std::int64_t jobs;
        std::int64_t shortBy;
        const char* text;
    } cases[] = {
        {2, 300, "2 jobs; a third would be 0.3 m short"},    {1, 2300, "1 job; a second would be 2.3 m short"},
        {3, 4117, "3 jobs; a fourth would be 4.12 m short"}, {0, 50, "no whole job; the first would be 0.05 m short"},
        {7, 10, "7 jobs; an eighth would be 0.01 m short"},  {9, 10, "9 jobs; a tenth would be 0.01 m short"},
        {10, 10, "10 jobs; an 11th would be 0.01 m short"},  {11, 10, "11 jobs; a 12th would be 0.01 m short"},
        {17, 7000, "17 jobs; an 18th would be 7 m short"},   {20, 1, "20 jobs; a 21st would be 0.01 m short"},
        {79, 1, "79 jobs; an 80th would be 0.01 m short"},   {111, 1, "111 jobs; a 112th would be 0.01 m short"},
        {121, 1, "121 jobs; a 122nd would be 0.01 m short"}};
    for (const auto& c : cases) {
        EXPECT_EQ(said(wholeJobsText({c.jobs, mm(c.shortBy)}, kEnglish)), c.text);
    }
}

TEST(StockWords, ATightFitSaysToMeasure) {
    EXPECT_EQ(said(fitText(Fit::Fits, mm(5500), kEnglish)), "leaves 5.5 m");
    EXPECT_EQ(said(fitText(Fit::FitsIfBookIsRight, mm(200), kEnglish)),
              "fits by 0.2 m if the book is right, measure before cutting");
    EXPECT_EQ(said(fitText(Fit::DoesNotFit, mm(-300), kEnglish)), "0.3 m short by the book");
    EXPECT_EQ(said(fitText(Fit::Fits, mm(0), kEnglish)), "uses it up");
}

TEST(StockWords, WhatIsLeftPromisedAndFree) {
    EXPECT_EQ(said(holdingText({mm(48700), mm(32400)}, kEnglish)), "48.7 m left, 32.4 m promised, 16.3 m free");
    EXPECT_EQ(said(holdingText({mm(48700), mm(0)}, kEnglish)), "48.7 m left, nothing promised");
    EXPECT_EQ(said(holdingText({mm(10000), mm(11200)}, kEnglish)),
              "10 m left, 11.2 m promised, 1.2 m more than there is");
}

TEST(StockWords, RunningShortIsSaidOnlyWhenItIs) {
    desk::ShelfString shelf{.article = {},
                            .lots = {},
                            .holding = {mm(20000), mm(5000)},
                            .perJob = mm(11000),
                            .wholeJobsFree = 1};
    EXPECT_TRUE(runningShortText(shelf).isEmpty());
    shelf.ahead = desk::StringAhead{.runningShort = true};
    EXPECT_EQ(said(runningShortText(shelf)), "running short: 1 whole job free");
    shelf.wholeJobsFree = 0;
    EXPECT_EQ(said(runningShortText(shelf)), "running short: no whole job free");
    shelf.wholeJobsFree = -1;
    EXPECT_EQ(said(runningShortText(shelf)), "running short: no whole job free") << "more is promised than is there";
    EXPECT_EQ(said(jobsFreeText(shelf)), "0 jobs free");
    EXPECT_EQ(said(usableText(shelf, kEnglish)), "nothing usable");
    shelf.usable = mm(24'319);
    EXPECT_EQ(said(usableText(shelf, kEnglish)), "about 24.3 m usable");
}

} // namespace
} // namespace rw::ui
