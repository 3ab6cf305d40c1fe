// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/readable_text.h"

#include <gtest/gtest.h>

#include <string>

using rw::isReadableText;
using rw::withoutBidiControls;

namespace {

TEST(ReadableText, IsWellFormed) {
    EXPECT_TRUE(isReadableText(""));
    EXPECT_TRUE(isReadableText("Zoë שירה 李小龍 🎾\n\t"));
    EXPECT_TRUE(isReadableText("\xc2\x80 \xed\x9f\xbf \xee\x80\x80 \xef\xbf\xbf \xf4\x8f\xbf\xbf")); // the borders
}

TEST(ReadableText, HoldsNoNul) { EXPECT_FALSE(isReadableText(std::string_view("Petra\0Lindobi", 13))); }

// The twelve characters of the property Bidi_Control: Unicode, PropList.txt.
TEST(ReadableText, LosesWhatTurnsTheLineAround) {
    EXPECT_EQ(withoutBidiControls("Petra\u202E Lindobi\u202C"), "Petra Lindobi");
    EXPECT_EQ(withoutBidiControls("\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069"), "");
    for (const char* stays :
         {"", "Zoë שירה 李小龍 🎾", "\u061B\u061D", "\u200D\u2010", "\u2029\u202F", "\u2065\u206A"}) {
        EXPECT_EQ(withoutBidiControls(stays), stays);
    }
}

// The ill-formed sequences that RFC 3629, section 3 and 4, rules out.
TEST(ReadableText, IsNothingElse) {
    for (const char* bytes :
         {"\xff", "\x80", "\xc3", "\xc3(", "\xe2\x82", "\xe2\x28\xa1", "\xf0\x9f\x8e", "\xf0\x9f\x8e(", "\xc0\xaf",
          "\xc1\xbf", "\xe0\x80\xaf", "\xe0\x9f\xbf", "\xf0\x80\x80\xaf", "\xf0\x8f\xbf\xbf", "\xed\xa0\x80",
          "\xed\xbf\xbf", "\xf4\x90\x80\x80", "\xf5\x80\x80\x80"}) {
        EXPECT_FALSE(isReadableText(bytes)) << bytes;
        EXPECT_FALSE(isReadableText(std::string("Petra ") + bytes + " Lindobi")) << bytes;
    }
}

} // namespace
