// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/demo_fixture.h"

namespace rw::desk::test {
namespace {

class Delivery : public DemoEverywhere {};
IN_MEMORY_AND_ON_BOTH_ENGINES(Delivery);

TEST_P(Delivery, ThatIsSentTwiceComesInOnce) {
    ReceiveLot command = delivery("K", "", metres(200));
    command.requestKey = "the strip that was filled in";
    const auto first = receive(command);
    const auto again = receive(command);
    ASSERT_TRUE(first);
    ASSERT_TRUE(again);
    EXPECT_EQ(first->id, again->id);
    EXPECT_EQ(lot(first->tag).length, metres(200));
    EXPECT_TRUE(lot(first->tag).delivery);
    command.requestKey = "the next one";
    EXPECT_NE(receive(command)->tag, first->tag);
}

TEST_P(Delivery, WithoutAKeyEachIsOneOfItsOwn) {
    const ReceiveLot command = delivery("K", "", metres(200));
    EXPECT_NE(receive(command)->id, receive(command)->id);
}

} // namespace
} // namespace rw::desk::test
