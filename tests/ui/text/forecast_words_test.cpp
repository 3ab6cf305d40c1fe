// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/forecast_words.h"

#include "tests/ui/text/said.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

using namespace std::chrono_literals;

const QLocale kPlain = QLocale::c();

TEST(ForecastWords, SayHowOftenItIsWanted) {
    EXPECT_EQ(said(demandText(0.25, kPlain)), "about 1.8 jobs a week");
    EXPECT_EQ(said(demandText(0.01, kPlain)), "about 3.7 jobs a year");
    EXPECT_EQ(said(demandText(0, kPlain)), "no job yet");
}

TEST(ForecastWords, SayWhenToOrder) {
    EXPECT_EQ(said(orderAtText(5, 0.98, kPlain)),
              "order at 5 jobs or fewer: about 1 in 50 that none is left before the delivery");
    EXPECT_EQ(said(orderAtText(1, 0.9, kPlain)),
              "order at 1 job or fewer: about 1 in 10 that none is left before the delivery");
    EXPECT_EQ(said(orderAtText(0, 0.98, kPlain)),
              "order when no whole job is left: about 1 in 50 that none is left before the delivery");
}

TEST(ForecastWords, SayWhenItRunsOut) {
    EXPECT_EQ(said(runOutText(2026y / 5 / 20, 2026y / 5 / 2, kPlain)),
              "runs out: likely 20 May 2026, could be 2 May 2026");
    EXPECT_EQ(said(runOutText(std::nullopt, 2026y / 5 / 2, kPlain)),
              "runs out: could be 2 May 2026, most likely far later");
    EXPECT_EQ(said(runOutText(std::nullopt, std::nullopt, kPlain)), "runs out: not to be expected");
}

} // namespace
} // namespace rw::ui
