// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/search_words.h"
#include "core/sql/repositories/stored_texts.h"

#include "core/calendar/civil_date_text.h"

#include <gtest/gtest.h>

namespace rw::sql::test {

TEST(StoredTexts, GoBothWays) {
    for (const auto kind : {Contact::Kind::Phone, Contact::Kind::Email, Contact::Kind::Other}) {
        EXPECT_EQ(contactKindFromText(contactKindText(kind)), kind);
    }
    for (const auto kind : {LotKind::Reel, LotKind::Packet, LotKind::Remnant}) {
        EXPECT_EQ(lotKindFromText(lotKindText(kind)), kind);
    }
    for (const auto rule : {TaxRule::Included, TaxRule::Added}) {
        EXPECT_EQ(taxRuleFromText(taxRuleText(rule)), rule);
    }
    for (const auto side : {Side::Left, Side::Right}) {
        EXPECT_EQ(storedSide(sideText(side)), side);
    }
    for (const auto end : {HoopEnd::Head, HoopEnd::Throat}) {
        EXPECT_EQ(storedHoopEnd(hoopEndText(end)), end);
    }
    for (const auto unit : {TensionUnit::Pound, TensionUnit::Kilogram}) {
        EXPECT_EQ(storedUnit(unitText(unit)), unit);
    }
    EXPECT_FALSE(contactKindFromText("pigeon"));
    EXPECT_FALSE(storedSide("LEFT"));
    EXPECT_FALSE(storedUnit("lbs")); // read when typed, never stored
}

TEST(StoredTexts, ADateIsTenCharactersAndReal) {
    using namespace std::chrono;
    EXPECT_EQ(dateText(2026y / January / 2), "2026-01-02");
    EXPECT_EQ(civilDateFromText("2026-01-02"), CivilDate(2026y / January / 2));
    EXPECT_EQ(civilDateFromText("2024-02-29"), CivilDate(2024y / February / 29));
    EXPECT_EQ(dateText(year(7) / 11 / 30), "0007-11-30");
    for (const auto* text : {"", "2026-02-29", "2026-13-01", "2026-00-10", "2026-1-02", "2026/01/02", "+026-01-02",
                             "2026-01-0x", "20260102 ", "2026-01-02 "}) {
        EXPECT_FALSE(civilDateFromText(text)) << text;
    }
}

TEST(SearchWords, TakeWildcardsForLetters) {
    EXPECT_EQ(holding("50%_off!"), "%50!%!_off!!%");
    EXPECT_EQ(holding(""), "%%");
}

} // namespace rw::sql::test
