// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/earnings.h"
#include "tests/core/pricing/harbour_lane_prices.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace rw::prices;

namespace {

Charge charge(ChargeKind kind, std::int64_t pence, int taxHundredthsPercent) {
    return {.kind = kind,
            .article = std::nullopt,
            .label = {},
            .amount = pounds(pence),
            .taxHundredthsPercent = taxHundredthsPercent};
}

// The design's check table for prices: 24.00 with 20 % included holds 4.00 tax, with 19 % 3.83; 30.00 + 7.7 % is 32.31.
TEST(Earnings, LeaveOutTheTaxThatPricesInclude) {
    EXPECT_EQ(withoutTax({charge(ChargeKind::Labour, 2400, 2000)}, Currency::pounds()), pounds(2000));
    EXPECT_EQ(withoutTax({charge(ChargeKind::Labour, 2400, 1900)}, Currency::pounds()), pounds(2400 - 383));
}

TEST(Earnings, LeaveOutTheTaxThatWasAdded) {
    EXPECT_EQ(
        withoutTax({charge(ChargeKind::Labour, 3000, 770), charge(ChargeKind::Tax, 231, 770)}, Currency::pounds()),
        pounds(3000));
}

TEST(Earnings, RoundOnceARate) {
    // 0.05 + 0.05 at 20 %: 1.67 pence of tax together, 0.83 each
    EXPECT_EQ(withoutTax({charge(ChargeKind::Labour, 5, 2000), charge(ChargeKind::Extra, 5, 2000)}, Currency::pounds()),
              pounds(8));
    EXPECT_EQ(withoutTax({}, Currency::pounds()), pounds(0));
}

TEST(Earnings, ExtrasCostWhatIsKnownOfThem) {
    Charge tube = charge(ChargeKind::Extra, 150, 2000);
    tube.cost = pounds(45);
    EXPECT_EQ(extrasCost({tube, charge(ChargeKind::Extra, 200, 2000)}, Currency::pounds()), pounds(45));
    EXPECT_EQ(extrasCost({}, Currency::pounds()), pounds(0));
}

// The design: margin = charges without tax - string cost - extras' cost.
TEST(Earnings, MarginIsWhatIsLeftOfAll) {
    Earnings sum{pounds(2500), pounds(641), pounds(45)};
    sum += {pounds(1000), pounds(359), pounds(0)};
    EXPECT_EQ(sum.margin(), pounds(2455));
}

} // namespace
