// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/owner/owner_pin.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace rw {
namespace {

OwnerPin pin(std::string_view typed) { return OwnerPin::tryParse(typed).value(); }

TEST(OwnerPinTest, OpensWhatItsHashLocks) {
    const std::string hash = pin("4417").hash();
    EXPECT_TRUE(pin("4417").isThatOf(hash));
    EXPECT_FALSE(pin("4418").isThatOf(hash));
    EXPECT_FALSE(pin("44170").isThatOf(hash));
    EXPECT_FALSE(pin("4417").isThatOf(""));
    EXPECT_FALSE(pin("4417").isThatOf("4417"));
}

// RFC 9106 names the kind, and its encoding begins with it: a salted Argon2id hash, not the PIN in disguise.
TEST(OwnerPinTest, IsKeptAsASaltedHash) {
    const std::string one = pin("4417").hash();
    EXPECT_TRUE(one.starts_with("$argon2id$")) << one;
    EXPECT_NE(one, pin("4417").hash()) << "each with its own salt";
    EXPECT_EQ(one.find("4417", one.rfind('$')), std::string::npos);
    EXPECT_LE(one.size(), 128U);
}

TEST(OwnerPinTest, HasFourToSixtyFourCharacters) {
    for (const std::string_view typed : {"", "1", "441", "\xC3\xA4\xC3\xB6\xC3\xBC"}) {
        const auto refused = OwnerPin::tryParse(typed);
        ASSERT_FALSE(refused) << typed;
        EXPECT_EQ(refused.error().code(), Code::ImpossibleValue);
        EXPECT_TRUE(std::ranges::none_of(refused.error().arguments(), [&](const Argument& argument) {
            return !typed.empty() && argument.value == decltype(argument.value)(std::string(typed));
        })) << "what was typed is told to nobody";
    }
    EXPECT_TRUE(OwnerPin::tryParse("\xC3\xA4\xC3\xB6\xC3\xBC\xC3\x9F"));
    EXPECT_TRUE(OwnerPin::tryParse(std::string(64, '7')));
    EXPECT_EQ(OwnerPin::tryParse(std::string(65, '7')).error().code(), Code::TooLong);
}

} // namespace
} // namespace rw
