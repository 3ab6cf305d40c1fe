// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/civil_date_text.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace std::chrono_literals;

TEST(CivilDateText, IsReadAndWrittenAsIsoWritesIt) {
    EXPECT_EQ(civilDateFromText("2026-03-12"), 2026y / 3 / 12);
    EXPECT_EQ(civilDateFromText("2024-02-29"), 2024y / 2 / 29);
    EXPECT_EQ(civilDateText(2026y / 3 / 2), "2026-03-02");
    EXPECT_EQ(civilDateText(1y / 1 / 1), "0001-01-01");
    EXPECT_EQ(civilDateText(9999y / 12 / 31), "9999-12-31");
}

TEST(CivilDateText, NothingElseIsADate) {
    for (const char* text : {"", "2026-3-12", "12-03-2026", "2026-03-12 ", "2026/03/12", "2026-02-29", "2026-13-01",
                             "2026-00-10", "0000-01-01", "+026-03-12", "2026-+3-12", "2026-03-1x", "20260312"}) {
        EXPECT_EQ(civilDateFromText(text), std::nullopt) << text;
    }
}
