// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/pricing/harbour_lane_prices.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace rw::prices;

namespace {

std::int64_t penceOf(const PriceLine* found) { return found == nullptr ? -1 : found->amount.minor(); }

TEST(PriceList, FindsTheMoreParticularLine) {
    PriceList list = harbourLane();
    PriceLine squash = line(ChargeKind::Labour, 1200);
    squash.sport = Sport::Squash;
    PriceLine onePiece = line(ChargeKind::Labour, 1500);
    onePiece.method = Method::OnePiece;
    PriceLine squashOnePiece = line(ChargeKind::Labour, 1300);
    squashOnePiece.sport = Sport::Squash;
    squashOnePiece.method = Method::OnePiece;
    list.lines.insert(list.lines.end(), {squash, onePiece, squashOnePiece});
    EXPECT_EQ(penceOf(list.find(ChargeKind::Labour, Sport::Badminton, Method::TwoPiece)), 1400);
    EXPECT_EQ(penceOf(list.find(ChargeKind::Labour, Sport::Tennis, Method::OnePiece)), 1500);
    EXPECT_EQ(penceOf(list.find(ChargeKind::Labour, Sport::Squash, Method::TwoPiece)), 1200);
    EXPECT_EQ(penceOf(list.find(ChargeKind::Labour, Sport::Squash, Method::OnePiece)), 1300);
}

TEST(PriceList, AStringsOwnPriceGoesBeforeOneForAnyString) {
    PriceList list = harbourLane();
    list.lines.insert(list.lines.begin(), line(ChargeKind::FullBed, 900));
    EXPECT_EQ(penceOf(list.find(ChargeKind::FullBed, Sport::Tennis, Method::OnePiece, kLarkspun)), 1600);
    EXPECT_EQ(penceOf(list.find(ChargeKind::FullBed, Sport::Tennis, Method::OnePiece, StringArticleId::of(99))), 900);
}

TEST(PriceList, HasNothingForWhatItDoesNotName) {
    const PriceList list = harbourLane();
    EXPECT_EQ(list.find(ChargeKind::HalfBed, Sport::Squash, Method::TwoPiece, kTarnweave), nullptr);
    EXPECT_EQ(list.find(ChargeKind::FullBed, Sport::Squash, Method::TwoPiece), nullptr);
    EXPECT_EQ(list.find(ChargeKind::Extra, Sport::Tennis, Method::TwoPiece, std::nullopt, "new grip"), nullptr);
}

} // namespace
