// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/customers/search_key.h"

#include <gtest/gtest.h>

using rw::digitsOf;
using rw::phoneDigitsOf;
using rw::searchKey;

namespace {

TEST(SearchKey, TakesAccentsOffAndFoldsCase) {
    EXPECT_EQ(searchKey("Zoë  Ångström"), "zoe angstrom");
    EXPECT_EQ(searchKey("ÉLODIE"), searchKey("elodie"));
    EXPECT_EQ(searchKey("İnes"), "ines");
    EXPECT_EQ(searchKey("ΣΊΣΥΦΟΣ"), searchKey("σισυφος"));
}

TEST(SearchKey, SpellsOutLettersThatUnicodeKeepsWhole) {
    EXPECT_EQ(searchKey("Weiß"), "weiss");
    EXPECT_EQ(searchKey("SØREN Æbelø"), "soren aebelo");
    EXPECT_EQ(searchKey("Łukasz Đorđe"), "lukasz dorde");
    EXPECT_EQ(searchKey("Þórr"), "thorr");
}

TEST(SearchKey, KeepsWhiteSpaceSingleAndNoneAtTheEnds) {
    EXPECT_EQ(searchKey("\t Petra\u00a0\u2003 Lindobi \n"), "petra lindobi");
    EXPECT_EQ(searchKey(" \t"), "");
    EXPECT_EQ(searchKey(""), "");
}

TEST(SearchKey, LooksThroughMarksThatNobodySees) {
    EXPECT_EQ(searchKey("\u202bשלום\u202c"), searchKey("שלום"));
    EXPECT_EQ(searchKey("ｆｕｌｌ　ｗｉｄｔｈ"), "full width");
    EXPECT_EQ(searchKey("e\u0301lodie"), searchKey("\u00e9lodie"));
}

TEST(SearchKey, LivesWithEmojiAndBrokenBytes) {
    EXPECT_EQ(searchKey("Ana 🎾"), "ana 🎾");
    EXPECT_FALSE(searchKey("a\xff\xfe").empty());
}

TEST(DigitsOf, KeepsOnlyDigitsOfAnyScript) {
    EXPECT_EQ(digitsOf("+44 (0)20 7946"), "440207946");
    EXPECT_EQ(digitsOf("٠٧٧"), "077");
    EXPECT_EQ(digitsOf("x² none"), "");
    EXPECT_EQ(phoneDigitsOf(" +44 (0)20-79.46/1 "), "4402079461");
    EXPECT_EQ(phoneDigitsOf("٠٧٧"), "077");
    EXPECT_EQ(phoneDigitsOf("Club 07"), "") << "a name with a number in it is a name";
    EXPECT_EQ(phoneDigitsOf("2nd"), "");
    EXPECT_EQ(phoneDigitsOf("Petra 0771"), "0771");
}

} // namespace
